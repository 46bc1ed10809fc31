/**
 * Conversion factors to SI.
 * Source: NIST Special Publication 811 (2008), appendix B.8, conventional inch of mercury and of water; the international
 * mile; the US gallon; degree Fahrenheit by its definition.
 */
export const PA_PER_INHG = 3386.389;
export const PA_PER_INH2O = 249.0889;
export const PA_PER_PSI = 6894.757;
export const PA_PER_KPA = 1000;
export const HPA_PER_KPA = 10;
export const KM_PER_MILE = 1.609344;
export const LITRES_PER_GALLON = 3.785412;
export const FAHRENHEIT_PER_CELSIUS = 1.8;
export const FAHRENHEIT_AT_0_CELSIUS = 32;
export const KELVIN_AT_0_CELSIUS = 273.15;

export const paToInHg = (pa: number): number => pa / PA_PER_INHG;
export const inHgToPa = (inHg: number): number => inHg * PA_PER_INHG;
export const paToInH2O = (pa: number): number => pa / PA_PER_INH2O;
export const inH2OToPa = (inH2O: number): number => inH2O * PA_PER_INH2O;
export const celsiusToKelvin = (celsius: number): number => celsius + KELVIN_AT_0_CELSIUS;
