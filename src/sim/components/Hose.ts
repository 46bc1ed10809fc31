import { assert } from '../../base/assert.ts';
import type { AirNetwork } from '../network/AirNetwork.ts';
import { boreArea } from './FlowLaw.ts';
import { Orifice } from './Orifice.ts';

export interface HoseShape {
  readonly lengthM: number;
  readonly boreM: number;
}

/** Volume of a hose's bore, m³. */
export function hoseVolume(shape: HoseShape): number {
  return boreArea(shape.boreM) * shape.lengthM;
}

/** A hose: the volume of its bore between two end restrictions of that bore. An end's openness 0 is a plug. */
export class Hose {
  readonly node: number;
  readonly nearEnd: Orifice;
  readonly farEnd: Orifice;

  /** `near` and `far` are the nodes it joins; filled to `initialPa` absolute. */
  constructor(
    network: AirNetwork,
    name: string,
    near: number,
    far: number,
    shape: HoseShape,
    initialPa: number,
  ) {
    assert(shape.lengthM > 0 && shape.boreM > 0, 'hose', { ...shape });
    this.node = network.volume(name, hoseVolume(shape), initialPa);
    this.nearEnd = network.add(Orifice.bore(near, this.node, shape.boreM));
    this.farEnd = network.add(Orifice.bore(this.node, far, shape.boreM));
  }
}
