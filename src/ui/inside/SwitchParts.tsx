import type { InsideObservation } from '../../sim/world/Observation.ts';
import { PLAN, springPoints, TRAVEL } from './plan.ts';

/** Capsule of the vacuum switch: vacuum below pulls it down against its spring, and the bridge on to its two studs. */
export function SwitchParts({ inside }: { readonly inside: InsideObservation }) {
  const { x, half, rim } = PLAN.capsule;
  const down = inside.vacuumSwitch === 'closed' ? TRAVEL.capsule : 0;
  const plate = rim - 8 + down;
  return (
    <g>
      <polyline class="inside-spring" points={springPoints(x, plate + 4, PLAN.canister.top - 4, 12, 3)} />
      <path
        class="inside-membrane"
        d={`M${x - half} ${rim} C${x - half + 14} ${rim} ${x - half + 14} ${plate} ${x - 24} ${plate} H${x + 24} C${x + half - 14} ${plate} ${x + half - 14} ${rim} ${x + half} ${rim}`}
      />
      <rect class="inside-part" x={x - 4} y={294 + down} width="8" height={plate - 294 - down} />
      <rect class="inside-part" x={x - 24} y={plate - 4} width="48" height="8" rx="2" />
      <rect class="inside-bridge" x={x - 38} y={288 + down} width="76" height="7" rx="2" />
      {[x - 34, x + 34].map((stud) => (
        <rect key={stud} class="inside-stud" x={stud - 7} y={295 + TRAVEL.capsule} width="14" height="14" />
      ))}
    </g>
  );
}
