import { unreachable } from '../base/assert.ts';
import type { Goal, Reading, StandardTest, TestStep } from '../sim/rigs/standardTests/StandardTest.ts';
import { describeAction } from './describeAction.ts';
import { capital, fixed, smokePressure, vacuumAim } from './format.ts';
import { say, type TextKey } from './translate.ts';

/** A standard test as it is printed: its name, what it proves, its procedure in three parts, its cautions. */
export interface StandardProcedure {
  readonly name: string;
  readonly proves: string;
  readonly needs: readonly string[];
  readonly setUp: readonly string[];
  readonly work: readonly string[];
  readonly undo: readonly string[];
  readonly cautions: readonly string[];
}

/** The written procedure of a test. `setUp` are the steps of the set-up that it prepares. */
export function standardProcedure(test: StandardTest, setUp: readonly TestStep[]): StandardProcedure {
  return {
    name: say(`standardTests.list.${test.id}.name`),
    proves: say(`standardTests.list.${test.id}.proves`),
    needs: test.needs.map((tool) => say(`benchTools.${tool}`)),
    setUp: procedureLines(setUp),
    work: procedureLines(test.steps),
    undo: procedureLines(test.undo),
    cautions: cautionsOf([...setUp, ...test.steps]),
  };
}

/** Pauses shorter than this are a hand's own pace. */
const WORTH_SAYING_S = 0.5;

/** Steps as lines of a procedure, each a sentence; steps of a repeat follow it, indented by two spaces. */
export function procedureLines(steps: readonly TestStep[]): readonly string[] {
  return steps.flatMap((step, i): readonly string[] => {
    const next = steps[i + 1];
    switch (step.kind) {
      case 'wait':
        return step.seconds < WORTH_SAYING_S ? [] : [sentence(stepWords(step))];
      case 'clamp':
        return steps[i - 1]?.kind === 'fit' ? [] : [sentence(stepWords(step))];
      case 'fit': {
        const values = { item: say(`fittings.${step.item}`), site: say(`sites.${step.site}`) };
        if (next?.kind === 'clamp') return [sentence(say('standardTests.steps.onPort', values))];
        const plugs = step.item.startsWith('plug-');
        return [sentence(plugs ? say('standardTests.steps.onEnd', values) : describeAction(step))];
      }
      case 'repeat':
        return [
          capital(say('standardTests.steps.repeat', { times: step.times })),
          ...procedureLines(step.steps).map((line) => `  ${line}`),
        ];
      default:
        return [sentence(stepWords(step))];
    }
  });
}

const sentence = (words: string): string => `${capital(words)}.`;

function stepWords(step: Exclude<TestStep, { kind: 'repeat' }>): string {
  switch (step.kind) {
    case 'wait':
      return say('standardTests.steps.wait', { seconds: seconds(step.seconds) });
    case 'wait-steady':
      return say('standardTests.steps.steady');
    case 'stroke-until': {
      const key = step.depth < 1 ? 'standardTests.steps.partStrokes' : 'standardTests.steps.strokes';
      return say(key, { goal: goalWords(step.goal), most: step.most });
    }
    case 'wait-until':
      return say('standardTests.steps.until', {
        goal: goalWords(step.goal),
        seconds: seconds(step.mostSeconds),
      });
    case 'refill-if-empty':
      return say('standardTests.steps.refill');
    case 'read':
      return readingWords(step.reading);
    case 'stroke':
      if (step.depth === 1) return say('standardTests.steps.stroke');
      return say('standardTests.steps.partStroke', { percent: fixed(step.depth * 100, 0) });
    case 'meter-range':
      return say('standardTests.steps.range');
    case 'meter-extremes':
      return say('standardTests.steps.record', { show: say(`extremes.${step.show}`) });
    case 'look':
    case 'listen':
      return say(`standardTests.steps.${step.kind}`, { place: say(`examined.${step.at}`) });
    case 'wiggle':
      return say('standardTests.steps.wiggle', { place: say(`wigglePlaces.${step.at}`) });
    case 'drag-test':
      return say('standardTests.steps.drag', { cavity: step.cavity });
    case 'road-test':
      return say('standardTests.steps.road', { cycles: step.cycles });
    case 'command-solenoid':
      return say('standardTests.steps.command', { command: say(`solenoid.${step.command}`) });
    case 'set-smoke':
      if (step.gas === 'off') return say('standardTests.steps.smokeOff');
      return say('standardTests.steps.smoke', { pressure: smokePressure(step.pa / 1000) });
    case 'set-bleed':
      return step.openness === 0 ? say('standardTests.steps.bleedShut') : describeAction(step);
    case 'release':
      return say(step.open ? 'standardTests.steps.release' : 'standardTests.steps.releaseShut');
    default:
      return describeAction(step);
  }
}

const seconds = (value: number): string => fixed(value, value % 1 === 0 ? 0 : 1);

function goalWords(goal: Goal): string {
  switch (goal.kind) {
    case 'gauge-at-least':
      return say('standardTests.goals.gauge-at-least', { vacuum: vacuumAim(goal.kPa) });
    case 'gauge-halved':
      return say('standardTests.goals.gauge-halved');
    case 'sense-is':
      return say(`standardTests.goals.${goal.state}`);
    default:
      return unreachable(goal);
  }
}

function readingWords(reading: Reading): string {
  if (reading.of === 'click') return say(`standardTests.readings.${reading.way}`);
  return say(`standardTests.readings.${reading.of}`);
}

type Caution =
  | 'tank'
  | 'unit'
  | 'smoke'
  | 'sparks'
  | 'sense'
  | 'plug'
  | 'ohms'
  | 'probe'
  | 'clamps'
  | 'first';
const CAUTIONS: readonly Caution[] = [
  'plug',
  'ohms',
  'probe',
  'sense',
  'sparks',
  'smoke',
  'tank',
  'unit',
  'clamps',
  'first',
];

/** The usual cautions that go with these steps; that service information comes first goes with all of them. */
export function cautionsOf(steps: readonly TestStep[]): readonly string[] {
  const named = new Set<Caution>(steps.flatMap(cautionsOfStep));
  named.add('first');
  return CAUTIONS.filter((one) => named.has(one)).map((one) => {
    const key: TextKey = `serviceTools.cautionLines.${one}`;
    return say(key);
  });
}

function cautionsOfStep(step: TestStep): readonly Caution[] {
  switch (step.kind) {
    case 'repeat':
      return step.steps.flatMap(cautionsOfStep);
    case 'part-plug':
      return ['plug'];
    case 'set-meter':
      return step.function === 'ohms' || step.function === 'continuity' ? ['ohms'] : [];
    case 'insert-pin':
      return ['probe'];
    case 'place-lead':
      return step.end.startsWith('lamp-') || step.end.startsWith('jumper-') ? ['sense', 'sparks'] : [];
    case 'fit':
      return step.item === 'pump-hose' && step.site !== 'air-hose-end' ? ['unit'] : [];
    case 'clamp':
      return ['clamps'];
    case 'take-off':
      return step.item === 'canister-hose' ? ['sparks', 'tank'] : [];
    case 'set-smoke':
      return ['smoke', 'tank'];
    default:
      return [];
  }
}
