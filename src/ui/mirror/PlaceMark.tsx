import type { Cavity } from '../../sim/devices/places.ts';
import { say } from '../../text/translate.ts';
import { nameOf } from '../interaction/HotspotMeaning.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { PLUG_WIRES, WIRE_COLOURS } from '../theme/wireColours.ts';

/** The cavity a place of the plug belongs to; null for every other place. */
export function cavityOf(id: HotspotId): Cavity | null {
  const name = nameOf(id);
  if (name.kind === 'cavity-pin') return name.of;
  if (name.kind !== 'point') return null;
  const found = /^(?:cavity|harness|front|unit|wire)-([123])/.exec(name.of)?.[1];
  return found === undefined ? null : (Number(found) as Cavity);
}

/** A place of the plug as it is drawn there: the cavity's number, its wire with its letters, what it is for once that was looked up. */
export function PlaceMark({
  cavity,
  functionsKnown,
}: {
  readonly cavity: Cavity;
  readonly functionsKnown: boolean;
}) {
  const { letters, base, stripe } = PLUG_WIRES[cavity];
  return (
    <span class="place-mark" aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: hidden with the rest of the mark; the button has its name in words. */}
      <svg viewBox="0 0 34 34" width="34" height="34">
        <circle class="place-mark-seal" cx="17" cy="17" r="15.5" />
        <circle class="place-mark-wire" cx="17" cy="17" r="10" fill={WIRE_COLOURS[base]} />
        {stripe !== null && (
          <path d="M 9 17 A 8 8 0 0 0 25 17" fill="none" stroke={WIRE_COLOURS[stripe]} stroke-width="5" />
        )}
      </svg>
      <b>
        {cavity} · {letters}
      </b>
      {functionsKnown && <span>{say(`functions.${cavity}`)}</span>}
    </span>
  );
}
