import { beforeAll, describe, expect, it } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { workCalibration } from '../../src/cli/calibrationShare.ts';
import { keptTables } from '../../src/cli/keptTables.ts';
import {
  type CalibrationClaim,
  calibrationTable,
  chanceOfClaim,
  measuredShare,
} from '../../src/training/evidence/calibration.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { calibrationLive } from '../../src/training/learners/calibrationLive.ts';
import { drawnTruth, weightOfTruth } from '../../src/training/learners/calibrationTruth.ts';
import { ToolFactor } from '../../src/training/learners/ToolFactor.ts';

const claim = (shown: number, confirming: number, right: boolean, leads = true): CalibrationClaim => ({
  seed: '',
  truth: '',
  tools: [],
  claimed: '',
  right,
  shown,
  confirming,
  leads,
});

describe('the table, worked by hand', () => {
  const claims = [
    claim(0.9, 0.97, true),
    claim(0.9, 0.99, false),
    claim(0.3, 0.2, true),
    claim(0.3, 0.25, false),
    claim(0.99, 0.99, true),
  ];

  it('four claims of 0.9 and 0.3, half of each right, are out by 0.4 and 0.2', () => {
    const table = calibrationTable(claims.slice(0, 4), 'shown');
    expect(table.bins[9]).toMatchObject({ claims: 2, meanChance: 0.9, right: { share: 0.5 } });
    expect(table.bins[3]).toMatchObject({ claims: 2, meanChance: 0.3, right: { share: 0.5 } });
    expect(table.expectedError).toBeCloseTo(0.3, 12);
    expect(table.certain).toEqual({ claims: 0, right: null });
    // By chance: √(2/π)·(√(2·0.09) + √(2·0.21))/4.
    expect(table.errorByChance).toBeCloseTo(0.2139, 4);
  });

  it('the lower of cited and shown is what a verdict is judged by', () => {
    expect(claims.map((one) => chanceOfClaim(one, 'lower'))).toEqual([0.9, 0.9, 0.2, 0.25, 0.99]);
    const confirming = calibrationTable(claims, 'confirming');
    expect(confirming.certain.claims).toBe(3);
    expect(confirming.certain.right?.share).toBeCloseTo(2 / 3, 12);
    expect(confirming.wrong).toEqual([claims[1]]);
    expect(calibrationTable(claims, 'lower').certain).toMatchObject({ claims: 1, right: { share: 1 } });
  });

  it('where the cited entries make another item likelier, nothing is claimed by them', () => {
    const beaten = claim(0.6, 0.1, true, false);
    const table = calibrationTable([...claims, beaten], 'lower');
    expect(table).toMatchObject({ claims: 5, without: 1 });
    expect(table.bins[1]?.claims).toBe(0);
    // On everything shown it leads, and counts.
    expect(calibrationTable([...claims, beaten], 'shown')).toMatchObject({ claims: 6, without: 0 });
  });

  it('says that claims are not honest where more than chance puts them too far off', () => {
    const of = (right: number, all: number, chance: number): CalibrationClaim[] =>
      Array.from({ length: all }, (_, i) => claim(chance, chance, i < right));
    const honest = [...of(900, 1000, 0.9), ...of(980, 1000, 0.97), ...of(60, 100, 0.62)];
    expect(calibrationTable(honest, 'shown').holds).toBe(true);
    // 83 of 100 for a claim of 90 % may be chance, 830 of 1000 not.
    expect(calibrationTable(of(83, 100, 0.9), 'shown').bins[9]?.strays).toBe(false);
    expect(calibrationTable(of(820, 1000, 0.9), 'shown').bins[9]?.strays).toBe(true);
    expect(calibrationTable([...of(980, 1000, 0.97), ...of(920, 1000, 0.96)], 'shown').holds).toBe(true);
    expect(calibrationTable([...of(940, 1000, 0.97), ...of(920, 1000, 0.96)], 'shown').holds).toBe(false);
    expect(calibrationTable(of(500, 1000, 0.6), 'shown').holds).toBe(false);
  });

  // Source: R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, score method; figures from memory. The third
  // follows from the formula by itself: z²/(n + z²).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('the interval of %i in %i is the published one', (count, of, from, to) => {
    const { share, ...interval } = measuredShare(count, of);
    expect(share).toBe(count / of);
    expect(interval.from).toBeCloseTo(from, 4);
    expect(interval.to).toBeCloseTo(to, 4);
  });
});

