import type { TestStep } from './StandardTest.ts';

/** A step as hands come upon it: repeats are written out. */
export type SingleStep = Exclude<TestStep, { readonly kind: 'repeat' }>;

/** Steps one after the other, with repeats written out. */
export function eachStep(steps: readonly TestStep[]): readonly SingleStep[] {
  return steps.flatMap((step) => {
    if (step.kind !== 'repeat') return [step];
    const once = eachStep(step.steps);
    return Array.from({ length: step.times }, () => once).flat();
  });
}
