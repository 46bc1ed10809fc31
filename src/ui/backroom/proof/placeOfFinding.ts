import { unreachable } from '../../../base/assert.ts';
import type { ProofFinding, TextPlace } from '../../../training/proof/ScenarioProof.ts';

/** A part of a scenario that one goes to in order to mend it, with its place in the file. */
export interface PlaceOfFinding {
  readonly name: PlaceName;
  readonly path: string;
}

type PlaceName = TextPlace | 'level' | 'codes' | 'bench' | 'faults' | 'tools' | 'limits' | 'variants';

const PATHS: Readonly<Record<PlaceName, string>> = {
  id: 'id',
  title: 'title',
  summary: 'summary',
  seed: 'seed',
  level: 'level',
  aims: 'aims',
  complaint: 'work-order.complaint',
  history: 'work-order.history',
  codes: 'work-order.codes',
  bench: 'bench',
  faults: 'faults',
  tools: 'tools',
  limits: 'limits',
  variants: 'variants',
};

/** Where to go for a finding: the first thing that its remedy names. */
export function placeOfFinding(finding: ProofFinding): PlaceOfFinding {
  const name = nameOf(finding);
  // The first of the variants is the job itself.
  const own = 'of' in finding && typeof finding.of === 'object' && finding.of.variant > 1;
  return { name, path: own ? `variants[${finding.of.variant - 2}]` : PATHS[name] };
}

function nameOf(finding: ProofFinding): PlaceName {
  switch (finding.kind) {
    case 'not-solvable':
    case 'prior':
    case 'learners':
    case 'not-told-apart':
      return 'faults';
    case 'tools-lacking':
      return 'tools';
    case 'codes-differ':
      return 'codes';
    case 'answer-in-text':
      return finding.where;
    case 'level-differs':
      return 'level';
    case 'other-shop':
      return 'bench';
    case 'limit-too-tight':
      return 'limits';
    case 'variant-not-solvable':
    case 'variant-codes-differ':
    case 'variant-answer-in-text':
    case 'variant-learners':
    case 'variants-apart':
      return 'variants';
    default:
      return unreachable(finding);
  }
}
