import type { ProofFinding, ScenarioProof, StatedCodes } from '../training/proof/ScenarioProof.ts';
import type { VariantEnd, VariantName } from '../training/proof/VariantEnd.ts';
import { capital, fixed, money, percent } from './format.ts';
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
    say('proof.needs', { tools: tools.map((tool) => say(`benchTools.${tool}`)).join(', ') }),
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
    case 'tools-lacking':
      return say(
        finding.any && finding.tools.length > 1
          ? 'proof.findings.tools-lacking-any'
          : 'proof.findings.tools-lacking',
        {
          tools: finding.tools.map((tool) => say(`benchTools.${tool}`)).join(', '),
        },
      );
    case 'codes-differ':
      return say('proof.findings.codes-differ', {
        stated: codesInWords(finding.stated),
        held: codesInWords(finding.held),
      });
    case 'learners':
    case 'prior':
      return faultInWords(finding.fault);
    case 'answer-in-text':
      return say('proof.findings.answer-in-text', {
        where: say(`proof.where.${finding.where}`),
        fault: faultName(finding.fault),
      });
    case 'limit-too-tight': {
      const amount = (value: number): string => (finding.of === 'dollars' ? money(value) : fixed(value, 0));
      return say(finding.of === 'dollars' ? 'proof.findings.limit-dollars' : 'proof.findings.limit-minutes', {
        limit: amount(finding.limit),
        par: amount(finding.par),
        wanted: amount(finding.wanted),
      });
    }
    case 'variant-not-solvable':
      return say('proof.findings.variant-not-solvable', { variant: variantName(finding.of) });
    case 'variant-codes-differ':
      return say('proof.findings.variant-codes-differ', {
        variant: variantName(finding.of),
        stated: codesInWords(finding.stated),
        held: codesInWords(finding.held),
      });
    case 'variant-answer-in-text':
      return say('proof.findings.variant-answer-in-text', {
        variant: variantName(finding.of),
        fault: faultName(finding.fault),
      });
    case 'variant-learners':
      return say('proof.findings.variant-learners', {
        variant: capital(variantName(finding.of)),
        finding: faultInWords(finding.fault),
      });
    case 'variants-apart': {
      const amount = (value: number): string => (finding.by === 'money' ? money(value) : fixed(value, 0));
      return say(
        finding.by === 'money' ? 'proof.findings.variants-money' : 'proof.findings.variants-minutes',
        {
          least: variantName(finding.least),
          most: variantName(finding.most),
          from: amount(finding.from),
          to: amount(finding.to),
        },
      );
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

/** The truths of a scenario with variants, each with its faults and its par: a line apiece. */
export function describeVariants(ends: readonly VariantEnd[]): readonly string[] {
  return ends.map((end) =>
    say('proof.variants.line', {
      variant: capital(variantName(end)),
      faults: faultsInWords(end.faults),
      minutes: fixed(end.minutes, 0),
      money: money(end.money),
    }),
  );
}

/** What is wrong in one truth, by the names of a scenario file, with its severities. */
export function faultsInWords(faults: VariantEnd['faults']): string {
  if (faults.length === 0) return say('proof.variants.nothing');
  return faults
    .map(({ fault, severity }) => (severity > 0 ? `${fault} ${fixed(severity, 2)}` : fault))
    .join(', ');
}

function variantName({ variant, end }: VariantName): string {
  return say(`proof.variants.${end}`, { variant });
}

function faultName(fault: string): string {
  const name = `faults.${fault}`;
  return has(name) ? say(name) : fault;
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

export function codesInWords({ stored, pending }: StatedCodes): string {
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
