import type { ProofFinding, ScenarioProof, StatedCodes } from '../training/proof/ScenarioProof.ts';
import { fixed, money, percent } from './format.ts';
import { has, say } from './translate.ts';

/** The sentences of a scenario's proof, for the instructor's screen and the command line alike. */

/** What the plan is, what it needs, what else it could be, how hard it is. */
export function describePlan(proof: ScenarioProof): readonly string[] {
  const { tests, minutes, proven, tools, rivals, prior, difficulty } = proof;
  const figures = { count: tests.length, minutes: fixed(minutes, 0), money: money(proof.money) };
  const chance = percent(prior);
  const because = difficulty.because.map((reason) => say(`proof.because.${reason}`)).join(', ');
  return [
    `${say(proven ? 'proof.solvedBy' : 'proof.notSolved', figures)} ${tests.map(testName).join('; ')}.`,
    say('proof.needs', { tools: tools.map((tool) => say(`standardTests.tools.${tool}`)).join(', ') }),
    rivals.length === 0
      ? say('proof.noRivals', { chance })
      : say('proof.rivals', { chance, rivals: rivals.map(rivalWords).join(', ') }),
    because === ''
      ? say('proof.plain', { level: difficulty.level })
      : say('proof.difficulty', { level: difficulty.level, because }),
  ];
}

/** One finding with its remedy. */
export function describeFinding(finding: ProofFinding): string {
  switch (finding.kind) {
    case 'not-solvable':
      return say('proof.findings.not-solvable');
    case 'codes-differ':
      return say('proof.findings.codes-differ', {
        stated: codesInWords(finding.stated),
        held: codesInWords(finding.held),
      });
    case 'learners':
    case 'prior':
      return faultInWords(finding.fault);
    case 'answer-in-text': {
      const name = `faults.${finding.fault}`;
      return say('proof.findings.answer-in-text', {
        where: say(`proof.where.${finding.where}`),
        fault: has(name) ? say(name) : finding.fault,
      });
    }
    case 'limit-too-tight': {
      const amount = (value: number): string => (finding.of === 'dollars' ? money(value) : fixed(value, 0));
      return say(finding.of === 'dollars' ? 'proof.findings.limit-dollars' : 'proof.findings.limit-minutes', {
        limit: amount(finding.limit),
        par: amount(finding.par),
        wanted: amount(finding.wanted),
      });
    }
    case 'not-told-apart':
      return say('proof.findings.not-told-apart', {
        items: finding.items.map((item) => say(`items.${item}`)).join(', '),
      });
    case 'level-differs':
      return say('proof.findings.level-differs', { level: finding.level, estimate: finding.estimate });
    case 'other-shop':
      return say('proof.findings.other-shop');
  }
}

type LearnersFault = Extract<ProofFinding, { kind: 'learners' }>['fault'];

/** Scores are points, everything else a share. */
function faultInWords(fault: LearnersFault): string {
  const { kind } = fault;
  if (kind === 'median-below' || kind === 'median-above' || kind === 'not-below-by-the-book') {
    return say(`proof.findings.${kind}`, {
      learner: say(`proof.learners.${fault.learner}`),
      figure: fixed(fault.figure, 0),
      limit: fixed(fault.limit, 0),
    });
  }
  return say(`proof.findings.${kind}`, { figure: percent(fault.figure), limit: percent(fault.limit) });
}

function codesInWords({ stored, pending }: StatedCodes): string {
  const parts = [
    ...(stored.length === 0 ? [] : [say('proof.stored', { codes: stored.join(' ') })]),
    ...(pending.length === 0 ? [] : [say('proof.pending', { codes: pending.join(' ') })]),
  ];
  return parts.length === 0 ? say('proof.noCodes') : parts.join(', ');
}

function rivalWords({ item, chance }: ScenarioProof['rivals'][number]): string {
  return say('proof.rival', { item: say(`items.${item}`), chance: percent(chance) });
}

const testName = (id: ScenarioProof['tests'][number]): string => say(`standardTests.list.${id}.name`);
