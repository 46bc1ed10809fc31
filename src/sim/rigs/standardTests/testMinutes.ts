import { eachStep, type SingleStep } from './eachStep.ts';
import type { StandardTest } from './StandardTest.ts';
import { SET_UPS } from './setUps.ts';
import type { TestAction } from './TestBench.ts';

/** What a book has minutes for: the hands' actions, and the paperwork of taking a reading down. */
export type BookedAction =
  | TestAction
  | { readonly kind: 'wait'; readonly seconds: number }
  | { readonly kind: 'wait-steady' }
  | { readonly kind: 'log' }
  | { readonly kind: 'read-codes' };

/** Book minutes of a test, its set-up and its undo with it. `book` gives the minutes of one action. */
export function testMinutes(test: StandardTest, book: (action: BookedAction) => number): number {
  const steps = [...SET_UPS[test.prepares], ...test.steps, ...test.undo];
  return eachStep(steps)
    .flatMap(bookedActions)
    .reduce((sum, action) => sum + book(action), 0);
}

/** What a hand would be seen to do for one step on a sound truck. */
export function bookedActions(step: SingleStep): readonly BookedAction[] {
  switch (step.kind) {
    case 'stroke-until': {
      const one = [
        { kind: 'stroke', depth: step.depth },
        { kind: 'wait', seconds: step.pauseSeconds },
      ] as const;
      return Array.from({ length: step.usual }, () => one).flat();
    }
    case 'wait-until':
      return [{ kind: 'wait', seconds: step.mostSeconds }];
    case 'refill-if-empty':
      return [];
    case 'wait-steady':
      return [{ kind: 'wait-steady' }];
    case 'read':
      // Findings and drives write themselves down; so do codes, once they are read.
      switch (step.reading.of) {
        case 'codes':
          return [{ kind: 'read-codes' }];
        case 'finding':
        case 'freeze-data':
        case 'drive':
          return [];
        default:
          return [{ kind: 'log' }];
      }
    default:
      return [step];
  }
}
