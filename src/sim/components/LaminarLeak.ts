import { assert } from '../../base/assert.ts';
import { type AirPath, type FlowSlope, settingsChanged } from '../network/AirPart.ts';

/**
 * A porous or very long fine path, where friction alone counts: mass flow = conductance × pressure difference, in kg/s.
 * Conductance in kg/(s·Pa), for differences small against the pressure itself.
 */
export class LaminarLeak implements AirPath {
  readonly kind = 'path';
  readonly settings = [Number.NaN];

  constructor(
    readonly from: number,
    readonly to: number,
    conductance: number,
  ) {
    this.conductance = conductance;
  }

  get conductance(): number {
    return this.settings[0] as number;
  }

  set conductance(value: number) {
    assert(value >= 0, 'laminar conductance', { value });
    this.settings[0] = value;
    settingsChanged();
  }

  get closed(): boolean {
    return this.settings[0] === 0;
  }

  flow(pFrom: number, pTo: number, _temperatureK: number, out: FlowSlope): void {
    const conductance = this.conductance;
    out.q = conductance * (pFrom - pTo);
    out.dFrom = conductance;
    out.dTo = -conductance;
  }
}
