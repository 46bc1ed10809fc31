import { unreachable } from '../../base/assert.ts';
import { meterHalfWidth } from '../../sim/rigs/standardTests/meterHalfWidth.ts';
import type { HappeningKind, Observation } from '../../sim/world/Observation.ts';

import type { Question } from './Question.ts';
import type { Channel, Shown } from './Shown.ts';
import type { Sight } from './Sight.ts';

/** Accuracy class 1.6 of EN 837-1: 1.6 per cent of the span of 30 inHg. */
const GAUGE_HALF_KPA = (1.6 / 100) * 101.6;
/** A needle's own error hardly changes between two looks; what is left is the eye, at a tenth of an inHg each. */
const HOLD_HALF_KPA = 0.5;
/** A water column read to 0.1 inH2O while it moves. Common practice, no source. */
const MANOMETER_HALF_KPA = 0.06;
/** Digits of the reader: 0.01 V, and its own converter. Common practice, no source. */
const READER_HALF_VOLTS = 0.05;
/** The sense state is looked at twice a second. */
const TURNING_HALF_S = 0.5;
/** Brightness of a test lamp as words. */
const DIM = 0.05;
const BRIGHT = 0.6;

/** What a world says to a question at its tick. */
export function answer(question: Question, seen: Observation, sight: Sight): Shown {
  const number = (channel: Channel, value: number | null | 'unstable', half: number): Shown => ({
    kind: 'number',
    channel,
    setUp: question.setUp,
    tick: question.tick,
    value,
    half,
  });
  const yesNo = (channel: Channel, value: boolean): Shown => ({
    kind: 'yes-no',
    channel,
    setUp: question.setUp,
    tick: question.tick,
    value,
  });
  const word = (channel: Channel, value: string): Shown => ({
    kind: 'word',
    channel,
    setUp: question.setUp,
    tick: question.tick,
    value,
  });
  switch (question.about) {
    case 'meter': {
      const { display } = seen.meter;
      if (!display.settled) return number('meter', 'unstable', 0);
      return number('meter', display.value, meterHalfWidth(seen.meter.function, display));
    }
    case 'tone':
      return yesNo('tone', seen.meter.tone);
    case 'battery-sign':
      return yesNo('lamp', seen.meter.batteryLow);
    case 'gauge':
      return number('gauge', seen.gauge.needleKPa, GAUGE_HALF_KPA);
    case 'hold':
      return number('gauge', sight.lostSince(question.since, seen), HOLD_HALF_KPA);
    case 'manometer':
      return number('manometer', sight.turnedAt(question.to, question.since), MANOMETER_HALF_KPA);
    case 'turning':
      return number('reader-state', sight.secondsTo(question.to, question.since), TURNING_HALF_S);
    case 'click':
      return yesNo('click', heard(seen, ['click-on', 'click-off'], question.since));
    case 'hiss':
      return yesNo('hiss', heard(seen, ['hiss'], question.since));
    case 'lamp':
      return word('lamp', glowWord(seen.testLamp.glow));
    case 'led':
      return word('led', seen.ledTester.lit);
    case 'smoke':
      return yesNo('smoke', seen.smoke.seenAt.includes(question.at));
    case 'finding':
      return word('finding', [...(seen.findings.at(-1)?.signs ?? [])].sort().join(' '));
    case 'reader-volts':
      return number('reader-volts', seen.reader.senseVolts, READER_HALF_VOLTS);
    case 'reader-state':
      return word('reader-state', seen.reader.senseState ?? 'asleep');
    case 'reader-driver':
      return word('reader-driver', seen.reader.driver ?? 'asleep');
    case 'codes':
      return word('codes', codesWord(seen.reader.codes.map(({ code }) => code)));
    case 'drive':
      return word('drive', codesWord((seen.lastDrive?.cycles ?? []).flatMap(({ codes }) => codes)));
    case 'fuse':
      return word('fuse', seen.fuse.element);
    default:
      return unreachable(question);
  }
}

/** Codes as one word: each once, by number. */
export function codesWord(codes: readonly string[]): string {
  return [...new Set(codes)].sort().join(' ');
}

function heard(seen: Observation, kinds: readonly HappeningKind[], since: number): boolean {
  return seen.happenings.some(({ kind, tick }) => tick >= since && kinds.includes(kind));
}

function glowWord(glow: number): string {
  if (glow < DIM) return 'dark';
  return glow < BRIGHT ? 'dim' : 'bright';
}
