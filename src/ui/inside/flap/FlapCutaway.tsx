import type { InsideObservation, Observation } from '../../../sim/world/Observation.ts';
import { describeInside, onPort } from '../../../text/describeInside.ts';
import { say } from '../../../text/translate.ts';
import { Casing } from '../Casing.tsx';
import { membranePath } from '../Chambers.tsx';
import { FLAP_CHAMBERS, FLAP_PARTS } from '../chamberLetters.ts';
import { ChamberLetters } from '../Labels.tsx';
import { PLAN, springPoints, TRAVEL } from '../plan.ts';
import { pressureTint } from '../pressureTint.ts';
import { SolenoidParts } from '../SolenoidParts.tsx';
import { Wiring } from '../Wiring.tsx';

/** Where the lever turns, and how far its two arms reach from there. */
const PIVOT = { x: 184, y: 290 };
const ARMS = { rod: 137, contact: 46 };
/** From the diaphragm's plate down to where its rod takes the lever. */
const ROD = 70;
/** The contact's bridge: clear of its studs, and on them. */
const BRIDGE = { clear: 288, on: 302 };

const NAMES = [
  { key: 'diaphragm', x: 446, y: 256, anchor: 'start' },
  { key: 'lever', x: 236, y: 366, anchor: 'middle' },
  { key: 'room', x: 388, y: 324, anchor: 'middle' },
  { key: 'contact', x: 138, y: 340, anchor: 'middle' },
  { key: 'coil', x: 662, y: 345, anchor: 'middle' },
  { key: 'plunger', x: 696, y: 345, anchor: 'start' },
] as const;

/** The flap actuator cut open: can, diaphragm, spring and lever, position switch, solenoid valve, wires. */
export function FlapCutaway(props: {
  readonly inside: InsideObservation;
  readonly seen: Pick<Observation, 'sites'>;
}) {
  const { inside, seen } = props;
  const { width, height } = PLAN;
  return (
    <svg
      class="inside-drawing"
      viewBox={`-4 -4 ${width + 8} ${height + 8}`}
      role="img"
      aria-label={describeInside(inside, FLAP_PARTS)}
    >
      <g class="inside-casing-body">
        <Casing />
      </g>
      <Air inside={inside} />
      <Lever inside={inside} />
      <SolenoidParts inside={inside} />
      <Wiring inside={inside} />
      {NAMES.map(({ key, x, y, anchor }) => (
        <text key={key} class="inside-name" x={x} y={y} text-anchor={anchor}>
          {say(`inside.labels.${key}`)}
        </text>
      ))}
      <ChamberLetters inside={inside} chambers={FLAP_CHAMBERS} />
      <g class="inside-name">
        <text x={width} y={PLAN.canister.bottom + 36} text-anchor="end">
          {say('inside.ports.air-port')}: {onPort(seen, 'air-port')}
        </text>
        <text x={width} y="32" text-anchor="end">
          {say('inside.ports.engine-port')}: {onPort(seen, 'engine-port')}
        </text>
      </g>
    </svg>
  );
}

const plateOf = ({ diaphragmTravel }: InsideObservation): number =>
  PLAN.pump.floor - 26 - TRAVEL.pump * diaphragmTravel;

/** The can above its diaphragm with the duct to the valve, the room below it, the two passages. */
function Air({ inside }: { readonly inside: InsideObservation }) {
  const { pump, duct, air, valve } = PLAN;
  const membrane = membranePath(plateOf(inside));
  const fill = (kPa: number) => ({ fill: pressureTint(kPa) });
  return (
    <g class="inside-air">
      <path
        style={fill(inside.airKPa)}
        d={`M640 ${air.top} H762 V214 H664 V180 H${valve.x - valve.half} V${duct.bottom} H${valve.x + valve.half} V180 H782 V${air.top} H${air.right} V${air.top + 6} H${PLAN.width} V${air.bottom - 6} H${air.right} V${air.bottom} H640 Z`}
      />
      <path class="inside-room" d={`M${pump.left} ${pump.rim} ${membrane} V412 H84 V238 H${pump.left} Z`} />
      <path
        style={fill(inside.canKPa)}
        d={`M${pump.left} ${pump.rim} ${membrane} V${duct.bottom} H${duct.right} V${duct.top} H${pump.left} Z`}
      />
      <path
        style={fill(inside.engineKPa)}
        d={`M${valve.x - 11} 48 H${valve.x + 11} V104 H${valve.x + valve.half} V${duct.top} H${valve.x - valve.half} V104 H${valve.x - 11} Z`}
      />
      {[
        { y: duct.bottom, kPa: inside.canKPa },
        { y: duct.top, kPa: inside.engineKPa },
      ].map(({ y, kPa }) => (
        <rect
          key={y}
          style={fill(kPa)}
          x={valve.x - valve.half + 1}
          y={y - 2}
          width={2 * valve.half - 2}
          height="4"
        />
      ))}
    </g>
  );
}

/** Diaphragm on its return spring, the rod, the lever, and the contact that it presses down at the end of its way. */
function Lever({ inside }: { readonly inside: InsideObservation }) {
  const { pump } = PLAN;
  const plate = plateOf(inside);
  const middle = (pump.left + pump.right) / 2;
  const rod = plate + ROD;
  const tip = PIVOT.y - ((rod - PIVOT.y) * ARMS.contact) / ARMS.rod;
  const lowest = inside.vacuumSwitch === 'closed' ? BRIDGE.on : BRIDGE.on - 4;
  const bridge =
    inside.vacuumSwitch === 'closed' ? BRIDGE.on : Math.min(Math.max(BRIDGE.clear, tip + 4), lowest);
  return (
    <g>
      <polyline class="inside-spring" points={springPoints(middle, pump.top + 2, plate - 6, 24, 5)} />
      <path class="inside-membrane" d={`M${pump.left} ${pump.rim} ${membranePath(plate)}`} />
      <rect class="inside-part" x={middle - 54} y={plate - 6} width="108" height="9" rx="2" />
      <rect class="inside-part" x={middle - 4} y={plate + 3} width="8" height={ROD - 3} />
      <line class="inside-membrane" x1={PIVOT.x - ARMS.contact} y1={tip} x2={PIVOT.x + ARMS.rod} y2={rod} />
      <circle class="inside-part" cx={PIVOT.x} cy={PIVOT.y} r="7" />
      <rect class="inside-bridge" x="100" y={bridge} width="76" height="7" rx="2" />
      {[104, 172].map((stud) => (
        <rect key={stud} class="inside-stud" x={stud - 7} y="309" width="14" height="14" />
      ))}
    </g>
  );
}
