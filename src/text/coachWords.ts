import { unreachable } from '../base/assert.ts';
import type { StandardTest, TestStep } from '../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../sim/rigs/standardTests/testIds.ts';
import type { Advice } from '../training/coach/Advice.ts';
import type { CoachDepth } from '../training/sitting/SittingAction.ts';
import { fixed } from './format.ts';
import { standardProcedure } from './standardProcedure.ts';
import { say, type TextKey } from './translate.ts';

/** A standard test with the steps of its set-up and its minutes by the book. */
interface Sheet {
  readonly test: StandardTest;
  readonly setUp: readonly TestStep[];
  readonly minutes: number;
}

/** What the coach says: a test's name or none, sentences, and at its deepest the steps in parts. */
export interface CoachWords {
  readonly title: string | null;
  readonly says: readonly string[];
  readonly parts: readonly {
    readonly heading: string;
    readonly lines: readonly string[];
    /** Whether the lines are steps, to be done in this order. */
    readonly ordered: boolean;
  }[];
}

/** An advice in words, as deep as it was asked for. `sheetOf` gives the sheet of a named test. */
export function coachWords(
  advice: Advice,
  depth: CoachDepth,
  sheetOf: (test: StandardTestId) => Sheet,
): CoachWords {
  switch (advice.kind) {
    case 'prove-tool':
      return testWords(sheetOf(advice.test), depth, questionOf(advice.test), [say('coach.proveTool')]);
    case 'do-test':
      return testWords(sheetOf(advice.test), depth, questionOf(advice.test), []);
    case 'repeat-test':
      return testWords(sheetOf(advice.test), depth, say('coach.repeatQuestion'), [
        say('coach.repeat', { count: advice.done }),
        say('coach.repeatOf', { of: advice.of }),
      ]);
    case 'decide':
      return plainWords(depth, 'decide', ['read', 'choose', 'tools', 'give']);
    case 'nothing-left':
      return plainWords(depth, 'nothingLeft', ['read', 'moved', 'give']);
    case 'prove-repair':
      return plainWords(depth, 'proveRepair', ['new', 'same', 'restore', 'clear', 'drive', 'codes']);
    default:
      return unreachable(advice);
  }
}

const questionOf = (test: StandardTestId): string => say(`coach.questions.${test}`);

function testWords(
  { test, setUp, minutes }: Sheet,
  depth: CoachDepth,
  question: string,
  first: readonly string[],
): CoachWords {
  if (depth === 'question') return { title: null, says: [question], parts: [] };
  const procedure = standardProcedure(test, setUp);
  const title = procedure.name;
  const length = say('coach.minutes', { minutes: fixed(minutes, 0) });
  if (depth === 'test') {
    const proves = say('coach.proves', { proves: procedure.proves });
    return { title, says: [...first, proves, ...aboutWords(test), length], parts: [] };
  }
  const parts = [
    { heading: say('standardTests.parts.cautions'), lines: procedure.cautions, ordered: false },
    {
      heading: say('standardTests.parts.setUp'),
      lines: [say('coach.from'), ...procedure.setUp],
      ordered: true,
    },
    { heading: say('standardTests.parts.work'), lines: procedure.work, ordered: true },
    { heading: say('standardTests.parts.undo'), lines: procedure.undo, ordered: true },
  ];
  return { title, says: [...first, length], parts: parts.filter(({ lines }) => lines.length > 0) };
}

/** More items than this are counted, not named: a list of nearly all tells nothing. */
const MOST_NAMED = 6;

function aboutWords({ about }: StandardTest): readonly string[] {
  if (about.length === 0) return [];
  if (about.length > MOST_NAMED) return [say('coach.aboutMany', { items: about.length })];
  return [say('coach.about', { items: about.map((item) => say(`items.${item}`)).join('; ') })];
}

type StepNames<K extends 'decide' | 'nothingLeft' | 'proveRepair'> =
  Extract<TextKey, `coach.${K}.steps.${string}`> extends `coach.${K}.steps.${infer Name}` ? Name : never;

function plainWords<K extends 'decide' | 'nothingLeft' | 'proveRepair'>(
  depth: CoachDepth,
  of: K,
  steps: readonly StepNames<K>[],
): CoachWords {
  if (depth === 'question') return { title: null, says: [say(`coach.${of}.question`)], parts: [] };
  const says = [say(`coach.${of}.test`)];
  const title = say(`coach.${of}.title`);
  if (depth === 'test') return { title, says, parts: [] };
  const lines = steps.map((step) => say(`coach.${of}.steps.${step}` as TextKey));
  return { title, says, parts: [{ heading: say('coach.steps'), lines, ordered: true }] };
}
