import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';
import { describeInside, onPort } from '../../text/describeInside.ts';
import { say } from '../../text/translate.ts';
import { Casing } from './Casing.tsx';
import { Chambers } from './Chambers.tsx';
import { Labels } from './Labels.tsx';
import { PumpParts } from './PumpParts.tsx';
import { PLAN } from './plan.ts';
import { SolenoidParts } from './SolenoidParts.tsx';
import { SwitchParts } from './SwitchParts.tsx';
import { VentParts } from './VentParts.tsx';
import { Wiring } from './Wiring.tsx';

/** The drawing: casing, air, working parts, wires, labels, from back to front. */
export function Cutaway(props: {
  readonly inside: InsideObservation;
  readonly seen: Pick<Observation, 'sites'>;
}) {
  const { inside, seen } = props;
  const { casing, width, height, canister } = PLAN;
  return (
    <svg
      class="inside-drawing"
      viewBox={`-4 -4 ${width + 8} ${height + 8}`}
      role="img"
      aria-label={describeInside(inside)}
    >
      <g class="inside-casing-body">
        <rect x="2" y={canister.top + 3} width={casing.x} height={canister.bottom - canister.top - 6} />
        <Casing />
      </g>
      <Chambers inside={inside} />
      <PumpParts inside={inside} />
      <VentParts inside={inside} />
      <SwitchParts inside={inside} />
      <SolenoidParts inside={inside} />
      <Wiring inside={inside} />
      <Labels inside={inside} />
      <g class="inside-name">
        <text x="2" y={canister.bottom + 36}>
          {say('inside.ports.canister-port')}: {onPort(seen, 'canister-port')}
        </text>
        <text x={width} y={canister.bottom + 36} text-anchor="end">
          {say('inside.ports.air-port')}: {onPort(seen, 'air-port')}
        </text>
        <text x={width} y="32" text-anchor="end">
          {say('inside.ports.engine-port')}: {onPort(seen, 'engine-port')}
        </text>
      </g>
    </svg>
  );
}
