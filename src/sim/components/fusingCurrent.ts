import { ln, pow } from '../../base/maths.ts';
import type { FuseElement } from './Fuse.ts';

const PI = 3.141592653589793;
const MM2_PER_CIRCULAR_MIL = 5.067075e-4;
const COPPER_MELTS_C = 1083;

/**
 * A bare copper conductor as something that melts: `ratedAmps` is what just melts it in the long run, by Preece's law
 * I = 80 d^1.5 (d in mm; about 0.2 to 2 mm), and the time constant gives a sudden overload the melting integral of
 * Onderdonk's law I²t = A² log₁₀(1 + (1083 − T) / (234 + T)) / 33 (A in circular mils, T in °C; up to about 10 s).
 * Both laws from memory, as printed in handbooks.
 */
export function copperFusing(mm2: number, celsius = 20): { ratedAmps: number; element: FuseElement } {
  const diameterMm = Math.sqrt((4 * mm2) / PI);
  const ratedAmps = 80 * pow(diameterMm, 1.5);
  const mils = mm2 / MM2_PER_CIRCULAR_MIL;
  const decades = ln(1 + (COPPER_MELTS_C - celsius) / (234 + celsius)) / ln(10);
  const integral = (mils * mils * decades) / 33;
  return { ratedAmps, element: { timeConstant: integral / (ratedAmps * ratedAmps), meltingWarmth: 1 } };
}
