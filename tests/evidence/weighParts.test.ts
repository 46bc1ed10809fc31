import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { AnswerSource } from '../../src/training/evidence/Answers.ts';
import { drawsFor, isLikely } from '../../src/training/evidence/allotment.ts';
import { foretell, foretellWithBadTool } from '../../src/training/evidence/foretell.ts';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { posteriorOf } from '../../src/training/evidence/posteriorOf.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';
import { SuspectLikelihood } from '../../src/training/evidence/suspectLikelihood.ts';
import { testsDone } from '../../src/training/evidence/testsDone.ts';
import { toolStates, toolStatesByDegree } from '../../src/training/evidence/toolStates.ts';
import { WatchedWorld } from '../../src/training/evidence/WatchedWorld.ts';
import type { Asked } from '../../src/training/evidence/watchShown.ts';

const A: readonly FaultChoice[] = [{ fault: 'a', severity: 1 }];
const B: readonly FaultChoice[] = [{ fault: 'b', severity: 1 }];
const LEAK: FaultChoice = { fault: 'pump', severity: 1 };

function volts(value: number | null, setUp: string, tick = 0): Shown {
  return { kind: 'number', channel: 'meter', setUp, tick, value, half: 0.03 };
}

function asked(...shown: readonly Shown[]): Asked[] {
  return shown.map((one, n) => ({
    question: {
      about: 'meter',
      tick: n,
      setUp: one.setUp,
      trials: { energised: 0, drawn: 0, moved: 0 },
      bothFaces: false,
    },
    shown: one,
  }));
}

function suspect(id: string, faults: readonly FaultChoice[]): Suspect {
  return {
    id,
    faults,
    items: [],
    modes: [],
    item: id,
    modeGroup: id,
    weight: 1,
    family: id,
    level: 0,
    faces: null,
  };
}

/** Worlds that answer the n-th question with the n-th of these numbers. */
function source(
  answers: ReadonlyMap<readonly FaultChoice[], readonly (readonly (number | null)[])[]>,
  sound: readonly (readonly (number | null)[])[] = [],
  soundWithLeak: readonly number[] | null = null,
): AnswerSource {
  const row = (values: readonly (number | null)[]): readonly Shown[] =>
    values.map((value, n) => volts(value, `set-up ${n}`));
  return {
    answersOf: (faults) => (answers.get(faults) ?? []).map(row),
    hasUsed: () => soundWithLeak !== null,
    answersWithBadTool: () => null,
    soundWithBadTool: () => (soundWithLeak === null ? null : row(soundWithLeak)),
    sound: sound.map(row),
  };
}

const cluster = { asks: [0], shown: volts(12.5, 'set-up 0'), weight: 1, subject: 'meter' };

describe('a suspect with few draws', () => {
  const sound = [[12.5], [12.4], [12.6], [12.45]];

  it('that shows about what a sound truck shows keeps its distance from it in the other draws', () => {
    const foretold = foretell(source(new Map([[A, [[12.4]]]]), sound), A, cluster) as number[];
    for (const [d, expected] of [12.4, 12.3, 12.5, 12.35].entries())
      expect(foretold[d]).toBeCloseTo(expected, 12);
  });

  it('that shows something else stands by itself, and one with all its draws needs no help', () => {
    expect(foretell(source(new Map([[A, [[3]]]]), sound), A, cluster)).toEqual([3]);
    expect(foretell(source(new Map([[A, [[null]]]]), sound), A, cluster)).toEqual([null]);
    const all = [[12.1], [12.2], [12.3], [12.4]];
    expect(foretell(source(new Map([[A, all]]), sound), A, cluster)).toEqual(all.flat());
  });

  it('shows with a bad tool what a sound truck does, where it shows what a sound truck shows', () => {
    const with3 = source(
      new Map([
        [A, [[12.5]]],
        [B, [[3]]],
      ]),
      sound,
      [7],
    );
    expect(foretellWithBadTool(with3, A, LEAK, cluster)).toEqual([7]);
    expect(foretellWithBadTool(with3, B, LEAK, cluster)).toBeNull();
    const unchanged = source(new Map([[A, [[12.5]]]]), sound, [12.5]);
    expect(foretellWithBadTool(unchanged, A, LEAK, cluster)).toBeNull();
  });
});

