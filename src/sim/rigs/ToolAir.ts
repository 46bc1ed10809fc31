import type { Orifice } from '../components/Orifice.ts';
import { SweptVolume } from '../components/SweptVolume.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirFabric } from './AirFabric.ts';
import type { AirNodes } from './airVolumes.ts';

/** Bore of the manometer's glass, m: what is left of it when its water has gone. */
const GLASS_M = 4e-3;

/** Hand pump with gauge, jar with tees and needle bleed, water manometer, smoke machine. */
export class ToolAir {
  readonly cylinder: SweptVolume;
  /** From the smoke machine's regulator into its hose. */
  readonly smokeSupply: Orifice;

  constructor(
    fabric: AirFabric,
    at: AirNodes,
    room: number,
    smoke: number,
    { q, barometerPa }: { readonly q: RigParameters; readonly barometerPa: number },
  ) {
    this.cylinder = new SweptVolume(fabric.network, 'cylinder', q.pumpDeadM3, q.pumpStrokeM3, barometerPa);
    const check = { diameterM: q.handPumpCheckM, crackingPa: q.handPumpCheckCrackPa };
    fabric.check(at['pump-hose'], this.cylinder.node, check);
    fabric.check(this.cylinder.node, room, check);
    fabric.bore(at['pump-hose'], room, 'releaseM', { open: (bench) => bench.releaseOpen, seen: 'pump' });
    fabric.bore(at['pump-hose'], room, 'handPumpSealLeakM', { seen: 'pump' });

    fabric.bore(at['jar-hose'], at.jar, 'portM');
    // A needle's bore grows evenly as it is turned, so its flow with the square.
    fabric.bore(at.jar, room, 'bleedM', { open: ({ bleed }) => bleed * bleed, seen: 'jar' });

    fabric.bore(at.manometer, room, () => GLASS_M, { open: ({ waterLost }) => waterLost, seen: 'loose-end' });

    this.smokeSupply = fabric.bore(smoke, at['smoke-hose'], 'smokeSupplyM', {
      open: (bench) => bench.smoke.gas !== 'off',
    });
  }
}
