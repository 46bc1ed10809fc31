import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import type { DebriefFacts } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import type { LogEntry } from '../../src/training/sitting/LogEntry.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { VerdictItem } from '../../src/training/sitting/SittingAction.ts';
import { EASY_PAR, madeUpEvidence } from '../support/evidenceFacts.ts';
import { TRAPPED } from '../support/goldenJobs.ts';
import { goldenSuite } from '../support/goldenSuite.ts';
import { type WeighedGolden, weighedGolden, weighSat } from '../support/weighedGolden.ts';

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
  /** What it scored, its verdict taken for fully carried: here the repair is looked at. */
  readonly facts: DebriefFacts;
}

function sat(id: string, text: string): Sitting {
  const lines = parseActions(text);
  if (!lines.ok) throw new Error(JSON.stringify(lines.error));
  const sitting = Sitting.begin(scenarioOf(id));
  const run = runActions(sitting, lines.value);
  if (!run.ok) throw new Error(`${run.error.line}: ${run.error.text}: ${run.error.refusal}`);
  return sitting;
}

function sit(id: string, text: string): Sat {
  const sitting = sat(id, text);
  const evidence = madeUpEvidence(sitting.view(), { weight: 1 });
  const facts = debrief(scenarioOf(id), sitting.record(), evidence, EASY_PAR);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return { log: sitting.view().log, facts: facts.value };
}

goldenSuite('golden jobs with a trap that only weighing shows', TRAPPED);

/** The chance of an item after each log entry; `noted` finds an entry by its note. */
function chances({ evidence, view: { log } }: WeighedGolden, item: VerdictItem) {
  const chanceAfter = (entry: number): number => {
    const step = evidence.steps.find((one) => one.entry === entry);
    return step?.items.find((one) => one.item === item)?.chance ?? -1;
  };
  return {
    log,
    chanceAfter,
    noted: (note: string) => chanceAfter(noted(log, note)),
    verdict: evidence.verdict,
  };
}

const retestPoints = ({ score }: DebriefFacts): number =>
  score.parts.flatMap(({ because }) => because).find(({ kind }) => kind === 'retest')?.points ?? -1;
const repairPoints = ({ score }: DebriefFacts): number =>
  score.parts.find(({ part }) => part === 'repair')?.points ?? -1;
const drives = (log: readonly LogEntry[]) =>
  log.flatMap(({ about, seen }) => (about === 'drive' ? [seen.lastDrive?.cycles ?? []] : []));
const noted = (log: readonly LogEntry[], note: string): number =>
  log.find((entry) => entry.note === note)?.id ?? -1;

describe('tight as a drum', () => {
  test('everything that a hand gauge and a meter can ask speaks for the unit; the water column tells', () => {
    const { chanceAfter, log } = chances(weighedGolden('tight-as-a-drum.full.txt'), 'unit');
    const column = noted(log, 'Trip, column and sense');
    // The complaint, a unit that holds, a switch that makes and lets go.
    expect(chanceAfter(column - 1)).toBeLessThan(chanceAfter(0));
    const last = log.filter(({ note }) => note === 'Sense is back already').at(-1)?.id ?? -1;
    expect(chanceAfter(last)).toBeGreaterThan(0.95);
  });
});

describe('nine volts and still a code', () => {
  test('at rest and under vacuum, solenoid off, the sense circuit is within its limits; loaded it is not, and that convicts', () => {
    const { log, noted: at } = chances(weighedGolden('nine-volts-and-still-a-code.full.txt'), 'ground-wire');
    const volts = (note: string): number =>
      log.find((entry) => entry.note === note)?.seen.meter.display.value ?? Number.NaN;
    // Thresholds of this rig's controller: closed below 2 V, open above 6 V, implausible in between.
    expect(volts('Sense at rest')).toBeGreaterThan(6);
    expect(volts('Sense under vacuum, and it holds')).toBeLessThan(0.1);
    expect(volts('Sense under vacuum, solenoid on')).toBeGreaterThan(2);
    expect(volts('Sense under vacuum, solenoid on')).toBeLessThan(6);
    expect(at('Ground side at the plug, commanded on')).toBeGreaterThan(0.95);
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
    expect(retestPoints(sit('nine-volts-and-still-a-code', again).facts)).toBe(0);
    expect(
      repairPoints(sit('nine-volts-and-still-a-code', fullJob('nine-volts-and-still-a-code')).facts),
    ).toBe(10);
  });
});

describe('voltage at the plug', () => {
  test('the voltage on the parted feed says nothing against the controller', () => {
    const sitting = sat(
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
    const { log, chanceAfter, verdict } = chances(
      weighSat({
        scenario: scenarioOf('voltage-at-the-plug'),
        record: sitting.record(),
        view: sitting.view(),
      }),
      'controller',
    );
    expect(log[0]?.seen.meter.display.value).toBeGreaterThan(5.4);
    expect(log[0]?.seen.meter.display.value).toBeLessThan(6);
    expect(chanceAfter(1)).toBeLessThan(2 * chanceAfter(0));
    expect(verdict.weight).toBeLessThan(0.25);
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
    expect(retestPoints(facts)).toBe(0);
  });
});

describe('everyone looked', () => {
  test('an eye finds nothing on the cap, smoke does', () => {
    const { log, chanceAfter, noted: at } = chances(weighedGolden('everyone-looked.full.txt'), 'filler-cap');
    const look = log.find(({ seen }) => seen.findings.at(-1)?.at === 'filler-cap');
    expect(look?.seen.findings.at(-1)).toMatchObject({ at: 'filler-cap', signs: ['nothing-wrong'] });
    const looked = look?.id ?? -1;
    expect(chanceAfter(looked)).toBeLessThanOrEqual(chanceAfter(looked - 1) * 1.1);
    expect(at('Smoke')).toBeGreaterThan(0.9);
    expect(at('Smoke')).toBeGreaterThan(2 * chanceAfter(looked));
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

  test('to say so without a reading is a guess: leaving the parts in is worth what is carried', () => {
    const sitting = sat('the-unit-on-the-shelf', 'accept\nverdict nothing-wrong\nclose\n');
    const nothing = madeUpEvidence(sitting.view(), { weight: 0 });
    const facts = debrief(scenarioOf('the-unit-on-the-shelf'), sitting.record(), nothing, EASY_PAR);
    expect(facts.ok && facts.value.verdict.right).toBe(true);
    // Bound of the assessment design: guesser at most 25.
    expect(facts.ok ? facts.value.score.total : 100).toBeLessThanOrEqual(25);
    expect(facts.ok ? repairPoints(facts.value) : -1).toBe(0);
  });
});

describe('the quarry road', () => {
  test('standing still everything measures as it should; moved, it does not', () => {
    const { log, chanceAfter, noted: at } = chances(weighedGolden('the-quarry-road.full.txt'), 'plug');
    const moved = noted(log, 'Highest on the feed, plug moved');
    expect(chanceAfter(moved - 1)).toBeLessThan(0.6);
    expect(at('Highest on the feed, plug moved')).toBeGreaterThan(chanceAfter(moved - 1));
    expect(
      log.findIndex(({ seen }) => seen.findings.at(-1)?.signs.includes('terminal-slack')),
    ).toBeGreaterThan(moved);
    expect(
      chanceAfter(log.find(({ seen }) => seen.findings.at(-1)?.how === 'drag')?.id ?? -1),
    ).toBeGreaterThan(0.95);
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
    // What the road has refuted is not proven; the hoses are on again, and that is all.
    expect(repairPoints(facts)).toBe(2);
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
    expect(repairPoints(facts)).toBe(2);
  });
});
