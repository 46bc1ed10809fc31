import { decisiveRetest } from '../decisiveRetest.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** The test that convicted the part was done again on the part that was fitted, and passed. A duty. */
export const retestOnFittedPart: MethodRule = (timeline) => {
  const { verdict } = timeline;
  if (verdict.item === 'nothing-wrong') return NO_OCCASION;
  const passed = decisiveRetest(timeline, verdict.item);
  return passed === null ? missed() : kept(passed.ticks, passed.entries);
};
