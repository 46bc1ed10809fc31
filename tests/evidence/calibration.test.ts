import { describe, expect, it, vi } from 'vitest';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { testMinutes } from '../../src/sim/rigs/standardTests/testMinutes.ts';
import {
  type CalibrationClaim,
  calibrationSitting,
  calibrationTable,
  chanceOfClaim,
} from '../../src/training/evidence/calibration.ts';
import { priorOf } from '../../src/training/evidence/complaint.ts';
import { OutcomeTableMaker } from '../../src/training/evidence/OutcomeTable.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { bookMinutes } from '../../src/training/sitting/book.ts';
import { ROOM } from './support.ts';

vi.setConfig({ testTimeout: 120_000 });

const claim = (shown: number, confirming: number, right: boolean): CalibrationClaim => ({
  truth: '',
  claimed: '',
  right,
  shown,
  confirming,
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
    expect(table.bins[9]).toEqual({ claims: 2, meanChance: 0.9, rightShare: 0.5 });
    expect(table.bins[3]).toEqual({ claims: 2, meanChance: 0.3, rightShare: 0.5 });
    expect(table.expectedError).toBeCloseTo(0.3, 12);
    expect(table.certain).toEqual({ claims: 0, rightShare: null });
  });

  it('the lower of cited and shown is what a verdict is judged by', () => {
    expect(claims.map((one) => chanceOfClaim(one, 'lower'))).toEqual([0.9, 0.9, 0.2, 0.25, 0.99]);
    expect(calibrationTable(claims, 'confirming').certain).toEqual({ claims: 3, rightShare: 2 / 3 });
    expect(calibrationTable(claims, 'lower').certain).toEqual({ claims: 1, rightShare: 1 });
  });
});

// A part of the catalogue and of the tests, so that it takes seconds. The whole of it is a command of its own.
const FAMILIES = new Set([
  'nothing-wrong',
  'winding-open',
  'turns-shorted',
  'plunger-stuck',
  'plunger-sticky',
  'switch-stuck-open',
  'switch-intermittent',
  'capsule-torn',
  'body-cracked',
  'ground-resistance',
  'sense-open',
  'sense-to-ground',
  'driver-dead',
  'pull-up-lost',
  'fuse-blown',
]);
const TESTS = new Set([
  'coil-ohms',
  'command-clicks',
  'sense-at-plug',
  'sense-at-controller',
  'sense-with-solenoid-on',
  'ground-drop',
  'feed-drop',
  'hold-capped',
  'vacuum-and-sense',
  'look-fuse',
  'look-around',
  'sense-parted',
]);

describe('random sittings under seeds that no suspect has', () => {
  it('what the evidence claims is true about as often as it says', () => {
    const few = suspects().filter(({ family }) => FAMILIES.has(family));
    const tests = STANDARD_TESTS.filter(({ id }) => TESTS.has(id));
    expect(tests).toHaveLength(TESTS.size);
    const maker = new OutcomeTableMaker(few, tests, ROOM, 3);
    maker.work(maker.left);
    const bench = {
      prior: priorOf(few, null, ''),
      evidence: new TestEvidence(few, maker.table),
      tests,
      minutes: tests.map((test) => testMinutes(test, (action) => bookMinutes(action))),
      environment: ROOM,
    };
    const claims = Array.from({ length: 150 }, (_, i) => calibrationSitting(bench, `few/${i}`));
    for (const basis of ['shown', 'lower'] as const) {
      const table = calibrationTable(claims, basis);
      // 150 claims leave some 0.05 to chance alone.
      expect(table.expectedError, basis).toBeLessThan(0.12);
      expect(table.certain.claims, basis).toBeGreaterThan(40);
      expect(table.certain.rightShare, basis).toBeGreaterThan(0.93);
    }
  });
});
