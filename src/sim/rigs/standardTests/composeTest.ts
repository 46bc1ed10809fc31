import type { BenchSurface } from '../../devices/BenchSurface.ts';
import type { ItemId } from '../../devices/items.ts';
import type { LeadPoint } from '../../devices/places.ts';
import { eachStep, type SingleStep } from './eachStep.ts';
import { putBack } from './putBack.ts';
import type { StandardTest, TestStep } from './StandardTest.ts';
import { SET_UPS, type SetUpId } from './setUps.ts';
import type { StandardTestId } from './testIds.ts';
import { toolsOf } from './toolsOf.ts';

/** A standard test as it is written down. */
export interface TestSheet {
  readonly id: StandardTestId;
  readonly prepares: SetUpId;
  readonly about: readonly ItemId[];
  readonly steps: readonly TestStep[];
  readonly leaves?: StandardTest['leaves'];
}

/**
 * A test from its sheet: what follows from its steps is worked out, so that it cannot be wrong. `hoses` are those of the
 * rig, which its undo puts back.
 */
export function composeTest(
  { id, prepares, about, steps, leaves = [] }: TestSheet,
  hoses: BenchSurface['hoses'],
): StandardTest {
  const all = eachStep([...SET_UPS[prepares], ...steps]);
  return {
    id,
    prepares,
    about,
    steps,
    undo: putBack(all, hoses),
    leads: leadsOf(all),
    needs: toolsOf(all),
    money: 0,
    leaves,
  };
}

/**
 * Where the meter's tips stand when it is first read. A tip that lies loose with something clipped to it is a point of
 * its own.
 */
function leadsOf(steps: readonly SingleStep[]): StandardTest['leads'] {
  let red: LeadPoint = 'meter-red-tip';
  let black: LeadPoint = 'meter-black-tip';
  for (const step of steps) {
    if (step.kind === 'place-lead' && step.end === 'meter-red') red = step.point;
    if (step.kind === 'place-lead' && step.end === 'meter-black') black = step.point;
    if (step.kind === 'read' && step.reading.of === 'meter') return { red, black };
  }
  return null;
}
