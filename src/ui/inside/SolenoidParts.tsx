import type { InsideObservation } from '../../sim/world/Observation.ts';
import { PLAN, PLUNGER_STANDS, springPoints, TRAVEL } from './plan.ts';

/** From this current on the coil is drawn as live, A. */
const LIVE_AMPS = 0.01;

/** Coil, plunger and the valve disc on its stem: up on the engine's seat at rest, down on the air passage's when seated. */
export function SolenoidParts({ inside }: { readonly inside: InsideObservation }) {
  const { valve, duct } = PLAN;
  const down = TRAVEL.plunger * PLUNGER_STANDS[inside.plunger];
  const live = Math.abs(inside.coilAmps) >= LIVE_AMPS;
  const winding = live ? 'inside-winding inside-live' : 'inside-winding';
  return (
    <g>
      <rect class="inside-bore" x={valve.x - 22} y="226" width="44" height="104" />
      {[650, 726].map((x) => (
        <g key={x} class={winding}>
          <rect x={x} y="232" width="24" height="92" />
          {[0, 1, 2, 3, 4, 5, 6].map((turn) => (
            <line key={turn} x1={x} x2={x + 24} y1={240 + turn * 12} y2={246 + turn * 12} />
          ))}
        </g>
      ))}
      <polyline class="inside-spring" points={springPoints(valve.x, 296 + down, 329, 10, 3)} />
      <rect class="inside-part" x={valve.x - 5} y={duct.top + 6 + down} width="10" height={100} />
      <rect class="inside-part" x={valve.x - 20} y={232 + down} width="40" height="64" rx="3" />
      <rect class="inside-part" x={valve.x - 26} y={duct.top + 1 + down} width="52" height="10" rx="3" />
    </g>
  );
}
