import { assert } from '../../base/assert.ts';
import type { AirNetwork } from '../network/AirNetwork.ts';

/** A cylinder with a piston moved by hand: a volume of the network that grows and shrinks as it is told. */
export class SweptVolume {
  /** Its node in the network. */
  readonly node: number;

  /** Clearance (what is left when the piston is home) and full stroke in m³; starts home, filled to `initialPa`. */
  constructor(
    private readonly network: AirNetwork,
    name: string,
    private readonly clearanceM3: number,
    private readonly strokeM3: number,
    initialPa: number,
  ) {
    assert(clearanceM3 > 0 && strokeM3 > 0, 'swept volume', { clearanceM3, strokeM3 });
    this.node = network.volume(name, clearanceM3, initialPa);
  }

  /** How far it is drawn now, 0 home to 1 full. */
  get drawn(): number {
    return (this.network.ownVolume(this.node) - this.clearanceM3) / this.strokeM3;
  }

  /** Where the piston shall be at the end of the next step, 0 home to 1 full. */
  moveTo(drawn: number): void {
    assert(drawn >= 0 && drawn <= 1, 'piston travel', { drawn });
    this.network.setVolume(this.node, this.clearanceM3 + drawn * this.strokeM3);
  }

  /** Puts the piston there at once, 0 home to 1 full, its pressure as it is: as when a network is built anew. */
  place(drawn: number): void {
    assert(drawn >= 0 && drawn <= 1, 'piston travel', { drawn });
    this.network.resize(this.node, this.clearanceM3 + drawn * this.strokeM3);
  }

  /** How fast it is about to move, full strokes per second, + drawing; lets `suggestStep` allow for it. 0 at rest. */
  announce(strokesPerS: number): void {
    this.network.announceSweep(this.node, strokesPerS * this.strokeM3);
  }
}
