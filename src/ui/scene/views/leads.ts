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
  layCords,
} from '../../interaction/layout/leadRouting.ts';
import type { Frame, Layer } from '../Frame.ts';
import { leadColour, paintClip } from './leadClips.ts';
import { cordLine } from './parts.ts';

/** A held end points down to its left, its grip under the hand. */
function inHand(hand: Vec): { readonly tip: Vec; readonly grip: Vec } {
  return { tip: hand, grip: { x: hand.x + 22, y: hand.y - 38 } };
}

function heldEnd({ view, hand }: Frame): LeadEnd | null {
  return view.held?.kind === 'end' && hand !== null ? view.held.end : null;
}

function carries(cord: Cord, end: LeadEnd | null): boolean {
  return end !== null && (endOfCord(cord) === end || (cord === 'plain' && end === 'plain-a'));
}

function placeOf(frame: Frame, end: LeadEnd): { readonly tip: Vec; readonly grip: Vec } {
  const rest = frame.ends.get(end) ?? { tip: { x: 0, y: 0 }, grip: { x: 0, y: 0 } };
  return heldEnd(frame) === end && frame.hand !== null ? inHand(frame.hand) : rest;
}

function layingKey({ observation }: Frame): string {
  return LEAD_ENDS.map((end) => observation.leads[end] ?? '-').join();
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
      const key = [...frame.ends.values()].map(({ grip, point }) => `${point} ${grip.x} ${grip.y}`).join();
      if (key !== laidFor) {
        laidFor = key;
        laid = layCords(frame.observation, frame.ends);
      }
      const held = heldEnd(frame);
      for (const cord of CORDS) {
        const end = endOfCord(cord);
        const lying = laid.get(cord);
        const curve = carries(cord, held)
          ? carriedCord(
              cord === 'plain'
                ? cordEndOf(placeOf(frame, 'plain-a'))
                : cordRoot(cord, frame.observation, frame.ends),
              cordEndOf(placeOf(frame, end)),
            )
          : lying;
        if (curve !== undefined) cordLine(art, curve, leadColour(end, art.tokens));
      }
      for (const end of LEAD_ENDS) {
        const { tip, grip } = placeOf(frame, end);
        paintClip(art, end, tip, grip);
      }
    },
  };
}
