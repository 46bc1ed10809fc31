import type { InsideObservation } from '../../sim/world/Observation.ts';
import { PLAN, TRAVEL } from './plan.ts';
import { pressureTint } from './pressureTint.ts';

/** The air of the unit, chamber by chamber, each in the tint of its pressure. What moves stands on top of it. */
export function Chambers({ inside }: { readonly inside: InsideObservation }) {
  const { canister, air, pump, duct, delay, vent, valve, capsule } = PLAN;
  const fill = (kPa: number) => ({ fill: pressureTint(kPa) });
  const plate = pump.floor - 26 - TRAVEL.pump * inside.diaphragmTravel;
  const membrane = membranePath(plate);
  return (
    <g class="inside-air">
      {/* Canister passage, its barb, the room under the switch capsule, the way up to the inlet check. */}
      <path
        style={fill(inside.canisterKPa)}
        d={`M0 ${canister.top + 8} H${canister.left} V${canister.top} H${capsule.x - 26} V${canister.top - 14} H${capsule.x - capsule.half} V${capsule.rim} H${capsule.x + capsule.half} V${canister.top - 14} H${capsule.x + 26} V${canister.top} H246 V${pump.floor} H268 V${canister.top} H${canister.right} V${canister.bottom} H${canister.left} V${canister.bottom - 8} H0 Z`}
      />
      {/* Air passage with its barb, and the way up to the solenoid valve. */}
      <path
        style={fill(inside.airKPa)}
        d={`M${air.left} ${air.top} H762 V214 H664 V180 H${valve.x - valve.half} V${duct.bottom} H${valve.x + valve.half} V180 H782 V${air.top} H${air.right} V${air.top + 6} H${PLAN.width} V${air.bottom - 6} H${air.right} V${air.bottom} H${vent.x + vent.half} V${canister.top} H${vent.x - vent.half} V${air.bottom} H${air.left} Z`}
      />
      {/* Pump chamber below the membrane with the outlet check's way down; drive chamber above it with the duct to the valve. */}
      <path
        style={fill(inside.pumpKPa)}
        d={`M${pump.left} ${pump.rim} ${membrane} V${pump.floor} H426 V${air.top} H404 V${pump.floor} H${pump.left} Z`}
      />
      <path
        style={fill(inside.driveKPa)}
        d={`M${pump.left} ${pump.rim} ${membrane} V${duct.bottom} H${duct.right} V${duct.top} H${pump.left} Z`}
      />
      {/* Vent-delay chamber with its bleed and its check's way. */}
      <path
        style={fill(inside.delayKPa)}
        d={`M${delay.left} ${delay.top} H518 V${duct.bottom} H536 V${delay.top} H582 V${duct.bottom} H588 V${delay.top} H${delay.right} V${delay.floor} H${delay.left} Z`}
      />
      {/* Engine vacuum port down to its seat. */}
      <path
        style={fill(inside.engineKPa)}
        d={`M${valve.x - 11} 48 H${valve.x + 11} V104 H${valve.x + valve.half} V${duct.top} H${valve.x - valve.half} V104 H${valve.x - 11} Z`}
      />
      {/* Where two chambers meet there is no wall, only a seat or a leaf. */}
      {[
        { x: vent.x - vent.half, width: 2 * vent.half, y: canister.top, kPa: inside.airKPa },
        { x: valve.x - valve.half, width: 2 * valve.half, y: duct.bottom, kPa: inside.driveKPa },
        { x: valve.x - valve.half, width: 2 * valve.half, y: duct.top, kPa: inside.engineKPa },
        { x: 246, width: 22, y: pump.floor, kPa: inside.canisterKPa },
        { x: 404, width: 22, y: air.top, kPa: inside.pumpKPa },
        { x: 518, width: 18, y: duct.bottom, kPa: inside.delayKPa },
        { x: 582, width: 6, y: duct.bottom, kPa: inside.delayKPa },
      ].map(({ x, width, y, kPa }) => (
        <rect key={`${x} ${y}`} style={fill(kPa)} x={x + 1} y={y - 2} width={width - 2} height="4" />
      ))}
      {/* Room air: above the switch capsule, and under the vent diaphragm. */}
      <rect class="inside-room" x="66" y="270" width="144" height={capsule.rim - 270} />
      <rect class="inside-room" x={delay.left} y={delay.floor} width={delay.right - delay.left} height="24" />
    </g>
  );
}

/** From the left rim over the plate to the right rim. */
export function membranePath(plate: number): string {
  const { left, right, rim } = PLAN.pump;
  return `C${left + 24} ${rim} ${left + 30} ${plate} ${left + 58} ${plate} H${right - 58} C${right - 30} ${plate} ${right - 24} ${rim} ${right} ${rim}`;
}
