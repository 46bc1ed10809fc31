import type { Tick } from '../../base/ticks.ts';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { bestNextTest, isProven } from '../evidence/bestNextTest.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { testsNotAtHand, withoutToolsFor } from '../evidence/testsAtHand.ts';
import type { Asked } from '../evidence/watchShown.ts';
import type { ToolsAtHand } from '../scenario/benchTools.ts';
import type { TimedAction } from '../sitting/SittingAction.ts';
import type { SittingPhase } from '../sitting/SittingView.ts';
import type { Advice } from './Advice.ts';
import { bestRepeat } from './repeats.ts';
import { testSheet } from './testSheet.ts';
import { PROOF_OF_TOOL, proofsFor, triesTool } from './toolProofs.ts';
import { WorkDone } from './WorkDone.ts';

/** All that the coach knows: what was done, what was shown, and what the odds make of it. Nothing of what is wrong. */
export interface CoachsView {
  readonly phase: SittingPhase;
  /** The sitting's actions so far, and its tick. */
  readonly actions: readonly TimedAction[];
  readonly tick: Tick;
  readonly asked: readonly Asked[];
  /** Chances of the tables' suspects by everything shown, in their order. */
  readonly chances: readonly number[];
  /** Chance by everything shown that a tool is bad. */
  readonly toolChance: (tool: ItemId) => number;
  readonly tables: EvidenceTables;
  /** What is at hand; left out, everything. */
  readonly tools?: ToolsAtHand;
}

/** Codes are read before anything is disturbed. */
const FIRST: StandardTestId = 'codes-and-freeze-data';
/** From here on a tool has surprised, and is tried once more. A tool begins at some 3 %. */
const SURPRISING = 0.25;
/** From here on it has all but failed, and nothing is done with it until it is replaced. */
const FAILED = 0.6;
/** So often a tool that has surprised is tried before the coach goes on with it. */
const MOST_PROOFS = 2;

/**
 * What a good instructor would say now. In the order of his thought: what stands proven is decided; a tool that surprised is
 * tried; codes are read before anything is disturbed; then the test that tells the most for its minutes, or more trials of
 * one that was done too few times, after the tools that it rests on.
 */
export function adviceOf(view: CoachsView): Advice {
  const { phase, chances, tables } = view;
  const missing = testsNotAtHand(view.tools);
  if (phase === 'repair' || phase === 'closed') return { kind: 'prove-repair' };
  const work = new WorkDone(tables.rig, view.actions, view.tick, view.asked);
  const proven = isProven(tables.suspects, chances);
  if (proven) return { kind: 'decide' };
  const surprised = surprisingTool(view, work, missing);
  if (surprised !== null) return { kind: 'prove-tool', test: surprised };
  if (!work.has(FIRST) && !missing.has(FIRST)) return { kind: 'do-test', test: FIRST };
  const next = bestNextTest(
    chances,
    tables.evidence,
    tables.minutes,
    withoutToolsFor(tables, view.tools, doneTests(tables, work)),
  );
  const repeat = bestRepeat(chances, tables, work);
  if (repeat !== null && (next === null || repeat.bits * next.minutes >= next.bits * repeat.minutes)) {
    return { kind: 'repeat-test', test: repeat.test, done: repeat.done, of: repeat.of };
  }
  const test = next === null ? undefined : tables.tests[next.test]?.id;
  return test === undefined ? { kind: 'nothing-left' } : afterItsProofs(test, work, missing, tables.rig.id);
}

/** Numbers in the table of tests that would tell nothing new. */
function doneTests({ tests }: EvidenceTables, work: WorkDone): ReadonlySet<number> {
  return new Set(tests.flatMap(({ id }, number) => (work.has(id) ? [number] : [])));
}

function surprisingTool(
  { toolChance }: CoachsView,
  work: WorkDone,
  missing: ReadonlySet<StandardTestId>,
): StandardTestId | null {
  let worst: { readonly proof: StandardTestId; readonly chance: number } | null = null;
  for (const { item, proof } of PROOF_OF_TOOL) {
    const chance = toolChance(item);
    // That the old one was bad stays true; the new one is another.
    if (chance < SURPRISING || work.isNew(item) || missing.has(proof)) continue;
    if (chance < FAILED && work.timesDone(proof) >= MOST_PROOFS) continue;
    if (worst === null || chance > worst.chance) worst = { proof, chance };
  }
  return worst?.proof ?? null;
}

/** A test, or the first proof of a tool that it rests on and that nobody has tried. */
function afterItsProofs(
  test: StandardTestId,
  work: WorkDone,
  missing: ReadonlySet<StandardTestId>,
  rig: RigId,
): Advice {
  const proofs = proofsFor(testSheet(test, rig).test).filter((proof) => !missing.has(proof));
  const untried = proofs.find((proof) => !work.has(proof));
  if (untried !== undefined) return { kind: 'prove-tool', test: untried };
  return { kind: triesTool(test) ? 'prove-tool' : 'do-test', test };
}
