import { describe, expect, it } from 'vitest';
import { TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import {
  complaintLikelihood,
  complaintOf,
  complaintsOf,
  LEAST_COMPLAINT,
  priorOf,
  SAME_CODES,
} from '../../src/training/evidence/complaint.ts';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';
import { NOTHING_WRONG, suspects } from '../../src/training/evidence/suspects.ts';
import { toolStates } from '../../src/training/evidence/toolStates.ts';
import { ROOM } from './support.ts';

const all = suspects();

describe('the suspects', () => {
  it('are every fault that a job may begin with, at one to four degrees, and nothing wrong', () => {
    for (const { id, weight, item } of PUMP_FAULTS) {
      const degrees = all.filter(({ family }) => family === id);
      const isSuspect = weight > 0 && !TOOL_ITEMS.includes(item);
      expect(degrees.length > 0, id).toBe(isSuspect);
      expect(degrees.length, id).toBeLessThanOrEqual(4);
    }
    expect(all.filter(({ id }) => id === NOTHING_WRONG)).toHaveLength(1);
  });

  it('keep the weight of their fault, whatever the number of degrees', () => {
    for (const { id, weight, item } of PUMP_FAULTS) {
      if (TOOL_ITEMS.includes(item)) continue;
      const sum = all
        .filter(({ family }) => family === id || family === `${id}/moved`)
        .reduce((total, one) => total + one.weight, 0);
      expect(sum, id).toBeCloseTo(weight, 9);
    }
  });

  it('hold the pairs of the ten likeliest items, and keep them rare', () => {
    const pairs = all.filter(({ items }) => items.length === 2);
    expect(pairs).toHaveLength(45);
    const prior = priorOf(all, null, '');
    const ofPairs = all.reduce((sum, { items }, s) => (items.length === 2 ? sum + (prior[s] ?? 0) : sum), 0);
    expect(ofPairs).toBeLessThan(0.1);
    expect(ofPairs).toBeGreaterThan(0.005);
  });

  it('have names of their own', () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  });
});

describe('the tools', () => {
  it('are good or bad beside the suspects, a few per cent each', () => {
    const states = toolStates();
    expect(states.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 12);
    for (const { bad, prior } of states.slice(1)) {
      expect(bad).not.toBeNull();
      expect(prior).toBeLessThanOrEqual(0.03);
    }
    expect(states).toHaveLength(7);
  });
});

describe('the complaint', () => {
  it('weighs suspects by the codes they make, and none below 3 %', () => {
    const few = all.filter(({ id }) => ['winding-open', 'sense-to-battery/1', NOTHING_WRONG].includes(id));
    const drives = { cycles: 6, refuelled: false };
    const complaints = few.map((suspect) => complaintOf(suspect, ROOM, drives));
    const winding = few.findIndex(({ id }) => id === 'winding-open');
    expect(complaints[winding]?.codes).toBe('P2400');
    const prior = priorOf(few, complaints, 'P2400');
    const plain = priorOf(few, null, '');
    expect(prior[winding]).toBeGreaterThan(plain[winding] ?? 1);
    const nothing = few.findIndex(({ id }) => id === NOTHING_WRONG);
    expect(prior[nothing]).toBeGreaterThan(0);
    expect((prior[nothing] ?? 0) / (prior[winding] ?? 1)).toBeCloseTo(
      ((plain[nothing] ?? 0) / (plain[winding] ?? 1)) * (LEAST_COMPLAINT / SAME_CODES),
      9,
    );
  }, 60_000);

  it('the same codes, some of them, another size of leak, none', () => {
    expect(complaintLikelihood('P2400', 'P2400')).toBe(SAME_CODES);
    expect(complaintLikelihood('P2400 P2404', 'P2404')).toBe(0.3);
    expect(complaintLikelihood('P0442', 'P0456')).toBe(0.12);
    expect(complaintLikelihood('', 'P0456')).toBe(LEAST_COMPLAINT);
    expect(complaintLikelihood('', '')).toBe(SAME_CODES);
  });

  it('one of two faults may hide the other: what keeps the monitor from running', () => {
    const nothing = suspects()[0] as Suspect;
    const moist = { fault: 'moisture-2-3', severity: 0.5 };
    const seal = { fault: 'tank-seal-leaking', severity: 0.5 };
    const made = [[moist], [seal], [moist, seal]].map((faults) => ({ ...nothing, faults }));
    const [first, second, both] = complaintsOf(made, ROOM, { cycles: 8, refuelled: false });
    expect(first?.codes).toBe('P2404');
    expect(second?.codes).toMatch(/^P04/);
    expect(both?.codes).toBe('P2404');
  }, 60_000);
});
