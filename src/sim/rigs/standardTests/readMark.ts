import { unreachable } from '../../../base/assert.ts';
import { inH2OToPa, inHgToPa } from '../../../base/units.ts';
import { meterHalfWidth } from './meterHalfWidth.ts';
import type { Outcome, OutcomeChannel } from './Outcome.ts';
import type { Reading } from './StandardTest.ts';
import type { TestSight } from './TestBench.ts';

/** What the hands have noted while working: gauge and manometer by mark, and how long the last `until` took. */
export interface Noted {
  readonly gauge: Map<string, number>;
  readonly manometer: Map<string, number | null>;
  /** The last happening before the last action. */
  happened: number;
  /** Whether it came to its goal, and was not there from the beginning. */
  reached: boolean;
  secondsTaken: number | null;
  strokesTaken: number | null;
  /** How often the last `until` looked. */
  everySeconds: number;
}

/** Class 1.6 of EN 837-1: 1.6 % of a full scale of 30 inHg either way. */
const GAUGE_HALF_KPA = (0.016 * inHgToPa(30)) / 1000;
/** Two readings of one gauge share its error; what is left is the eye: a quarter of a division of 1 inHg. Common practice, no source. */
const GAUGE_EYE_KPA = inHgToPa(0.25) / 1000;
/** Read to a tenth of an inch of water, with half of that either side. */
const WATER_HALF_KPA = inH2OToPa(0.05) / 1000;
/** The controller's converter has steps of 0.01 V; what its volts are worth: common practice, no source. */
const READER_HALF_VOLTS = 0.05;
/** Smoke machine's own gauge and flow ball, read by eye. Common practice, no source. */
const SMOKE_GAUGE_HALF_KPA = 0.15;
const FLOW_BALL_HALF = 0.03;
/** Brightness of a test lamp as an eye puts it. Common practice, no source. */
const DARK_BELOW = 0.02;
const BRIGHT_FROM = 0.6;

