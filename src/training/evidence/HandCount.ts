import type { SittingAction } from '../sitting/SittingAction.ts';
import { beginsTrial } from './Listening.ts';
import type { Trials } from './Question.ts';

const LETS_AIR_IN: ReadonlySet<SittingAction['kind']> = new Set([
  'fit',
  'take-off',
  'swap-unit',
  'renew',
  'road-test',
]);

/** What hands have done so often: strokes since air was last let in, and trials of what comes and goes. */
export class HandCount {
  private drawn = 0;
  private counted: Trials = { energised: 0, drawn: 0, moved: 0 };

  /** Whole strokes; half a stroke counts half. */
  get strokes(): number {
    return this.drawn;
  }

  get trials(): Trials {
    return this.counted;
  }

  count(action: SittingAction): void {
    const { energised, drawn, moved } = this.counted;
    if (beginsTrial(action)) this.counted = { ...this.counted, energised: energised + 1 };
    if (action.kind === 'wiggle' || action.kind === 'road-test')
      this.counted = { ...this.counted, moved: moved + 1 };
    if (action.kind === 'stroke') {
      this.drawn += action.depth;
      this.counted = { ...this.counted, drawn: drawn + 1 };
    }
    if (LETS_AIR_IN.has(action.kind) || (action.kind === 'release' && action.open)) this.drawn = 0;
  }
}
