import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { bearingEntries } from '../../src/training/score/bearing.ts';
import type { DebriefFacts } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { timelineOf } from '../../src/training/score/Timeline.ts';
import type { LogEntry } from '../../src/training/sitting/LogEntry.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';

/** Each job turns on one thing that a hasty hand does not see. Here it is shown that the bench really hides it. */

function scenarioOf(id: string): Scenario {
  const text = readFileSync(new URL(`../../scenarios/${id}.yaml`, import.meta.url), 'utf8');
  const loaded = loadScenario(text, `${id}.yaml`);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

const fullJob = (id: string): string =>
  readFileSync(new URL(`../golden/actions/${id}.full.txt`, import.meta.url), 'utf8');

/** The whole job with a passage changed; the passage must be there. */
function changed(id: string, passage: string, instead = ''): string {
  const text = fullJob(id);
  expect(text).toContain(passage);
  return text.replace(passage, instead);
}

interface Sat {
  readonly log: readonly LogEntry[];
  readonly facts: DebriefFacts;
  /** Those of these entries that bear on the verdict. */
  readonly bearing: (entries: readonly number[]) => readonly number[];
}

function sit(id: string, text: string): Sat {
  const scenario = scenarioOf(id);
  const lines = parseActions(text);
  if (!lines.ok) throw new Error(JSON.stringify(lines.error));
  const sitting = Sitting.begin(scenario);
  const run = runActions(sitting, lines.value);
  if (!run.ok) throw new Error(`${run.error.line}: ${run.error.text}: ${run.error.refusal}`);
  const record = sitting.record();
  const facts = debrief(scenario, record);
  const timeline = timelineOf(scenario, record);
  if (!facts.ok || !timeline.ok) throw new Error('the job does not replay');
  const { log, verdict } = timeline.value;
  const bearing = (entries: readonly number[]): readonly number[] =>
    bearingEntries({ ...timeline.value, verdict: { ...verdict, cites: entries } }, scenario, record);
  return { log, facts: facts.value, bearing };
}

const repairPoints = ({ score }: DebriefFacts): number =>
  score.parts.find(({ part }) => part === 'repair')?.points ?? -1;
const drives = (log: readonly LogEntry[]) =>
  log.flatMap(({ about, seen }) => (about === 'drive' ? [seen.lastDrive?.cycles ?? []] : []));
const noted = (log: readonly LogEntry[], note: string): number =>
  log.find((entry) => entry.note === note)?.id ?? -1;

describe('tight as a drum', () => {
  test('everything that a hand gauge and a meter can ask, the unit answers as a good one would', () => {
    const { log, bearing } = sit('tight-as-a-drum', fullJob('tight-as-a-drum'));
    const column = noted(log, 'Trip, column and sense');
    const before = log.filter(({ id, about }) => id < column && about === 'reading').map(({ id }) => id);
    expect(before.length).toBeGreaterThan(5);
    expect(bearing(before)).toEqual([]);
  });

  test('the water column tells it: the switch is back within half an inch', () => {
    const { log, bearing } = sit('tight-as-a-drum', fullJob('tight-as-a-drum'));
    const back = noted(log, 'Sense is back already');
    expect(bearing([back])).toEqual([back]);
  });
});

describe('nine volts and still a code', () => {
  test('at rest and under vacuum, solenoid off, the ground wire looks as good as a new one', () => {
    const { log, bearing } = sit('nine-volts-and-still-a-code', fullJob('nine-volts-and-still-a-code'));
    const loaded = noted(log, 'Sense under vacuum, solenoid on');
    expect(bearing([loaded])).toEqual([loaded]);
    expect(bearing(log.filter(({ id }) => id > 1 && id < loaded).map(({ id }) => id))).toEqual([]);
  });

  test('clicks through the new wire do not prove it, for they came through the old one too', () => {
    const passage = `solenoid on
wait steady
log "New ground wire, commanded on"
solenoid off
`;
    const without = changed('nine-volts-and-still-a-code', passage, 'solenoid on\nwait 1 s\nsolenoid off\n');
    const shown = without.replace(
      'renew ground-wire\nlead meter-red to cavity-2-back\n',
      'renew ground-wire\nlead meter-red to cavity-3-back\n',
    );
    const again = shown.replace('release shut\nlead meter-red to cavity-3-back\n', 'release shut\n');
    expect(repairPoints(sit('nine-volts-and-still-a-code', again).facts)).toBe(0);
    expect(
      repairPoints(sit('nine-volts-and-still-a-code', fullJob('nine-volts-and-still-a-code')).facts),
    ).toBe(20);
  });
});

describe('voltage at the plug', () => {
  test('the voltage on the parted feed is the same from a good controller', () => {
    const { log, bearing } = sit(
      'voltage-at-the-plug',
      `accept
part plug
meter volts-dc
lead meter-red to harness-1
lead meter-black to battery-negative
key on
wait steady
log "Ghost"
verdict controller cites 1
close
`,
    );
    expect(log[0]?.seen.meter.display.value).toBeGreaterThan(5.4);
    expect(log[0]?.seen.meter.display.value).toBeLessThan(6);
    expect(bearing([1])).toEqual([]);
  });

  test('a new controller that has not been heard to drive the solenoid is not proven', () => {
    const passage = `key on
solenoid on
wait steady
log "Feed at the plug, new controller"
solenoid off
solenoid on
wait 1 s
solenoid off
solenoid on
wait 1 s
solenoid off
log "Clicks"
`;
    const { facts } = sit('voltage-at-the-plug', changed('voltage-at-the-plug', passage, 'key on\n'));
    expect(facts.verdict.right).toBe(true);
    expect(repairPoints(facts)).toBe(0);
  });
});

describe('everyone looked', () => {
  test('an eye finds nothing on the cap, smoke does', () => {
    const { log, bearing } = sit('everyone-looked', fullJob('everyone-looked'));
    const look = log.find(({ about }) => about === 'finding');
    expect(look?.seen.findings.at(-1)).toMatchObject({ at: 'filler-cap', signs: ['nothing-wrong'] });
    expect(bearing([look?.id ?? -1])).toEqual([]);
    expect(bearing([noted(log, 'Smoke')])).toEqual([noted(log, 'Smoke')]);
  });
});

describe('the unit on the shelf', () => {
  test('the pump that condemned the unit loses as much on its own hose, and another loses nothing', () => {
    const { log } = sit('the-unit-on-the-shelf', fullJob('the-unit-on-the-shelf'));
    const gaugeAt = (note: string): number =>
      log.find((entry) => entry.note === note)?.seen.gauge.needleKPa ?? -1;
    expect(gaugeAt('Pump on its own closed hose, one minute')).toBeLessThan(1);
    expect(gaugeAt('The other pump on its own closed hose, one minute')).toBeGreaterThan(60);
    expect(gaugeAt('Sense under vacuum, and it holds')).toBeGreaterThan(55);
  });

  test('to say so without a reading is a guess, and is paid as one', () => {
    const { facts } = sit('the-unit-on-the-shelf', 'accept\nverdict nothing-wrong\nclose\n');
    expect(facts.verdict.right).toBe(true);
    // Bound of the assessment design: guesser at most 25.
    expect(facts.score.total).toBeLessThanOrEqual(25);
    expect(repairPoints(facts)).toBe(4);
  });
});

describe('the quarry road', () => {
  test('standing still everything measures as it should; moved, it does not', () => {
    const { log, bearing } = sit('the-quarry-road', fullJob('the-quarry-road'));
    const moved = noted(log, 'Highest on the feed, plug moved');
    const still = log.filter(({ id }) => id > 1 && id < moved).map(({ id }) => id);
    expect(still.length).toBeGreaterThan(7);
    expect(bearing(still)).toEqual([]);
    expect(bearing([moved])).toEqual([moved]);
  });

  test('the drag gauge names the terminal, and the eye sees nothing there', () => {
    const { log } = sit('the-quarry-road', fullJob('the-quarry-road'));
    const found = log.flatMap(({ about, seen }) => (about === 'finding' ? [seen.findings.at(-1)] : []));
    expect(found.slice(0, 4)).toMatchObject([
      { cavity: 1, signs: ['terminal-slack'] },
      { cavity: 2, signs: ['terminal-grips'] },
      { cavity: 3, signs: ['terminal-grips'] },
      { how: 'look', signs: ['nothing-wrong'] },
    ]);
  });
});

describe('third unit this year', () => {
  test('with its cause left in, the fourth unit passes its test and fails on the road', () => {
    const { log, facts } = sit(
      'third-unit-this-year',
      changed('third-unit-this-year', 'renew canister\n').replace('drive 4', 'drive 8'),
    );
    const bench = log.find((entry) => entry.note === 'New unit under vacuum');
    expect(bench?.seen.gauge.needleKPa).toBeGreaterThan(55);
    expect(bench?.seen.meter.display.value).toBeLessThan(0.1);
    // What the road has refuted is not proven.
    expect(repairPoints(facts)).toBe(0);
    const judged = drives(log)
      .at(-1)
      ?.filter(({ outcome }) => outcome !== 'not-run');
    expect(judged?.at(0)?.outcome).toBe('passed');
    expect(judged?.at(-1)).toMatchObject({ outcome: 'failed', codes: ['P0456'] });
  });
});

describe('another code this time', () => {
  test('the circuit code keeps the monitor from the leak; with the plug mended it is found at once', () => {
    const { log } = sit('another-code-this-time', fullJob('another-code-this-time'));
    const [first, last] = drives(log);
    expect(log[0]?.seen.reader.codes.map(({ code }) => code)).not.toContain('P0442');
    expect(first?.every(({ codes }) => codes.join() === 'P0442')).toBe(true);
    expect(last?.at(-1)?.outcome).toBe('passed');
  });

  test('the plug alone, with the second code still coming back, is no proven repair', () => {
    const half = changed('another-code-this-time', 'renew tank-seal\n');
    const { facts, log } = sit('another-code-this-time', half);
    expect(facts.verdict.right).toBe(true);
    expect(drives(log).at(-1)?.at(-1)?.outcome).toBe('failed');
    expect(repairPoints(facts)).toBe(0);
  });
});
