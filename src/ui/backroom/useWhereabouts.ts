import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { FormSection } from '../../training/draft/formFields.ts';

/** So far below the bar a heading counts as come to, in letters. */
const COME_TO = 3;

/**
 * In which part of the form one is: the last whose heading has come up to the bar, or the last of all at the end of the page. It also tells the
 * page how high the bar is, and the keys above it, so that nothing one goes to comes to lie under it.
 */
export function useWhereabouts(
  bar: RefObject<HTMLElement | null>,
  sections: readonly FormSection[],
): FormSection['id'] | null {
  const [here, setHere] = useState<FormSection['id'] | null>(null);
  const ids = sections.map(({ id }) => id).join(' ');
  useEffect(() => {
    const element = bar.current;
    if (element === null) return;
    const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    let asked = 0;
    const look = (): void => {
      asked = 0;
      const { bottom } = element.getBoundingClientRect();
      const headings = ids.split(' ').map((id) => document.getElementById(`form-${id}`));
      const passed = headings.filter(
        (each) => each !== null && each.getBoundingClientRect().top < bottom + COME_TO * letter,
      );
      const last = isAtEnd(element) ? headings.at(-1) : passed.at(-1);
      setHere(((last ?? headings[0])?.id.slice('form-'.length) as FormSection['id'] | undefined) ?? null);
    };
    const follow = (): void => {
      asked ||= requestAnimationFrame(look);
    };
    const head = element.closest('.back-columns')?.querySelector<HTMLElement>('.pane-head') ?? null;
    const sized = new ResizeObserver(() => {
      const form = element.parentElement;
      form?.style.setProperty('--form-nav-height', `${element.offsetHeight}px`);
      form?.style.setProperty('--pane-head-height', `${head?.offsetHeight ?? 0}px`);
      follow();
    });
    sized.observe(element);
    if (head !== null) sized.observe(head);
    // Scrolling does not bubble: what scrolls is the pane or the page, by the room there is.
    document.addEventListener('scroll', follow, { capture: true, passive: true });
    return () => {
      cancelAnimationFrame(asked);
      sized.disconnect();
      document.removeEventListener('scroll', follow, { capture: true });
    };
  }, [bar, ids]);
  return here;
}

/** Whether what the bar stands in is scrolled as far as it goes. A short last part never comes up to the bar. */
function isAtEnd(bar: Element): boolean {
  const pane = bar.closest('.pane');
  const scrolls = pane !== null && pane.scrollHeight > pane.clientHeight + 1;
  const scroller = scrolls ? pane : document.documentElement;
  const room = scroller.scrollHeight - scroller.clientHeight;
  return room > 0 && scroller.scrollTop > room - 2;
}