describe('truths of the calibration', () => {
  const all = suspects();
  const random = Random.of('truths', 'calibration');
  const truths = Array.from({ length: 20_000 }, () => drawnTruth(all, [4, 8, 12], random));
  const total = all.reduce((sum, suspect) => sum + weightOfTruth(suspect), 0);

  it('are every suspect of the catalogue, each as often as its weight says', () => {
    for (const suspect of all) {
      const expected = (truths.length * weightOfTruth(suspect)) / total;
      const count = truths.filter((truth) => truth.suspect === suspect).length;
      // Four standard widths of a count by chance.
      expect(Math.abs(count - expected), suspect.id).toBeLessThanOrEqual(4 * Math.sqrt(expected) + 1);
    }
    const kinds = truths.map(({ suspect }) => suspect);
    expect(kinds.some(({ items }) => items.length === 0)).toBe(true);
    expect(kinds.some(({ items }) => items.length === 2)).toBe(true);
    for (const trialOf of ['energised', 'drawn', 'moved']) {
      expect(
        kinds.some(({ faces }) => faces?.trialOf === trialOf),
        trialOf,
      ).toBe(true);
    }
  });

  it('are of any degree', () => {
    const degrees = truths.flatMap(({ faults }) => faults.map(({ severity }) => severity));
    for (let tenth = 0; tenth < 10; tenth++) {
      const share = degrees.filter((one) => Math.floor(one * 10) === tenth).length / degrees.length;
      expect(share).toBeGreaterThan(0.09);
      expect(share).toBeLessThan(0.11);
    }
  });

  it('have each tool bad beside them by its own chance, never by that of the truck', () => {
    // 3 % for each fault of weight 3, 2 % for one of weight 2.
    const share = (fault: string): number =>
      truths.filter(({ badTools }) => badTools.some((one) => one.fault === fault)).length / truths.length;
    expect(share('meter-lead-open')).toBeGreaterThan(0.025);
    expect(share('meter-lead-open')).toBeLessThan(0.035);
    expect(share('gauge-sticking')).toBeGreaterThan(0.016);
    expect(share('gauge-sticking')).toBeLessThan(0.024);
  });
});

describe('random sittings under seeds that no suspect has', () => {
  const SITTINGS = 120;
  const claims: CalibrationClaim[] = [];
  beforeAll(() => {
    const sat = workCalibration({ path: 'by-table', from: 0, to: SITTINGS });
    if (sat.kind === 'sat') claims.push(...sat.claims);
  });

  it.each(['shown', 'lower'] as const)(
    'what the evidence claims is true about as often as it says: %s',
    (basis) => {
      const table = calibrationTable(claims, basis);
      expect(table.claims + table.without).toBe(SITTINGS);
      expect(table.without).toBeLessThan(SITTINGS / 20);
      expect(table.expectedError).toBeLessThan(0.03 + 2 * table.errorByChance);
      expect(table.bins.filter(({ strays }) => strays)).toEqual([]);
      expect(table.certain.claims).toBeGreaterThan(SITTINGS / 3);
      expect(table.certain.right?.share).toBeGreaterThan(0.95);
    },
  );

  it('hang on their number alone, whoever sits them and after what', () => {
    const again = workCalibration({ path: 'by-table', from: 51, to: 54 });
    expect(again).toEqual({ kind: 'sat', claims: claims.slice(51, 54) });
  });
});

describe('sittings weighed as the score weighs them', () => {
  // Of the first forty the ones that last a minute or two: a longer one costs every suspect's bench half a minute of work.
  const SHORT = [7, 12, 21, 33, 36, 39];

  it('claim what the kept tables claim, nearly as strongly', () => {
    const tables = keptTables();
    if (!tables.ok) throw new Error(tables.error);
    const factor = new ToolFactor(tables.value);
    const sat = SHORT.map((i) => calibrationLive(tables.value, factor, `agreement/${i}`, 4));
    for (const { live, byTable } of sat) {
      expect(live.claimed, live.seed).toBe(byTable.claimed);
      expect(live.right, live.seed).toBe(byTable.right);
      expect(Math.abs(live.shown - byTable.shown), live.seed).toBeLessThan(0.06);
      expect(Math.abs(live.confirming - byTable.confirming), live.seed).toBeLessThan(0.06);
    }
    // They are no trifles: some are as good as proven, some open, and in one two tools are bad.
    expect(sat.filter(({ live }) => live.shown > 0.95)).toHaveLength(3);
    expect(sat.filter(({ live }) => live.shown < 0.6)).toHaveLength(3);
    expect(sat.map(({ live }) => live.tools.length)).toContain(2);
  });
});
