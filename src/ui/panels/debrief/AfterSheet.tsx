import { describeAfter, describeCoaching } from '../../../text/describeAfter.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';

/** How the job went on after the verdict, outside the score; and how often the coach was asked. */
export function AfterSheet({ facts }: { readonly facts: DebriefFacts }) {
  return (
    <section class="sheet">
      <h2>{say('after.title')}</h2>
      <p class="quiet">{say('after.lead')}</p>
      {describeAfter(facts).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <h3>{say('after.coachTitle')}</h3>
      <p>{describeCoaching(facts.coachAsked)}</p>
    </section>
  );
}
