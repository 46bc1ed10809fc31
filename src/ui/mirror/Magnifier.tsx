import { useLayoutEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { rovedIndex } from '../interaction/rovingFocus.ts';
import { cavityOf, PlaceMark } from './PlaceMark.tsx';

/** One thing that may have been meant. */
export interface Meant {
  readonly id: HotspotId;
  readonly name: string;
}

interface MagnifierProps {
  /** In rows as they are drawn. */
  readonly rows: readonly (readonly Meant[])[];
  readonly functionsKnown: boolean;
  readonly onChoose: (id: HotspotId, event: MouseEvent) => void;
  readonly onClose: () => void;
}

/** Where targets are small: what lies under the press, large and by name, in the places it has on the bench. */
export function Magnifier({ rows, functionsKnown, onChoose, onClose }: MagnifierProps) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    box.current?.querySelector('button')?.focus({ preventScroll: true });
    const outside = (event: PointerEvent): void => {
      if (!box.current?.contains(event.target as Node)) onClose();
    };
    window.addEventListener('pointerdown', outside, { capture: true });
    return () => window.removeEventListener('pointerdown', outside, { capture: true });
  }, [onClose]);
  const onKeyDown = (event: KeyboardEvent): void => {
    event.stopPropagation();
    if (event.key === 'Escape') {
      event.preventDefault();
      onClose();
      return;
    }
    const buttons = [...(box.current?.querySelectorAll('button') ?? [])];
    const next = rovedIndex(event.key, buttons.indexOf(event.target as HTMLButtonElement), buttons.length);
    if (next === null) return;
    event.preventDefault();
    buttons[next]?.focus();
  };
  return (
    <div
      ref={box}
      class="picker magnifier"
      role="dialog"
      aria-labelledby="magnifier-title"
      onKeyDown={onKeyDown}
    >
      <p class="picker-title" id="magnifier-title">
        {say('views.which')}
      </p>
      <div class="magnifier-rows">
        {rows.map((row) => (
          <div key={row[0]?.id} class="magnifier-row">
            {row.map(({ id, name }) => (
              <MeantButton key={id} id={id} name={name} functionsKnown={functionsKnown} onChoose={onChoose} />
            ))}
          </div>
        ))}
      </div>
      <button type="button" class="plain" onClick={onClose}>
        {say('views.neither')}
      </button>
    </div>
  );
}

interface MeantButtonProps extends Meant {
  readonly functionsKnown: boolean;
  readonly onChoose: MagnifierProps['onChoose'];
}

function MeantButton({ id, name, functionsKnown, onChoose }: MeantButtonProps) {
  const cavity = cavityOf(id);
  return (
    <button type="button" class="meant" data-meant={id} onClick={(event) => onChoose(id, event)}>
      {cavity !== null && <PlaceMark cavity={cavity} functionsKnown={functionsKnown} />}
      <span>{name}</span>
    </button>
  );
}
