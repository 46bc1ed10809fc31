import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { type Grip, placeOf, staysInHand } from '../interaction/Grip.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { isUndo } from '../interaction/shortcuts.ts';
import { type Offer, offersFor } from '../interaction/targets.ts';
import type { BenchInput } from './BenchInput.ts';
import { pickerTitle, placeName } from './handWords.ts';
import { typeahead } from './typeahead.ts';

/** Letters that follow each other within this time are one word. */
const TYPED_TOGETHER_MS = 1200;

/** The list of places for what is held: for keys and screen readers, and for fingers as a magnified choice. */
export function PlacePicker({ input, grip }: { readonly input: BenchInput; readonly grip: Grip }) {
  const offers = offersFor(grip, input.observation.value);
  const at = useSignal(
    Math.max(
      0,
      offers.findIndex((offer) => offer.refusal === null),
    ),
  );
  const typed = useRef({ text: '', atMs: 0 });
  const list = useRef<HTMLDivElement>(null);
  // Before the next paint: a letter typed at once must find the list.
  useLayoutEffect(() => {
    list.current?.focus({ preventScroll: byTouch() });
    return () => focusGrip(grip);
  }, [grip]);
  useEffect(() => {
    const option = list.current?.querySelector<HTMLElement>(`#place-${at.value}`);
    if (list.current !== null && option) scrollTo(list.current, option);
  }, [at.value]);
  const choose = (offer: Offer | undefined): void => {
    // An eye stays in the hand: the next letters are a new word.
    typed.current = { text: '', atMs: 0 };
    if (offer !== undefined) input.hand.place(offer.target);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const count = offers.length;
    event.stopPropagation();
    if (event.key === 'ArrowDown') at.value = (at.value + 1) % count;
    else if (event.key === 'ArrowUp') at.value = (at.value + count - 1) % count;
    else if (event.key === 'Home') at.value = 0;
    else if (event.key === 'End') at.value = count - 1;
    else if (event.key === 'Enter' || (event.key === ' ' && typed.current.text === ''))
      choose(offers[at.value]);
    else if (event.key === 'Escape' || isUndo(event)) input.hand.putBack();
    else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const fresh = event.timeStamp - typed.current.atMs > TYPED_TOGETHER_MS;
      typed.current = { text: (fresh ? '' : typed.current.text) + event.key, atMs: event.timeStamp };
      at.value =
        typeahead(
          offers.map(({ target }) => placeName(target, grip)),
          typed.current.text,
          at.value,
        ) ?? at.value;
    } else return;
    event.preventDefault();
  };
  const groups = [...new Set(offers.map((offer) => offer.group))];
  return (
    <div class="picker">
      <p class="picker-title" id="picker-title">
        {pickerTitle(grip)}
      </p>
      <div
        ref={list}
        class="picker-list"
        role="listbox"
        tabIndex={0}
        aria-labelledby="picker-title"
        aria-activedescendant={`place-${at.value}`}
        onKeyDown={onKeyDown}
      >
        {groups.map((group) => (
          // biome-ignore lint/a11y/useSemanticElements: a group of options is not a fieldset.
          <div key={group} role="group" aria-labelledby={`places-${group}`}>
            <span class="picker-group" id={`places-${group}`}>
              {say(`groups.${group}`)}
            </span>
            {offers.map((offer, index) =>
              offer.group !== group ? null : (
                // biome-ignore lint/a11y/useKeyWithClickEvents: keys are the list's, through aria-activedescendant.
                <div
                  key={index}
                  id={`place-${index}`}
                  role="option"
                  tabIndex={-1}
                  aria-selected={index === at.value}
                  aria-disabled={offer.refusal !== null}
                  class={index === at.value ? 'place place-now' : 'place'}
                  onClick={() => choose(offer)}
                >
                  {placeName(offer.target, grip)}
                  {offer.refusal !== null && (
                    <span class="place-refusal">{say(`refusals.${offer.refusal}`)}</span>
                  )}
                </div>
              ),
            )}
          </div>
        ))}
      </div>
      <button type="button" class="plain" onClick={() => input.hand.putBack()}>
        {say(
          staysInHand(grip)
            ? 'inHand.stop'
            : placeOf(grip, input.observation.value) === null
              ? 'hand.putDown'
              : 'hand.leaveThere',
        )}
      </button>
    </div>
  );
}

/** Moves the list alone, never the bench or the page it lies on. */
function scrollTo(list: HTMLElement, option: HTMLElement): void {
  const [room, place] = [list.getBoundingClientRect(), option.getBoundingClientRect()];
  if (place.top < room.top) list.scrollTop -= room.top - place.top;
  else if (place.bottom > room.bottom) list.scrollTop += place.bottom - room.bottom;
}

/** Puts the focus on the thing that was held, wherever its control is now. */
function focusGrip(grip: Grip): void {
  const id = controlOf(grip);
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>(`[data-spot="${id}"]`)?.focus({ preventScroll: byTouch() }),
  );
}

/** A finger has just touched what the focus goes to: the page stays where the learner left it. */
function byTouch(): boolean {
  return globalThis.matchMedia('(pointer: coarse)').matches;
}

function controlOf(grip: Grip): HotspotId {
  switch (grip.kind) {
    case 'lead':
      return `end:${grip.end}`;
    case 'fitting':
      return `fitting:${grip.item}`;
    case 'pin':
      return 'pin-tray';
    case 'drag-gauge':
      return 'drag-gauge';
    case 'sense':
      return grip.how === 'look' ? 'eye' : 'ear';
  }
}
