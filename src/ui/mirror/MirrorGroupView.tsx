import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { SHEET } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { rovedIndex } from '../interaction/rovingFocus.ts';
import type { BenchInput } from './BenchInput.ts';
import { bringIntoWindow } from './bringIntoWindow.ts';
import { type MirrorControl, type MirrorSection, RADIO_GROUPS } from './mirrorGroups.ts';
import { PumpSlider } from './PumpSlider.tsx';

interface MirrorGroupProps {
  readonly section: MirrorSection;
  readonly input: BenchInput;
  readonly targets: readonly HotspotId[];
  /** Too small at the present view, and too close to others, to be given the least size of a target. */
  readonly crowded: ReadonlySet<HotspotId>;
  readonly onDown: (id: HotspotId, event: PointerEvent) => void;
  readonly onPress: (id: HotspotId, event: MouseEvent) => void;
}

/** One group of controls: Tab comes to it once, arrow keys go round inside. */
export function MirrorGroupView({ section, input, targets, crowded, onDown, onPress }: MirrorGroupProps) {
  const host = useRef<HTMLDivElement>(null);
  const last = useSignal<HotspotId | null>(null);
  const { group, controls } = section;
  const radios = RADIO_GROUPS.has(group);
  const checked = controls.find((control) => control.on === true)?.id;
  const remembered = controls.find((control) => control.id === last.value)?.id;
  const stop = radios ? checked : (remembered ?? controls[0]?.id);
  const rove = (event: KeyboardEvent): void => {
    const here = (event.target as HTMLElement).dataset['spot'];
    if (here !== undefined && (event.key === '+' || event.key === '-')) {
      input.hand.turn(here as HotspotId, event.key === '+' ? 1 : -1);
      return;
    }
    const index = controls.findIndex((control) => control.id === here);
    const next = index < 0 ? null : rovedIndex(event.key, index, controls.length);
    const control = next === null ? undefined : controls[next];
    if (control === undefined) return;
    event.preventDefault();
    host.current?.querySelector<HTMLElement>(`[data-spot="${control.id}"]`)?.focus({ preventScroll: true });
    if (radios) input.hand.press(control.id, 'keys');
  };
  const shared = (control: MirrorControl) => ({
    class:
      `spot spot-${control.kind}` +
      `${targets.includes(control.id) ? ' spot-target' : ''}${crowded.has(control.id) ? ' spot-crowded' : ''}`,
    style: place(control),
    tabIndex: control.id === stop ? 0 : -1,
  });
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: always a group or a radio group, and arrow keys move inside it.
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: both roles take a label.
    <div
      ref={host}
      role={radios ? 'radiogroup' : 'group'}
      aria-labelledby={`mirror-${group}`}
      onKeyDown={rove}
      onFocusCapture={(event) => {
        const id = (event.target as HTMLElement).dataset['spot'] as HotspotId | undefined;
        if (id === undefined) return;
        last.value = id;
        input.ring(id);
        // What a key comes to must be in sight (WCAG 2.2, 2.4.11); under a pointer it is, and must not move.
        const spot = controls.find((control) => control.id === id);
        if (spot === undefined || !(event.target as HTMLElement).matches(':focus-visible')) return;
        input.views.show(spot.box);
        // The browser scrolled the page to where the spot was before the view moved.
        // The strip of a step may lie over the stage; at the top of the whole bench it does not.
        const seen = host.current?.closest('.bench-area:has(.step-strip)') ?? host.current?.closest('.stage');
        if (seen) requestAnimationFrame(() => bringIntoWindow(seen));
      }}
      onBlurCapture={() => input.ring(null)}
    >
      <h3 id={`mirror-${group}`} class="visually-hidden">
        {say(`groups.${group}`)}
      </h3>
      {controls.map((control) =>
        control.id === 'pump-handle' ? (
          <PumpSlider
            key={control.id}
            {...shared(control)}
            handle={input.observation.value.handPump.handle}
            moving={input.observation.value.handPump.moving}
            onMove={(position) => input.pumpHandle(position)}
            onDown={(event) => onDown(control.id, event)}
          />
        ) : (
          <button
            key={control.id}
            type="button"
            {...shared(control)}
            data-spot={control.id}
            aria-label={control.name}
            {...stateProps(control, radios)}
            onPointerDown={(event) => onDown(control.id, event)}
            onClick={(event) => onPress(control.id, event)}
          />
        ),
      )}
    </div>
  );
}

function stateProps(control: MirrorControl, radio: boolean) {
  if (control.on === null) return {};
  return radio ? { role: 'radio' as const, 'aria-checked': control.on } : { 'aria-pressed': control.on };
}

/** The box it is drawn in, in shares of the sheet, about its middle: the style sheet may make it larger there. */
function place({ box }: MirrorControl): string {
  const percent = (part: number, whole: number): string => `${(part / whole) * 100}%`;
  return (
    `--x:${percent(box.x + box.w / 2, SHEET.w)};--y:${percent(box.y + box.h / 2, SHEET.h)};` +
    `--w:${percent(box.w, SHEET.w)};--h:${percent(box.h, SHEET.h)}`
  );
}
