import { useSignal } from '@preact/signals';
import { say } from '../../text/translate.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { MarkedItem } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { type ItemsOfGroup, itemGroupsOf } from './itemGroups.ts';
import { MarkDialog } from './MarkDialog.tsx';
import { SuspectCard } from './SuspectCard.tsx';

/** The suspect board: every item a verdict may name as a card, to be cleared or convicted by entries of the log. */
export function SuspectBoard({ desk }: { readonly desk: Desk }) {
  const marking = useSignal<VerdictItem | null>(null);
  const marks = desk.marks.value;
  const locked = desk.phase.value !== 'bench';
  const groups = itemGroupsOf(desk.observation.peek().surface);
  return (
    <section class="suspects" aria-label={say('bench.tabs.suspects')}>
      {locked && (
        <p class="suspects-locked">
          <b>{say('suspects.locked')}</b> {say('suspects.lockedText')}
        </p>
      )}
      {marks.length > 0 ? (
        <p class="suspects-count">{countWords(marks, groups)}</p>
      ) : (
        <p class="quiet">{say(locked ? 'suspects.neverUsed' : 'suspects.empty')}</p>
      )}
      {groups.map(({ group, items }) => (
        <section key={group} class="suspect-group" aria-labelledby={`suspects-${group}`}>
          <h3 id={`suspects-${group}`}>{say(`itemGroups.${group}`)}</h3>
          <ul>
            {items.map((item) => (
              <SuspectCard
                key={item}
                desk={desk}
                item={item}
                marked={marks.find((each) => each.item === item) ?? null}
                locked={locked}
                onMark={() => (marking.value = item)}
              />
            ))}
          </ul>
        </section>
      ))}
      {marking.value !== null && (
        <MarkDialog desk={desk} item={marking.value} from={null} onClose={() => (marking.value = null)} />
      )}
    </section>
  );
}

/** How many stand how: of the learner's own marks only. */
function countWords(marks: readonly MarkedItem[], groups: readonly ItemsOfGroup[]): string {
  const all = groups.reduce((sum, { items }) => sum + items.length, 0);
  const convicted = marks.filter(({ mark }) => mark === 'convicted').length;
  return say('suspects.counts', {
    cleared: marks.length - convicted,
    convicted,
    open: all - marks.length,
  });
}