/** What is shown at a read mark. */
export function readMark(
  test: string,
  key: string,
  reading: Reading,
  seen: TestSight,
  noted: Noted,
): readonly Outcome[] {
  const { tick } = seen;
  const from = (channel: OutcomeChannel, part = ''): Origin => ({
    channel,
    setUp: `${test}/${key}${part}`,
    tick,
  });
  switch (reading.of) {
    case 'meter':
      return [meterOutcome(from('meter'), seen)];
    case 'tone':
      return [{ ...from('tone'), kind: 'yes-no', value: seen.meter.tone }];
    case 'meter-battery-sign':
      return [{ ...from('lamp'), kind: 'yes-no', value: seen.meter.batteryLow }];
    case 'gauge':
      noted.gauge.set(key, seen.gauge.needleKPa);
      return [number(from('gauge'), seen.gauge.needleKPa, GAUGE_HALF_KPA, 'kPa')];
    case 'gauge-lost': {
      const before = noted.gauge.get(reading.since) ?? 0;
      return [number(from('gauge'), before - seen.gauge.needleKPa, GAUGE_EYE_KPA, 'kPa')];
    }
    case 'manometer':
      noted.manometer.set(key, seen.manometer.kPa);
      return [number(from('manometer'), seen.manometer.kPa, WATER_HALF_KPA, 'kPa')];
    case 'manometer-at-goal': {
      const kPa = noted.reached ? seen.manometer.kPa : null;
      return [number(from('manometer'), kPa, WATER_HALF_KPA, 'kPa')];
    }
    case 'manometer-lost': {
      const before = noted.manometer.get(reading.since) ?? null;
      const now = seen.manometer.kPa;
      const lost = before === null || now === null ? null : before - now;
      return [number(from('manometer'), lost, 2 * WATER_HALF_KPA, 'kPa')];
    }
    case 'reader-volts':
      return [number(from('reader-volts'), seen.reader.senseVolts, READER_HALF_VOLTS, 'V')];
    case 'reader-state':
      return [word(from('reader-state'), seen.reader.senseState ?? 'asleep')];
    case 'reader-driver':
      return [word(from('reader-driver'), seen.reader.driver ?? 'asleep')];
    case 'click': {
      const heard = seen.happenings.some(({ id, kind }) => id > noted.happened && kind === reading.way);
      return [{ ...from('click'), kind: 'yes-no', value: heard }];
    }
    case 'lamp': {
      const { glow } = seen.testLamp;
      return [word(from('lamp'), glow < DARK_BELOW ? 'dark' : glow < BRIGHT_FROM ? 'dim' : 'bright')];
    }
    case 'led':
      return [word(from('led'), seen.ledTester.lit)];
    case 'smoke':
      return [
        ...reading.at.map(
          (place): Outcome => ({
            ...from('smoke', `-at-${place}`),
            kind: 'yes-no',
            value: seen.smoke.seenAt.includes(place),
          }),
        ),
        number(from('smoke', '-pressure'), seen.smoke.gaugeKPa, SMOKE_GAUGE_HALF_KPA, 'kPa'),
        number(from('smoke', '-flow'), seen.smoke.flow, FLOW_BALL_HALF, 'share'),
      ];
    case 'finding':
      return [word(from('finding'), seen.findings.at(-1)?.signs.join(', ') ?? 'not-seen')];
    case 'codes': {
      const codes = seen.reader.codes.map(({ code, status }) => `${code} ${status}`);
      return [word(from('codes'), codes.join(', ') || 'none')];
    }
    case 'freeze-data': {
      const frozen = seen.reader.freeze.map(({ code, holdSeconds }) =>
        holdSeconds === null ? code : `${code} held`,
      );
      return [word(from('codes'), frozen.join(', ') || 'none')];
    }
    case 'drive':
      return driveOutcomes(from, seen);
    case 'fuse':
      return [word(from('fuse'), seen.fuse.element)];
    case 'jumper-fuse':
      return [word(from('fuse'), seen.jumper.fuse)];
    case 'seconds-taken':
      return [number(from(reading.by), noted.secondsTaken, noted.everySeconds / 2, 's')];
    case 'strokes-taken':
      return [number(from(reading.by), noted.strokesTaken, 0.5, 'count')];
    default:
      return unreachable(reading);
  }
}

interface Origin {
  readonly channel: OutcomeChannel;
  readonly setUp: string;
  readonly tick: number;
}
type NumberOutcome = Extract<Outcome, { kind: 'number' }>;

function number(
  origin: Origin,
  value: number | null,
  half: number,
  unit: NumberOutcome['unit'],
): NumberOutcome {
  return { ...origin, kind: 'number', value, half, unit };
}

function word(origin: Origin, value: string): Outcome {
  return { ...origin, kind: 'word', value };
}

function meterOutcome(origin: Origin, { meter }: TestSight): Outcome {
  const { display, function: which } = meter;
  const unit = which.endsWith('amps-dc') ? 'A' : which === 'ohms' || which === 'continuity' ? 'Ω' : 'V';
  const value = display.digits === '' || !display.settled ? 'unstable' : display.value;
  return { ...origin, kind: 'number', value, half: meterHalfWidth(which, display), unit };
}

/** Every cycle of the last drive: how it ended, and what the monitor timed where it ran. */
function driveOutcomes(
  from: (channel: OutcomeChannel, part?: string) => Origin,
  { lastDrive }: TestSight,
): readonly Outcome[] {
  return (lastDrive?.cycles ?? []).flatMap(({ outcome, codes, tripSeconds, holdSeconds }) => {
    const ended = word(from('drive', '-outcome'), [outcome, ...codes].join(' '));
    if (outcome !== 'passed' && outcome !== 'failed') return [ended];
    return [
      ended,
      number(from('drive', '-trip'), tripSeconds, DRIVE_HALF_S, 's'),
      number(from('drive', '-hold'), holdSeconds, DRIVE_HALF_S, 's'),
    ];
  });
}

/** The reader shows the monitor's times in whole seconds. */
const DRIVE_HALF_S = 0.5;
