import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { DrivesBefore, FaultChoice } from '../../sim/world/WorldPort.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { bookMinutes, priceOf } from '../sitting/book.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { complaintOf, priorOf } from './complaint.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { environmentOf } from './environment.ts';
import type { JobPar, ParInLines, ParLine } from './JobPar.ts';
import { Posterior } from './Posterior.ts';
import { minutesOfSteps, type Plan, type PlanStep, planOf } from './par.ts';
import {
  cheapLookMinutes,
  minutesOf,
  moneyOf,
  repairMinutes,
  roadMinutes,
  testsAsked,
  trialMinutes,
} from './parBook.ts';
import { priorOfJob } from './priorOfJob.ts';
import { NOTHING_WRONG } from './suspects.ts';
import { itemOf, TrueBench } from './TrueBench.ts';
import { testsNotAtHand } from './testsAtHand.ts';

/** Codes are read first. What they say is in the complaint already. */
const FIRST: StandardTestId = 'codes-and-freeze-data';
/** Drives after a repair: what the controller says of what is still wrong. */
const DRIVES_AFTER: DrivesBefore = { cycles: 2, refuelled: false };

/** One way from a complaint to a verdict and its repair. */
interface Stage {
  readonly plan: Plan;
  readonly steps: readonly PlanStep[];
  /** Null where nothing is wrong. */
  readonly renewed: readonly ItemId[];
  readonly right: boolean;
  /** What it is made up of, kind by kind. */
  readonly parts: readonly (readonly ParLine[])[];
}

/**
 * Par of a scenario, under its own seed: the same for every sitting of it. The plan of the best next test on the
 * scenario's own truck and tools, with the rules' own steps, the renewal, the test of the new part and the road. Where
 * more is wrong than one renewal cures, the drive after it begins the next stage. `proven` is false where in some stage the
 * tests run out, or what stands proven is not so. Takes a second or two.
 */
export function parOf(scenario: Scenario, tables: EvidenceTables): JobPar {
  const { tests, minutes, money, proven } = parInLines(scenario, tables);
  return { tests, minutes, money, proven };
}

/** The same with what it is made up of. */
export function parInLines(scenario: Scenario, tables: EvidenceTables): ParInLines {
  const { rig } = tables;
  const environment = environmentOf(scenario);
  const bench = new TrueBench(scenario.faults, scenario.seed, environment, scenario.workOrder.renewed);
  let prior: readonly number[] = priorOfJob(scenario, tables);
  const missing = testsNotAtHand(scenario.tools);
  const stages: Stage[] = [];
  for (;;) {
    const stage = stageOf(prior, tables, bench, missing);
    stages.push(stage);
    const left = truckFaults(bench.faults);
    if (stage.renewed.length === 0 || left.length === 0) break;
    const complaint = complaintOf(
      { ...(tables.suspects[0] as (typeof tables.suspects)[0]), faults: left },
      environment,
      DRIVES_AFTER,
    );
    prior = priorOf(
      tables.suspects,
      tables.complaintsFor(DRIVES_AFTER),
      complaint.codes,
      scenario.workOrder.renewed,
    );
  }
  const first = missing.has(FIRST) ? [] : [testLine(rig, FIRST, minutesOf(rig, FIRST))];
  const lines = [...first, ...stages.flatMap(({ parts }) => parts.flat())];
  return {
    tests: [
      ...(missing.has(FIRST) ? [] : [FIRST]),
      ...stages.flatMap(({ steps }) => steps.map(({ test }) => test)),
    ],
    // Part by part: par must not change by a last digit with the way it is told.
    minutes: stages.reduce((sum, { parts }) => sum + sumOf(parts.map(minutesIn)), minutesIn(first)),
    money: sumOf(lines.map(({ money }) => money)),
    proven: stages.every(({ plan, right }) => plan.proven && right),
    lines: lines.filter(({ minutes, money }) => minutes + money > 0),
  };
}

const sumOf = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0);
const minutesIn = (part: readonly ParLine[]): number => sumOf(part.map(({ minutes }) => minutes));

/** Plans on the bench, names what the plan leads to, and renews what is truly wrong there, with the root behind it. */
function stageOf(
  prior: readonly number[],
  tables: EvidenceTables,
  bench: TrueBench,
  missing: ReadonlySet<StandardTestId>,
): Stage {
  const { rig } = tables;
  const plan = planOf(prior, tables, bench, new Set([FIRST, ...missing]));
  const wrong = truckFaults(bench.faults);
  const before = new Posterior(tables.suspects, [], prior, []);
  const after = new Posterior(tables.suspects, [], plan.chances, []);
  const led = after.leading().item as VerdictItem;
  const trueItems = new Set(wrong.flatMap((fault) => itemOf(fault) ?? []));
  const right = trueItems.size === 0 ? led === NOTHING_WRONG : [...trueItems].some((item) => item === led);
  const named = right ? led : ([...trueItems][0] ?? NOTHING_WRONG);
  const asked = testsAsked(rig, plan.steps, named).filter((test) => !missing.has(test));
  const steps = [...plan.steps, ...asked.map((test) => ({ test, again: false }))];
  const renewed = named === NOTHING_WRONG ? [] : [named, ...rootsBehind(named, wrong)];
  for (const item of renewed) bench.renew(item);
  const items = [...new Set(rig.faults.map(({ item }) => item))].filter((item) => !TOOL_ITEMS.includes(item));
  const looks = items.map((item) => ({ item, prior: before.ofItem(item), left: after.ofItem(item) }));
  const parts: readonly (readonly ParLine[])[] = [
    steps.map((step) => testLine(rig, step.test, minutesOfSteps([step], tables), step.again)),
    [{ kind: 'trials', minutes: trialMinutes(rig, steps), money: 0 }],
    [{ kind: 'looks', minutes: cheapLookMinutes(named, looks), money: 0 }],
    plan.toolsRenewed.map((item) => {
      return { kind: 'tool-renewed', item, minutes: bookMinutes({ kind: 'renew', item }), money: 0 };
    }),
    [{ kind: 'verdict', minutes: bookMinutes(VERDICT), money: 0 }],
    renewed.map((item) => {
      return { kind: 'repair', item, minutes: repairMinutes(rig, item, missing), money: priceOf(item) };
    }),
    [{ kind: 'road', minutes: renewed.length > 0 ? roadMinutes(rig, missing) : 0, money: 0 }],
  ];
  return { plan, steps, renewed, right, parts };
}

/** Whatever it names, it takes as long to write. */
const VERDICT = { kind: 'give-verdict', item: NOTHING_WRONG, mode: null, cites: [] } as const;

function testLine(rig: RigDefinition, test: StandardTestId, minutes: number, again = false): ParLine {
  return { kind: 'test', test, again, minutes, money: moneyOf(rig, [{ test, again }]) };
}

/** Faults of the truck, those of the tools left out. */
function truckFaults(faults: readonly FaultChoice[]): readonly FaultChoice[] {
  return faults.filter((fault) => {
    const item = itemOf(fault);
    return item !== null && !TOOL_ITEMS.includes(item);
  });
}

/** Items to be renewed with this one, since what is wrong with them would spoil the new part. */
function rootsBehind(item: ItemId, wrong: readonly FaultChoice[]): readonly ItemId[] {
  const roots = new Set(wrong.filter((fault) => itemOf(fault) === item).map(({ root }) => root));
  return wrong
    .filter(({ fault }) => roots.has(fault))
    .flatMap((fault) => itemOf(fault) ?? [])
    .filter((other) => other !== item);
}
