import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { ScenarioContent } from './Scenario.ts';
import type { ScenarioFile } from './scenarioSchema.ts';
import type { FaultRange, Variant } from './Variant.ts';

/** The content of a checked file, with the names that the program uses. */
export function contentOf(file: ScenarioFile): ScenarioContent {
  return {
    format: file.format,
    id: file.id,
    title: file.title,
    summary: file.summary,
    mode: file.mode,
    level: file.level,
    minutes: file.minutes,
    aims: file.aims,
    workOrder: withoutUndefined(file['work-order']),
    bench: {
      ambientC: file.bench['ambient-celsius'],
      altitudeM: file.bench['altitude-metres'],
      fuelPercent: file.bench['fuel-percent'],
    },
    ...(file.tools === undefined ? {} : { tools: file.tools }),
    ...(file.limits === undefined ? {} : { limits: withoutUndefined(file.limits) }),
    seed: file.seed,
    drives: file.drives,
    faults: file.faults.map(faultOf),
    ...variantsOf(file),
    rulesOff: file.rules?.off ?? [],
    ...(file.rules?.on === undefined ? {} : { rulesOn: file.rules.on }),
    ...(file.weights === undefined ? {} : { weights: file.weights }),
    steps: file.walkthrough ?? [],
    remark: file.remark,
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
  const others = (variants ?? []).map(({ faults: own, ...others }) => ({
    faults: own.map(rangeOf),
    ...withoutUndefined(others),
  }));
  return { variants: [{ faults: faults.map(rangeOf) }, ...others] };
}

function withoutUndefined<T extends object>(fields: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
