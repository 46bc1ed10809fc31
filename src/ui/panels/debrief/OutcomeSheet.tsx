import { entriesWords } from '../../../text/chance.ts';
import { describeFault } from '../../../text/describeCode.ts';
import { describeMode } from '../../../text/describeMode.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import { JobWords } from '../JobWords.tsx';
import { Sheet } from './Sheet.tsx';

/** Evidence that goes less than this share of the way to a proof leaves a right name a guess. */
const HALF_WAY = 0.5;

/** What was named, with what is wrong with it and by which entries; and what was wrong. */
export function OutcomeSheet({ facts }: { readonly facts: DebriefFacts }) {
  const { verdict } = facts;
  const unproven = verdict.right && facts.evidence.verdict.weight < HALF_WAY;
  const look = unproven ? '' : verdict.right ? 'outcome-right' : 'outcome-wrong';
  return (
    <Sheet part="outcome" class={`outcome ${look}`}>
      <h2>
        <span aria-hidden="true">{verdict.right ? '✓ ' : '✗ '}</span>
        {say(verdict.right ? 'debrief.right' : 'debrief.wrong')}
      </h2>
      {unproven && <p>{say('debrief.rightUnproven')}</p>}
      <h3>{say('debrief.yours')}</h3>
      <p>{say('debrief.named', { item: say(`theItems.${verdict.named}`) })}</p>
      {verdict.named !== 'nothing-wrong' && (
        <p>
          {verdict.mode === null
            ? say('reasons.noMode')
            : say('debrief.namedMode', { mode: describeMode(verdict.named, verdict.mode) })}{' '}
          {verdict.mode !== null && verdict.right && (
            <b>{say(verdict.modeRight ? 'debrief.modeRight' : 'debrief.modeWrong')}</b>
          )}
        </p>
      )}
      <p>
        {verdict.cites.length === 0
          ? say('debrief.citedNone')
          : say('debrief.citedBy', { entries: entriesWords(verdict.cites) })}
      </p>
      <h3>{say('debrief.truth')}</h3>
      {verdict.truth.map(({ item, fault }) => (
        <p key={`${item}${fault}`}>
          {fault === null
            ? describeFault(null)
            : say('debrief.truthItem', { fault: describeFault(fault), item: say(`items.${item}`) })}
        </p>
      ))}
      {facts.remark !== '' && (
        <>
          <h3>{say('debrief.remark')}</h3>
          <p class="remark">
            <JobWords of={facts.remark} />
          </p>
        </>
      )}
    </Sheet>
  );
}
