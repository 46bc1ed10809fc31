import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { OutcomeTable } from '../../src/training/evidence/OutcomeTable.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';

/** A suspect of an item, with one thing wrong with it. */
export function madeUp(id: string, item: string, mode = 'x', more: Partial<Suspect> = {}): Suspect {
  return {
    id,
    faults: [faultOf(id)],
    items: [],
    modes: [],
    item,
    modeGroup: `${item}/${mode}`,
    weight: 1,
    family: id,
    level: 0,
    faces: null,
    ...more,
  };
}

export const faultOf = (id: string): FaultChoice => ({ fault: id, severity: 1 });

/** A click that was heard, or not. */
export function click(test: string, value: boolean): Shown {
  return { kind: 'yes-no', channel: 'click', setUp: test, tick: 0, value };
}

/** A table of made-up tests: each a row of what the cases show in both draws, y or n. */
export function tableOfClicks(tests: Readonly<Record<string, string>>): OutcomeTable {
  const draws = (test: string, mark: string) => [0, 1].map(() => [click(test, mark === 'y')]);
  return {
    tests: Object.keys(tests),
    outcomes: Object.entries(tests).map(([test, row]) => [...row].map((mark) => draws(test, mark))),
  };
}
