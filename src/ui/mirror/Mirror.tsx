import { useComputed, useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { placeOf } from '../interaction/Grip.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import type { BenchInput } from './BenchInput.ts';
import { Magnifier } from './Magnifier.tsx';
import { MirrorGroupView } from './MirrorGroupView.tsx';
import { mirrorSections } from './mirrorGroups.ts';
import { PlacePicker } from './PlacePicker.tsx';
import { useBenchPointer } from './useBenchPointer.ts';
import { useMagnifier } from './useMagnifier.ts';

/** Instruments: a press reads them out. */
const READ: ReadonlySet<HotspotId> = new Set<HotspotId>(['lcd', 'gauge', 'manometer', 'smoke-gauge']);

/**
 * The bench as real controls, each exactly over the thing drawn. They are the only hit layer: pointer, touch, keyboard and screen
 * reader all go through them.
 */
export function Mirror({ input }: { readonly input: BenchInput }) {
  const sections = useComputed(() => mirrorSections(input.observation.value, input.shelf.value));
  const magnifier = useMagnifier(input, sections);
  const pointer = useBenchPointer(input, (at, kind) => magnifier.asksDrop(at, kind === 'touch'));
  const held = input.held.value;
  const targets = held === null ? [] : input.hand.targets();
  const press = (id: HotspotId, event: MouseEvent): void => {
    // A key's click has no press before it and belongs to no drag.
    if (event.detail !== 0 && pointer.isSwallowed()) return;
    if (event.detail !== 0 && magnifier.asks(id, pointer.isTouch(event), event.currentTarget as Element))
      return;
    work(id, event.detail === 0 || pointer.isTouch(event), event.detail === 0);
  };
  const work = (id: HotspotId, byList: boolean, byKeys: boolean): void => {
    if (id === 'reader') input.openReader(byKeys);
    else if (READ.has(id)) input.readNow();
    else input.hand.press(id, byList ? 'keys' : 'pointer');
  };
  const onMat = (event: MouseEvent): void => {
    if (pointer.isSwallowed() || event.target !== event.currentTarget) return;
    const grip = input.hand.holding;
    if (grip === null) return;
    if (placeOf(grip, input.observation.peek()) === null) input.hand.putBack();
    else input.hand.drop(input.toBench(event.clientX, event.clientY));
  };
  const sheet = useRef<HTMLDivElement>(null);
  // Moved and scaled as a whole: the controls are neither told nor laid out anew at every frame of a move.
  useSignalEffect(() => {
    const { scale, offsetX, offsetY } = input.views.fit.value;
    sheet.current?.style.setProperty('--sheet-lies', `translate(${offsetX}px, ${offsetY}px) scale(${scale})`);
  });
  useSignalEffect(() => {
    sheet.current?.style.setProperty('--sheet-scale', `${input.views.goal.value.scale}`);
  });
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the bare mat takes what is let go on it; keys use the list. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: Escape and the list's own entry lay things on the mat. */}
      <div
        ref={sheet}
        class={held === null ? 'mirror' : 'mirror mirror-holding'}
        onClick={onMat}
        onPointerMove={(event) => {
          input.pointAt(input.toBench(event.clientX, event.clientY));
          const spot = (event.target as HTMLElement).dataset?.['spot'];
          input.ring((spot as HotspotId | undefined) ?? null);
        }}
        onPointerLeave={() => {
          input.pointAt(null);
          input.ring(null);
        }}
      >
        {sections.value.map((section) => (
          <MirrorGroupView
            key={section.group}
            section={section}
            input={input}
            targets={targets}
            crowded={magnifier.crowded.value}
            onDown={pointer.down}
            onPress={press}
          />
        ))}
      </div>
      {magnifier.rows.value !== null && (
        <Magnifier
          rows={magnifier.rows.value}
          functionsKnown={input.functionsKnown.value}
          onChoose={(id, event) => {
            if (!magnifier.settles(id))
              work(id, event.detail === 0 || pointer.isTouch(event), event.detail === 0);
          }}
          onClose={magnifier.close}
        />
      )}
      {held !== null && input.hand.means === 'keys' && (
        <PlacePicker key={JSON.stringify(held)} input={input} grip={held} />
      )}
    </>
  );
}
