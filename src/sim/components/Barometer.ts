import { assert } from '../../base/assert.ts';
import { pow } from '../../base/maths.ts';

export const SEA_LEVEL_PA = 101_325;

const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
const EXPONENT = 5.25588;

/**
 * Barometric pressure in Pa at a geopotential altitude in m, −1000 to 11 000.
 * Law: p = 101325·(1 − 0.0065·H/288.15)^5.25588. Source: US Standard Atmosphere 1976, troposphere.
 */
export function barometerPa(altitudeM: number): number {
  assert(altitudeM >= -1000 && altitudeM <= 11_000, 'altitude outside the troposphere', { altitudeM });
  return SEA_LEVEL_PA * pow(1 - (LAPSE_K_PER_M * altitudeM) / SEA_LEVEL_K, EXPONENT);
}
