import { FIRST_RIG } from '../../sim/rigs/rigs.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { areEmpty, otherWordsOf, sentenceOf } from './jobTexts.ts';
import type { ScenarioContent } from './Scenario.ts';
import type { ScenarioFile } from './scenarioSchema.ts';
import { textsOf } from './textsOf.ts';
import type { FaultRange, Variant } from './Variant.ts';

/** The content of a checked file, with the names that the program uses. */
export function contentOf(file: ScenarioFile): ScenarioContent {
  const words = otherWordsOf(textsOf(file));
  return {
    format: file.format,
    // The first rig is meant where none is named: the content is the same either way.
    ...(file.rig === undefined || file.rig === FIRST_RIG ? {} : { rig: file.rig }),
    id: file.id,
    title: sentenceOf(file.title),
    summary: sentenceOf(file.summary),
    mode: file.mode,
    level: file.level,
    minutes: file.minutes,
    aims: file.aims.map(sentenceOf),
    workOrder: orderOf(file['work-order']),
    bench: {
      ambientC: file.bench['ambient-celsius'],
      altitudeM: file.bench['altitude-metres'],
      fuelPercent: file.bench['fuel-percent'],
    },
    ...(file.tools === undefined ? {} : { tools: file.tools }),
    ...(file.limits === undefined ? {} : { limits: withoutUndefined(file.limits) }),
    ...seedOf(file.seed),
    drives: file.drives,
    faults: file.faults.map(faultOf),
    ...variantsOf(file),
    rulesOff: file.rules?.off ?? [],
    ...(file.rules?.on === undefined ? {} : { rulesOn: file.rules.on }),
    ...(file.weights === undefined ? {} : { weights: file.weights }),
    steps: (file.walkthrough ?? []).map((step) => ({
      ...step,
      say: sentenceOf(step.say),
      how: sentenceOf(step.how),
    })),
    remark: sentenceOf(file.remark),
    ...(areEmpty(words) ? {} : { words }),
  };
}

/** A plain word leaves the policy to the mode. */
function seedOf(seed: ScenarioFile['seed']): Pick<ScenarioContent, 'seed' | 'seedPolicy'> {
  return typeof seed === 'string' ? { seed } : { seed: seed.word, seedPolicy: seed.policy };
}

function orderOf(order: ScenarioFile['work-order']): ScenarioContent['workOrder'] {
  const { vehicle, complaint, history, cautions, ...rest } = withoutUndefined(order);
  return {
    ...rest,
    vehicle: sentenceOf(vehicle),
    complaint: sentenceOf(complaint),
    history: history.map(sentenceOf),
    cautions: cautions.map(sentenceOf),
  };
}

type FaultEntry = ScenarioFile['faults'][number];

function faultOf({ fault, severity, 'when-moved': whenMoved, root }: FaultEntry): FaultChoice {
  return {
    fault,
    severity: severity ?? 0,
    ...(whenMoved === undefined ? {} : { whenMoved }),
    ...(root === undefined ? {} : { root }),
  };
}

function rangeOf(entry: FaultEntry): FaultRange {
  const severityTo = entry['severity-to'];
  return { ...faultOf(entry), ...(severityTo === undefined ? {} : { severityTo }) };
}

/** All truths, where there is more than one: a scenario without has nothing of the kind in its content. */
function variantsOf({ faults, variants }: ScenarioFile): { readonly variants?: readonly Variant[] } {
  const ranged = faults.some((entry) => entry['severity-to'] !== undefined);
  if (variants === undefined && !ranged) return {};
  const others = (variants ?? []).map(({ faults: own, complaint, history, remark, ...others }) => ({
    faults: own.map(rangeOf),
    ...withoutUndefined(others),
    ...(complaint === undefined ? {} : { complaint: sentenceOf(complaint) }),
    ...(history === undefined ? {} : { history: history.map(sentenceOf) }),
    ...(remark === undefined ? {} : { remark: sentenceOf(remark) }),
  }));
  return { variants: [{ faults: faults.map(rangeOf) }, ...others] };
}

function withoutUndefined<T extends object>(fields: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
