import { expect, it } from 'vitest';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import { outcomesOn, shownOnlyWhenBad, soundOutcomes } from '../support/standardOutcomes.ts';

/**
 * What looks alike is told apart: two faults that the controller or a first test confuses, and the test that splits them,
 * whatever the tolerances of the truck. Which test splits which is common practice, no source.
 */
const SPLITS: readonly [string, string, StandardTestId][] = [
  // Smoke: where it comes out.
  ['capsule-torn', 'body-cracked', 'smoke-unit-alone'],
  ['filler-cap-leaking', 'tank-seal-leaking', 'smoke-whole-system'],
  ['canister-cracked', 'canister-hose-split', 'smoke-vessel-alone'],
  ['purge-valve-passing', 'canister-cracked', 'smoke-whole-system'],
  // Clamp-offs: which side of the canister hose.
  ['capsule-torn', 'canister-hose-split', 'draw-canister-hose-plugged'],
  ['body-cracked', 'filler-cap-leaking', 'smoke-vessel-alone'],
  ['vent-seat-leaking', 'tank-seal-leaking', 'draw-canister-hose-plugged'],
  // Ports driven both ways.
  ['inlet-check-leaking', 'outlet-check-leaking', 'slow-strokes-jar'],
  ['diaphragm-torn', 'return-spring-broken', 'engine-port-hold'],
  ['plunger-stuck', 'solenoid-valve-leaking', 'engine-port-hold'],
  ['vent-seat-leaking', 'capsule-torn', 'hold-capped'],
  ['vent-stuck-shut', 'vent-bleed-blocked', 'vent-shut-hold'],
  // The switch's own points.
  ['differential-collapsed', 'canister-hose-split', 'trip-and-reset'],
  // Middling, its trip lies beyond the reach of the manometer: a whole stroke of the hand pump closes it still.
  ['trip-high', 'switch-stuck-open', 'vacuum-and-sense'],
  // Terminal from contact, contact from wire, wire from controller.
  ['terminal-3-spread', 'switch-intermittent', 'drag-terminals'],
  ['terminal-3-spread', 'sense-open', 'tug-plug-switch-closed'],
  ['switch-stuck-open', 'sense-open', 'bridge-3-to-2'],
  ['switch-resistance', 'sense-resistance', 'sense-wire-drop'],
  ['switch-stuck-closed', 'sense-to-ground', 'sense-parted'],
  ['sense-open', 'pull-up-lost', 'sense-at-controller'],
  ['feed-open', 'driver-dead', 'feed-bias-10-megohm'],
  ['feed-open', 'winding-open', 'coil-ohms'],
  ['feed-resistance', 'turns-shorted', 'feed-wire-drop'],
  ['fuse-blown', 'driver-dead', 'look-fuse'],
  ['key-contacts-burnt', 'feed-resistance', 'fused-supply-drop'],
  ['ground-resistance', 'feed-resistance', 'ground-drop'],
  ['plunger-stuck', 'feed-open', 'jumper-clicks'],
  ['plunger-stuck', 'winding-open', 'coil-ohms'],
  ['moisture-2-3', 'switch-resistance', 'look-plug'],
  // Tools from the truck.
  ['hand-pump-seal-leaking', 'capsule-torn', 'hand-pump-dead-end'],
  ['meter-lead-open', 'pull-up-lost', 'meter-on-battery'],
  ['meter-fuse-blown', 'sense-open', 'meter-current-fuse'],
  ['jumper-fuse-blown', 'winding-open', 'jumper-proof'],
  // Hoses.
  ['engine-hose-pinched', 'engine-hose-leaking', 'engine-vacuum-at-hose'],
  ['air-hose-blocked', 'filter-clogged', 'look-into-hoses'],
];

const ON = ['split-a', 'split-b', 'split-c', 'split-d', 'split-e'];
const OTHERS = ['other-a', 'other-b', 'other-c'];

it.each(SPLITS)('%s from %s by %s', (one, other, by) => {
  const test = STANDARD_TESTS.find(({ id }) => id === by);
  expect(test).toBeDefined();
  if (test === undefined) return;
  const theirs = soundOutcomes(test, ON, [{ fault: one, severity: 0.5 }]);
  for (const seed of OTHERS) {
    const outcomes = outcomesOn(test, seed, [{ fault: other, severity: 0.5 }]);
    expect(shownOnlyWhenBad(theirs, outcomes), seed).not.toEqual([]);
  }
});

it('outcomes are things shown, as evidence takes them', () => {
  const [test] = STANDARD_TESTS;
  const shown: readonly Shown[] = test === undefined ? [] : outcomesOn(test, 'split-a');
  expect(shown.map(({ kind, setUp }) => `${kind} ${setUp}`)).toEqual([
    'yes-no meter-on-battery/battery-sign',
    'number meter-on-battery/volts',
  ]);
});
