/**
 * Copper conductor resistance at 20 °C by cross-section in mm², ohms per metre.
 * Source: ISO 6722-1:2011 conductor table, quoted from memory; ISO 19642-3 carries the same series.
 */
export const RESISTANCE_PER_METRE = { '0.35': 0.0544, '0.5': 0.0371, '0.75': 0.0247, '1.0': 0.0185 } as const;
