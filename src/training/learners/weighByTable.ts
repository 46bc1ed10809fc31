import { exp, ln } from '../../base/maths.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { bestNextTest } from '../evidence/bestNextTest.ts';
import type { EvidenceFacts, EvidenceStep } from '../evidence/EvidenceFacts.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { evidenceStep } from '../evidence/evidenceStep.ts';
import { normalised } from '../evidence/information.ts';
import { markEvidence } from '../evidence/markEvidence.ts';
import { Posterior } from '../evidence/Posterior.ts';
import { priorOfJob } from '../evidence/priorOfJob.ts';
import type { Shown } from '../evidence/Shown.ts';
import { type ToolState, toolStates } from '../evidence/toolStates.ts';
import { type ChancesAtVerdict, verdictEvidence } from '../evidence/verdictEvidence.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { SittingView } from '../sitting/SittingView.ts';
import { carriedBy, type Note } from './Note.ts';
import type { ToolFactor } from './ToolFactor.ts';
import { byTest, fromBest } from './tableEvidence.ts';

/** What a simulated learner's sitting is weighed by. */
export interface TableSitting {
  readonly scenario: Scenario;
  readonly view: SittingView;
  readonly notes: readonly Note[];
}

/**
 * What a simulated learner's evidence was worth, by the kept tables. A simulated learner does nothing but standard tests from
 * the bench as the job began, and for those the tables hold what every suspect would have shown: so its sittings need no
 * suspect's bench of their own, and are weighed a hundred times as fast as a learner's. Suspects and tools are weighed
 * together, as there; drives, codes and what was seen between the tests are left out.
 */
export function weighByTable(
  { scenario, view, notes }: TableSitting,
  tables: EvidenceTables,
  factor: ToolFactor,
): EvidenceFacts {
  const { verdict, marks, log } = view;
  const until = verdict?.tick ?? view.tick;
  const before = notes.filter(({ shown }) => shown.tick <= until);
  const weigher = new Weigher(tables, factor, priorOfJob(scenario, tables));
  const none = weigher.posterior([]);
  const at = (cites: readonly number[], shown: readonly Note[]): ChancesAtVerdict => ({
    prior: none,
    cited: cites.length === 0 ? null : weigher.posterior(citedOf(cites, shown)),
    shown: weigher.posterior(shown),
  });
  const done = new Set(byTest(tables, before).keys());
  const shown = weigher.posterior(before);
  const next = bestNextTest(shown.suspects, tables.evidence, tables.minutes, done);
  const settling = next === null ? undefined : tables.tests[next.test];
  return {
    steps: stepsOf(
      tables.rig,
      none,
      log.filter(({ tick }) => tick <= until).map(({ id, tick }) => ({ id, tick })),
      (entry) => weigher.posterior(before.filter((note) => note.entry <= entry)),
    ),
    verdict: verdictEvidence(
      verdict?.item ?? 'nothing-wrong',
      verdict?.mode ?? null,
      at(verdict?.cites ?? [], before),
      tables.groupOf,
    ),
    marks: marks.map((mark) =>
      markEvidence(
        mark,
        at(
          mark.cites,
          before.filter((note) => note.shown.tick <= mark.tick),
        ),
      ),
    ),
    settling:
      next === null || settling === undefined
        ? null
        : { test: settling.id, bits: next.bits, minutes: next.minutes },
  };
}

/** Everything that some entries carry, each thing once. */
function citedOf(cites: readonly number[], notes: readonly Note[]): readonly Note[] {
  const carried = new Set(cites.flatMap((entry) => carriedBy(entry, notes)));
  return notes.filter((note) => carried.has(note));
}

function stepsOf(
  rig: RigDefinition,
  none: Posterior,
  entries: readonly { readonly id: number; readonly tick: number }[],
  after: (entry: number) => Posterior,
): readonly EvidenceStep[] {
  return [
    evidenceStep(rig, 0, 0, none),
    ...entries.map(({ id, tick }) => evidenceStep(rig, id, tick, after(id))),
  ];
}

/** Bayes over suspects and tools together. What a run of a test says is worked out once. */
export class Weigher {
  private readonly states: readonly ToolState[] = toolStates();
  private readonly known = new Map<string, readonly number[]>();

  constructor(
    private readonly tables: EvidenceTables,
    private readonly factor: ToolFactor,
    private readonly prior: readonly number[],
  ) {}

  posterior(notes: readonly Note[]): Posterior {
    const logs = this.states.map((state) => {
      const sums = this.prior.map((p) => ln(Math.max(p, LEAST)) + ln(state.prior));
      // A tool that was renewed is a good one from then on: what was read after that is no repeat of what was read before.
      for (const group of byTools(notes)) {
        for (const [test, run] of byTest(this.tables, group)) {
          const isBad = !(group[0]?.renewed.some((item) => item === state.item) ?? false);
          const row = this.logs(test, run, isBad && this.factor.bears(test, state) ? state : null);
          for (let s = 0; s < sums.length; s++) sums[s] = (sums[s] ?? 0) + (row[s] ?? 0);
        }
      }
      return sums;
    });
    const flat = fromBest(logs.flat()).map(exp);
    const n = this.prior.length;
    const suspects = this.prior.map((_, s) =>
      this.states.reduce((sum, _state, t) => sum + (flat[t * n + s] ?? 0), 0),
    );
    const tools = this.states.map((_, t) =>
      flat.slice(t * n, (t + 1) * n).reduce((sum, weight) => sum + weight, 0),
    );
    return new Posterior(this.tables.suspects, this.states, normalised(suspects), normalised(tools));
  }

  private logs(test: number, shown: readonly Shown[], state: ToolState | null): readonly number[] {
    const key = `${test} ${state?.bad?.fault ?? ''} ${shown.map(({ tick, setUp }) => `${tick}${setUp}`).join()}`;
    let known = this.known.get(key);
    if (known === undefined) {
      const likelihoods =
        state === null
          ? this.tables.evidence.likelihoods(test, shown)
          : this.factor.likelihoods(test, shown, state);
      known = likelihoods.map((one) => ln(Math.max(one, LEAST)));
      this.known.set(key, known);
    }
    return known;
  }
}

const LEAST = 1e-300;

/** Notes by the tools that had been renewed when they were taken. */
function byTools(notes: readonly Note[]): readonly (readonly Note[])[] {
  const groups = new Map<string, Note[]>();
  for (const note of notes) {
    const key = note.renewed.join();
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push(note);
  }
  return [...groups.values()];
}
