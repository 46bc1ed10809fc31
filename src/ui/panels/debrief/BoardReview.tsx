import { chance, listed } from '../../../text/chance.ts';
import { describeMark } from '../../../text/describeMark.ts';
import { clock, tenths } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import { MarkSign } from '../MarkSign.tsx';
import { Sheet } from './Sheet.tsx';

/** Each mark of the suspect board against what its entries carried when it was set. */
export function BoardReview({ facts }: { readonly facts: DebriefFacts }) {
  const marks = facts.boardMarks;
  if (marks.length === 0)
    return (
      <Sheet part="board" class="debrief-wide">
        <h2>{say('boardReview.title')}</h2>
        <p>{say('boardReview.none')}</p>
      </Sheet>
    );
  const columns = ['item', 'mark', 'entries', 'prior', 'cited', 'shown', 'judgement', 'points'] as const;
  return (
    <Sheet part="board" class="debrief-wide board-review-sheet">
      <h2>{say('boardReview.title')}</h2>
      <p class="quiet">{say('boardReview.lead')}</p>
      <table class="ruled board-review">
        <thead>
          <tr>
            {columns.map((column) => (
              <th
                key={column}
                scope="col"
                class={['prior', 'cited', 'shown', 'points'].includes(column) ? 'number' : ''}
              >
                {say(`boardReview.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {marks.map((mark) => (
            <MarkRow key={mark.item} mark={mark} />
          ))}
        </tbody>
      </table>
    </Sheet>
  );
}

function MarkRow({ mark }: { readonly mark: DebriefFacts['boardMarks'][number] }) {
  const { judgement, why, truth } = describeMark(mark);
  const chances = [
    ['prior', mark.prior],
    ['cited', mark.cited],
    ['shown', mark.shown],
  ] as const;
  return (
    <tr class={mark.judgement === 'carried' ? 'mark-carried' : 'mark-not'}>
      <th scope="row">{say(`items.${mark.item}`)}</th>
      <td data-label={say('boardReview.mark')}>
        <span>
          <span class="mark-word">
            <MarkSign mark={mark.mark} /> {say(`suspects.is.${mark.mark}`)}
          </span>{' '}
          <span class="quiet">{clock(mark.tick)}</span>
        </span>
      </td>
      <td data-label={say('boardReview.entries')}>
        {mark.cites.length === 0 ? say('boardReview.noEntries') : listed(mark.cites)}
      </td>
      {chances.map(([kind, share]) => (
        <td key={kind} class="number" data-label={say(`boardReview.${kind}`)}>
          {chance(share)}
        </td>
      ))}
      <td data-label={say('boardReview.judgement')}>
        <span>
          <b>{judgement}.</b> {why} {truth}
        </span>
      </td>
      <td class="number" data-label={say('boardReview.points')}>
        {tenths(mark.points).replace('-', '−')}
      </td>
    </tr>
  );
}
