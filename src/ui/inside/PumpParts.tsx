import type { InsideObservation } from '../../sim/world/Observation.ts';
import { membranePath } from './Chambers.tsx';
import { PLAN, springPoints, TRAVEL } from './plan.ts';

/** Pump diaphragm on its return spring, and the two checks below it. */
export function PumpParts({ inside }: { readonly inside: InsideObservation }) {
  const { pump, air } = PLAN;
  const plate = pump.floor - 26 - TRAVEL.pump * inside.diaphragmTravel;
  const middle = (pump.left + pump.right) / 2;
  return (
    <g>
      <polyline class="inside-spring" points={springPoints(middle, pump.top + 2, plate - 6, 24, 5)} />
      <path class="inside-membrane" d={`M${pump.left} ${pump.rim} ${membranePath(plate)}`} />
      <rect class="inside-part" x={middle - 54} y={plate - 6} width="108" height="9" rx="2" />
      <Flap x={240} y={pump.floor - 4} open={inside.inletCheck === 'open'} towards={-30} />
      <Flap x={398} y={air.top + 4} open={inside.outletCheck === 'open'} towards={30} />
    </g>
  );
}

/** A check valve's leaf over a bore 22 wide, hinged at its left. */
function Flap(props: {
  readonly x: number;
  readonly y: number;
  readonly open: boolean;
  readonly towards: number;
}) {
  const turn = props.open ? `rotate(${props.towards} ${props.x} ${props.y})` : undefined;
  return (
    <rect
      class="inside-part inside-leaf"
      x={props.x}
      y={props.y - 3}
      width="34"
      height="6"
      rx="2"
      transform={turn}
    />
  );
}
