import type { InsideObservation } from '../../sim/world/Observation.ts';
import { PLAN, springPoints, TRAVEL } from './plan.ts';

/** Vent disc under its seat, its diaphragm with spring, and the check of the delay. */
export function VentParts({ inside }: { readonly inside: InsideObservation }) {
  const { vent, delay, canister, duct } = PLAN;
  const up = inside.ventSeat === 'shut' ? TRAVEL.vent : 0;
  const plate = delay.floor - up;
  const disc = canister.top + 3 + TRAVEL.vent - up;
  return (
    <g>
      <polyline class="inside-spring" points={springPoints(vent.x, delay.top + 2, plate - 5, 13, 4)} />
      <path
        class="inside-membrane"
        d={`M${delay.left} ${delay.floor} C${delay.left + 12} ${delay.floor} ${delay.left + 12} ${plate} ${vent.x - 26} ${plate} H${vent.x + 26} C${delay.right - 12} ${plate} ${delay.right - 12} ${delay.floor} ${delay.right} ${delay.floor}`}
      />
      <rect class="inside-part" x={vent.x - 4} y={plate} width="8" height={disc - plate} />
      <rect class="inside-part" x={vent.x - 26} y={plate - 5} width="52" height="8" rx="2" />
      <rect class="inside-part" x={vent.x - 34} y={disc} width="68" height="9" rx="3" />
      <rect
        class="inside-part inside-leaf"
        x="512"
        y={duct.bottom - 6}
        width="30"
        height="6"
        rx="2"
        transform={inside.delayCheck === 'open' ? `rotate(-30 512 ${duct.bottom - 3})` : undefined}
      />
    </g>
  );
}
