import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { say } from '../../../text/translate.ts';
import { FoldKey } from '../FoldKey.tsx';
import { type DebriefPart, goToPart, partId } from './debriefParts.ts';

/** Only what stands well inside the window is being read. */
const WELL_INSIDE = '-20% 0px -35% 0px';

/** The parts of the debrief, to go to; those in sight are marked. */
export function PartsList({ parts }: { readonly parts: readonly DebriefPart[] }) {
  const inSight = useSignal<readonly DebriefPart[]>([]);
  // In a narrow window the list waits behind a key: the answer comes first.
  const unfolded = useSignal(false);
  const listed = parts.join();
  useEffect(() => {
    if (typeof IntersectionObserver === 'undefined') return;
    const seen = new Set<Element>();
    const watch = new IntersectionObserver(
      (changes) => {
        for (const { target, isIntersecting } of changes) {
          if (isIntersecting) seen.add(target);
          else seen.delete(target);
        }
        inSight.value = parts.filter((part) => [...seen].some(({ id }) => id === partId(part)));
      },
      { rootMargin: WELL_INSIDE },
    );
    for (const part of parts) {
      const section = document.getElementById(partId(part));
      if (section !== null) watch.observe(section);
    }
    return () => watch.disconnect();
  }, [listed, inSight]);
  return (
    <nav
      class={unfolded.value ? 'debrief-parts debrief-parts-unfolded' : 'debrief-parts'}
      aria-label={say('debriefParts.title')}
    >
      <FoldKey class="debrief-parts-fold" words={say('debriefParts.title')} unfolded={unfolded} />
      <ul>
        {parts.map((part) => (
          <li key={part} class={inSight.value.includes(part) ? 'part-in-sight' : ''}>
            <button type="button" class="plain" onClick={() => goToPart(part)}>
              {say(`debriefParts.names.${part}`)}
            </button>
          </li>
        ))}
      </ul>
    </nav>
  );
}
