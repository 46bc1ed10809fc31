import { describeVariants } from '../../../text/describeProof.ts';
import { fixed, money, tenths } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { ParLine } from '../../../training/evidence/JobPar.ts';
import type { ProofPlan } from '../../../training/proof/ScenarioProof.ts';
import type { VariantEnd } from '../../../training/proof/VariantEnd.ts';
import { Sheet } from './Sheet.tsx';
import type { ShownPart } from './shownProof.ts';

interface PlanSheetProps {
  readonly plan: ShownPart<ProofPlan>;
  readonly variants: readonly VariantEnd[];
}

/** By which tests in which order, and what they come to: the lines add up to par. */
export function PlanSheet({ plan: { is: plan, stale }, variants }: PlanSheetProps) {
  return (
    <Sheet name="plan" title={say(plan.proven ? 'proofPanel.plan' : 'proofPanel.planUnproven')} stale={stale}>
      <table class="par-lines">
        <thead>
          <tr>
            <th scope="col">{say('proofPanel.columns.what')}</th>
            <th scope="col">{say('proofPanel.columns.minutes')}</th>
            <th scope="col">{say('proofPanel.columns.money')}</th>
          </tr>
        </thead>
        <tbody>
          {plan.lines.map((line, i) => (
            // The same test may stand in it several times: its number is what tells the lines apart.
            <tr key={`${i} ${line.kind}`}>
              <th scope="row">
                <span class="par-number">{i + 1}</span>
                {lineWords(line)}
              </th>
              <td>{say('proofPanel.minutes', { minutes: tenths(line.minutes) })}</td>
              <td>{line.money === 0 ? '' : money(line.money)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{say('proofPanel.parLine.par')}</th>
            <td>{say('proofPanel.minutes', { minutes: fixed(plan.minutes, 0) })}</td>
            <td>{money(plan.money)}</td>
          </tr>
        </tfoot>
      </table>
      <h4>{say('proofPanel.tools')}</h4>
      <ul class="proof-tools">
        {plan.tools.map((tool) => (
          <li key={tool}>{say(`benchTools.${tool}`)}</li>
        ))}
      </ul>
      {variants.length > 0 && (
        <ul class="proof-variants">
          {describeVariants(variants).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}

function lineWords(line: ParLine): string {
  switch (line.kind) {
    case 'test': {
      const test = say(`standardTests.list.${line.test}.name`);
      return line.again ? say('proofPanel.parLine.again', { test }) : test;
    }
    case 'tool-renewed':
    case 'repair':
      return say(`proofPanel.parLine.${line.kind}`, { item: say(`items.${line.item}`) });
    default:
      return say(`proofPanel.parLine.${line.kind}`);
  }
}
