import { type TestTool, TOOL_ITEMS } from '../../sim/devices/items.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { Difficulty, DifficultyReason } from './ScenarioProof.ts';

/** What is known of a job's plan when its difficulty is asked for. */
export interface PlanFigures {
  readonly tests: readonly StandardTestId[];
  readonly tools: readonly TestTool[];
  readonly favouriteIsTrue: boolean;
  /** How many tests of the catalogue tell the truth from a sound truck. */
  readonly telling: number;
}

/** A plan of more different tests than this is long. */
const MANY_TESTS = 6;
/** Where no more tests than this tell what is wrong from a sound truck, the usual ones pass. */
const FEW_TELL = 3;
/** Tools that a first-year student has not met. */
const FINE: readonly TestTool[] = ['manometer', 'smoke-machine', 'jar'];

/** Three levels for four reasons beyond the first level, four levels at most. What hardly any test shows counts twice. */
export function difficultyOf(scenario: Scenario, plan: PlanFigures): Difficulty {
  const because = REASONS.filter(([, holds]) => holds(scenario, plan)).map(([reason]) => reason);
  const weight = because.length + (because.includes('few-tests-show-it') ? 1 : 0);
  const level = Math.min(1 + Math.floor((weight * 3) / 4), 4) as Difficulty['level'];
  return { level, because };
}

type Holds = (scenario: Scenario, plan: PlanFigures) => boolean;

const REASONS: readonly (readonly [DifficultyReason, Holds])[] = [
  ['many-tests', (_, { tests }) => new Set(tests).size > MANY_TESTS],
  ['favourite-is-wrong', (_, { favouriteIsTrue }) => !favouriteIsTrue],
  ['few-tests-show-it', (_, { telling }) => telling <= FEW_TELL],
  [
    'comes-and-goes',
    ({ faults }) =>
      faults.some(
        ({ fault, whenMoved }) => whenMoved === true || faultById(fault)?.intermittent === 'each-trial',
      ),
  ],
  ['tool-is-bad', ({ faults }) => faults.some(isOfTool)],
  [
    'two-things-wrong',
    ({ faults }) => itemsOf(faults).length > 1 && !faults.some(({ root }) => root !== undefined),
  ],
  ['nothing-is-wrong', ({ faults }) => itemsOf(faults).length === 0],
  ['root-behind-it', ({ faults }) => faults.some(({ root }) => root !== undefined)],
  ['fine-instrument', (_, { tools }) => tools.some((tool) => FINE.includes(tool))],
];

function isOfTool({ fault }: Scenario['faults'][number]): boolean {
  const item = faultById(fault)?.item;
  return item !== undefined && TOOL_ITEMS.includes(item);
}

/** Items of the truck that are wrong, each once. */
function itemsOf(faults: Scenario['faults']): readonly string[] {
  return [
    ...new Set(faults.filter((one) => !isOfTool(one)).map(({ fault }) => faultById(fault)?.item ?? fault)),
  ];
}
