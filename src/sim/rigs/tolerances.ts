import { Random } from '../../base/Random.ts';
import type { ItemId } from '../devices/items.ts';
import type { ParameterName, RigParameters } from '../devices/parameters.ts';
import type { WhichUnit } from '../devices/places.ts';
import type { RigDefinition } from './RigDefinition.ts';

/** Half-width of a parameter's tolerance: a share of nominal, or an absolute amount in its own unit. */
export interface Tolerance {
  readonly parameter: ParameterName;
  readonly share?: number;
  readonly absolute?: number;
}

/** Orifice diameters vary by half the share of their flow, since flow goes with the square of diameter. */
export const FLOW_4_PERCENT = 0.02;

/** What each item carries that every rig has; renewing the item draws them afresh. */
export const COMMON_TOLERANCES: Readonly<Partial<Record<ItemId, readonly Tolerance[]>>> = {
  'feed-wire': [{ parameter: 'feedWireOhms', share: 0.1 }],
  'ground-wire': [
    { parameter: 'groundWireOhms', share: 0.1 },
    { parameter: 'spliceWireOhms', share: 0.1 },
  ],
  'sense-wire': [{ parameter: 'senseWireOhms', share: 0.1 }],
  plug: [{ parameter: 'terminalOhms', share: 0.1 }],
  controller: [
    { parameter: 'sensePullUpOhms', share: 0.05 },
    { parameter: 'senseRailVolts', share: 0.02 },
  ],
  'hand-pump': [
    { parameter: 'pumpStrokeM3', share: 0.02 },
    { parameter: 'pumpHoseM3', share: 0.05 },
    { parameter: 'gaugeGain', absolute: 0.012 },
    { parameter: 'handPumpCheckM', share: FLOW_4_PERCENT },
    { parameter: 'releaseM', share: FLOW_4_PERCENT },
  ],
  'air-hose': [
    { parameter: 'airHoseM3', share: 0.05 },
    { parameter: 'airHoseM', share: FLOW_4_PERCENT },
  ],
  'engine-hose': [
    { parameter: 'engineHoseM3', share: 0.05 },
    { parameter: 'engineHoseM', share: FLOW_4_PERCENT },
  ],
  filter: [{ parameter: 'filterM', share: FLOW_4_PERCENT }],
  'meter-leads': [{ parameter: 'meterLeadOhms', share: 0.1 }],
  jumper: [{ parameter: 'jumperOhms', share: 0.1 }],
  'plain-lead': [{ parameter: 'plainLeadOhms', share: 0.1 }],
};

/** The jar, the hoses and the smoke machine of the bench, which nobody renews. */
export const TOOL_TOLERANCES: readonly Tolerance[] = [
  { parameter: 'jarM3', share: 0.05 },
  { parameter: 'jarHoseM3', share: 0.05 },
  { parameter: 'manometerM3', share: 0.05 },
  { parameter: 'smokeHoseM3', share: 0.05 },
  { parameter: 'bleedM', share: FLOW_4_PERCENT },
  { parameter: 'smokeSupplyM', share: FLOW_4_PERCENT },
];

/** The meter's own errors: drawn once a sitting, anywhere inside its accuracy bound. */
const METER: readonly Tolerance[] = [
  { parameter: 'meterVoltsError', absolute: 1 },
  { parameter: 'meterOhmsError', absolute: 1 },
  { parameter: 'meterAcError', absolute: 1 },
  { parameter: 'meterAmpsError', absolute: 1 },
];

function draw(parameters: RigParameters, tolerances: readonly Tolerance[], random: Random): void {
  for (const { parameter, share = 0, absolute = 0 } of tolerances) {
    const nominal = parameters[parameter];
    parameters[parameter] = nominal + random.symmetric() * (nominal * share + absolute);
  }
}

/**
 * A rig's parameters before any fault: nominal values with tolerances drawn from the seed.
 * `renewed` lists items in the order they were renewed; each renewal is a new draw of that item's own stream. The
 * known-good unit is one of its own.
 */
export function drawnParameters(
  rig: Pick<RigDefinition, 'parameters' | 'tolerances' | 'lasting'>,
  seed: string,
  renewed: readonly ItemId[],
  unit: WhichUnit = 'truck',
): RigParameters {
  const parameters = { ...rig.parameters };
  for (const [item, tolerances] of Object.entries(rig.tolerances)) {
    const times = renewed.filter((name) => name === item).length;
    const which = item === 'unit' && unit === 'known-good' ? 'known-good' : times;
    draw(parameters, tolerances, Random.of(seed, `tolerance/${item}/${which}`));
  }
  draw(parameters, rig.lasting, Random.of(seed, 'tolerance/lasting'));
  draw(parameters, METER, Random.of(seed, 'tolerance/meter'));
  return parameters;
}