describe('the same thing shown again in other set-ups', () => {
  const both = [suspect('a', A), suspect('b', B)];
  const beliefs = { suspects: both, prior: [0.5, 0.5], tools: toolStates().slice(0, 1) };
  const chanceOfA = (
    answers: ReadonlyMap<readonly FaultChoice[], readonly (readonly number[])[]>,
    shown: readonly Asked[],
  ): number => posteriorOf(beliefs, new SuspectLikelihood(both, source(answers)), shown).ofItem('a');
  const often = asked(...[0, 1, 2, 3, 4, 5].map((n) => volts(5.2, `meter sense | set-up ${n}`)));

  it('counts once for and against a suspect that foretells the same each time', () => {
    const answers = new Map([
      [A, [5.7, 5.6, 5.8, 5.5].map((value) => new Array<number>(6).fill(value))],
      [B, [4.4, 4.3, 4.5, 4.2].map((value) => new Array<number>(6).fill(value))],
    ]);
    const once = chanceOfA(answers, often.slice(0, 1));
    expect(once).toBeGreaterThan(0.5);
    expect(once).toBeLessThan(0.99);
    expect(chanceOfA(answers, often)).toBeCloseTo(once, 9);
  });

  it('and speaks against one that foretells a change which does not come', () => {
    const steady = [5.2, 5.1, 5.3, 5.25].map((value) => new Array<number>(6).fill(value));
    const answers = new Map([
      [A, steady],
      [B, steady.map((row) => row.map((value, n) => (n < 3 ? value : 0.1)))],
    ]);
    expect(chanceOfA(answers, often.slice(0, 3))).toBeCloseTo(0.5, 9);
    expect(chanceOfA(answers, often)).toBeGreaterThan(0.95);
  });
});

describe('how many draws a suspect is worth', () => {
  it('all when it is likely, until it is far less so; one when it hardly counts', () => {
    expect(drawsFor(0.3, 1)).toBe(8);
    expect(drawsFor(0.05, 1)).toBe(4);
    expect(drawsFor(0.05, 8)).toBe(8);
    expect(drawsFor(0.01, 8)).toBe(4);
    expect(drawsFor(0.01, 1)).toBe(1);
    expect(drawsFor(1e-6, 8)).toBe(1);
  });

  it('bad tools are tried on likely suspects, and on the sound truck always', () => {
    expect(isLikely(0.2, 'no')).toBe('yes');
    expect(isLikely(0.05, 'yes')).toBe('yes');
    expect(isLikely(0.05, 'no')).toBe('no');
    expect(isLikely(0.001, 'yes')).toBe('no');
    expect(isLikely(0, 'always')).toBe('always');
  });
});

describe('tools in degrees', () => {
  it('share the chance of their fault, and know their neighbours', () => {
    const states = toolStatesByDegree();
    expect(states.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 12);
    const leaks = states.filter(({ bad }) => bad?.fault === 'hand-pump-seal-leaking');
    expect(leaks.map(({ bad }) => bad?.severity)).toEqual([0, 1 / 3, 2 / 3, 1]);
    expect(leaks.map(({ beside }) => beside?.length)).toEqual([1, 2, 2, 1]);
    const whole = toolStates().find(({ bad }) => bad?.fault === 'hand-pump-seal-leaking')?.prior ?? 0;
    expect(leaks.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(whole, 12);
  });
});

describe('tests that were effectively done', () => {
  const opened = openTables(
    readFileSync(new URL('../../assets/evidence/shop.json', import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(opened.error.code);
  const tables = opened.value;
  const doneBy = (...ids: readonly StandardTestId[]): readonly string[] => {
    const faults = [{ fault: 'sense-open', severity: 1 }];
    const bench = new WatchedWorld(createWorld({ seed: 'truth', faults, ...tables.environment }));
    for (const id of ids) {
      const test = tables.tests.find((one) => one.id === id);
      if (test === undefined) continue;
      runStandardTest(test, bench, () => bench.watch.acted({ kind: 'log' }, bench.observe()));
    }
    return [...testsDone(tables, bench.watch.asked)].map((number) => tables.tests[number]?.id ?? '');
  };

  it('are known by what was shown, whatever is wrong with the truck', () => {
    expect(doneBy()).toEqual([]);
    expect(doneBy('meter-on-battery')).toContain('meter-on-battery');
    expect(doneBy('meter-on-battery')).not.toContain('coil-ohms');
    expect(doneBy('coil-ohms', 'sense-at-plug')).toEqual(
      expect.arrayContaining(['coil-ohms', 'sense-at-plug']),
    );
    expect(doneBy('hold-capped')).toContain('hold-capped');
    expect(doneBy('hold-capped')).not.toContain('hand-pump-dead-end');
  });
});
