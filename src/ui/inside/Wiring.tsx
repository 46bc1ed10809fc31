import type { InsideObservation } from '../../sim/world/Observation.ts';
import { fixed } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { PLUG_WIRES, WIRE_COLOURS } from '../theme/wireColours.ts';

/** From this current, and from this voltage on, a wire is drawn as live. */
const LIVE_AMPS = 0.01;
const LIVE_VOLTS = 0.5;

const CAVITY_X = { 3: 330, 2: 388, 1: 446 } as const;
const WAYS: readonly { readonly cavity: 1 | 2 | 3; readonly d: string }[] = [
  { cavity: 3, d: 'M330 70 V84 H84 V316 H98' },
  { cavity: 2, d: 'M388 70 V98 H192 V316 H178 M388 98 H620 V318 H650' },
  { cavity: 1, d: 'M446 70 V84 H634 V244 H650' },
];

/** The three wires from the plug to coil and switch, and what they carry. */
export function Wiring({ inside }: { readonly inside: InsideObservation }) {
  const fed = Math.abs(inside.coilAmps) >= LIVE_AMPS;
  const live = { 1: fed, 2: fed, 3: inside.senseVolts >= LIVE_VOLTS } as const;
  return (
    <g>
      {WAYS.map(({ cavity, d }) => {
        const look = PLUG_WIRES[cavity];
        return (
          <g key={cavity} class="inside-wire">
            {live[cavity] && <path class="inside-halo" d={d} />}
            <path class="inside-casing" d={d} />
            <path class="inside-core" style={{ stroke: WIRE_COLOURS[look.base] }} d={d} />
            {look.stripe !== null && (
              <path class="inside-stripe" style={{ stroke: WIRE_COLOURS[look.stripe] }} d={d} />
            )}
          </g>
        );
      })}
      <rect class="inside-plug" x="296" y="22" width="184" height="48" rx="6" />
      {([3, 2, 1] as const).map((cavity) => (
        <g key={cavity}>
          <circle class="inside-cavity" cx={CAVITY_X[cavity]} cy="46" r="15" />
          <text class="inside-letter" x={CAVITY_X[cavity]} y="52">
            {cavity}
          </text>
          <text class="inside-small" x={CAVITY_X[cavity]} y="15">
            {PLUG_WIRES[cavity].letters}
          </text>
        </g>
      ))}
      <text class="inside-number" x="84" y="74" text-anchor="start">
        {say('inside.sense', { volts: fixed(inside.senseVolts, 2) })}
      </text>
      <text class="inside-number" x="634" y="74" text-anchor="end">
        {say('inside.coil', { amps: fixed(inside.coilAmps, 2) })}
      </text>
    </g>
  );
}
