import { LEAD_ENDS, type LeadEnd } from '../../../sim/devices/places.ts';
import type { Curve } from '../../interaction/layout/curve.ts';
import type { Vec } from '../../interaction/layout/geometry.ts';
import {
  CORDS,
  type Cord,
  carriedCord,
  cordEndOf,
  cordRoot,
  endOfCord,
  FIRST_ENDS,
  layCords,
} from '../../interaction/layout/leadRouting.ts';
import { isSpotThere } from '../../interaction/toolOfSpot.ts';
import type { Frame, Layer } from '../Frame.ts';
import { leadColour, paintClip } from './leadClips.ts';
import { cordLine } from './parts.ts';
import { paintLamp, paintLed } from './testers.ts';

/** A held end points down to its left, its grip under the hand. */
function inHand(hand: Vec): { readonly tip: Vec; readonly grip: Vec } {
  return { tip: hand, grip: { x: hand.x + 22, y: hand.y - 38 } };
}

function heldEnd({ view, hand }: Frame): LeadEnd | null {
  return view.held?.kind === 'end' && hand !== null ? view.held.end : null;
}

function carries(cord: Cord, end: LeadEnd | null): boolean {
  return end !== null && (endOfCord(cord) === end || firstEndOf(cord) === end);
}

/** The lead end a cord without a body starts at; null for the others. */
function firstEndOf(cord: Cord): LeadEnd | null {
  return cord in FIRST_ENDS ? FIRST_ENDS[cord as keyof typeof FIRST_ENDS] : null;
}

function placeOf(frame: Frame, end: LeadEnd): { readonly tip: Vec; readonly grip: Vec } {
  const rest = frame.ends.get(end) ?? { tip: { x: 0, y: 0 }, grip: { x: 0, y: 0 } };
  return heldEnd(frame) === end && frame.hand !== null ? inHand(frame.hand) : rest;
}

function layingKey({ observation, view }: Frame): string {
  const lit = `${observation.testLamp.glow.toFixed(2)} ${observation.ledTester.lit}`;
  const ends = LEAD_ENDS.map((end) => observation.leads[end] ?? '-').join();
  return `${ends} ${lit} ${view.shelf} ${observation.meter.jack}`;
}

/** The leads: cords first, then clips, so that no cord crosses a clip. Routes are kept until a lead moves. */
export function createLeads(): Layer {
  let laidFor = '';
  let laid: ReadonlyMap<Cord, Curve> = new Map();
  return {
    name: 'leads',
    key(frame) {
      const hand = heldEnd(frame) === null || frame.hand === null ? '' : `${frame.hand.x} ${frame.hand.y}`;
      const grips = [...frame.ends.values()]
        .map(({ grip }) => `${grip.x.toFixed()} ${grip.y.toFixed()}`)
        .join();
      return `${layingKey(frame)} ${grips} ${heldEnd(frame) ?? ''} ${hand}`;
    },
    paint(art, frame) {
      const { jack } = frame.observation.meter;
      const key = [...frame.ends.values()].reduce(
        (all, { grip, point, shown }) => `${all} ${point} ${grip.x} ${grip.y} ${shown}`,
        jack as string,
      );
      if (key !== laidFor) {
        laidFor = key;
        laid = layCords(frame.observation, frame.ends);
      }
      const held = heldEnd(frame);
      for (const cord of CORDS) {
        const end = endOfCord(cord);
        if (!isSpotThere(frame.observation, `end:${end}`)) continue;
        const first = firstEndOf(cord);
        const lying = laid.get(cord);
        const curve = carries(cord, held)
          ? carriedCord(
              first === null
                ? cordRoot(cord, frame.observation, frame.ends)
                : cordEndOf(placeOf(frame, first)),
              cordEndOf(placeOf(frame, end)),
            )
          : lying;
        if (curve !== undefined) cordLine(art, curve, leadColour(end, art.tokens));
      }
      for (const end of LEAD_ENDS) {
        if (frame.ends.get(end)?.shown === false && held !== end) continue;
        if (!isSpotThere(frame.observation, `end:${end}`)) continue;
        const { tip, grip } = placeOf(frame, end);
        paintClip(art, end, tip, grip);
        if (end === 'lamp-tip') paintLamp(art, tip, grip, frame.observation.testLamp.glow);
        if (end === 'led-tip') paintLed(art, tip, grip, frame.observation.ledTester.lit);
      }
    },
  };
}
