import { TICKS_PER_SECOND, type Tick } from '../base/ticks.ts';
import {
  FAHRENHEIT_AT_0_CELSIUS,
  FAHRENHEIT_PER_CELSIUS,
  HPA_PER_KPA,
  KM_PER_MILE,
  LITRES_PER_GALLON,
  PA_PER_INH2O,
  PA_PER_INHG,
  PA_PER_KPA,
} from '../base/units.ts';
import { language, say } from './translate.ts';
import { displayUnits } from './units.ts';

/** A number with a fixed count of decimals, in the present language; minus zero is shown as zero. */
export function fixed(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return formatOf(language(), decimals).format(rounded === 0 ? 0 : rounded);
}

/** Made once each: the bench writes some hundred numbers ten times a second, and making one takes longer than using it. */
const formats = new Map<string, Intl.NumberFormat>();

function formatOf(tag: string, decimals: number): Intl.NumberFormat {
  const key = `${tag} ${decimals}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(tag, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
    formats.set(key, format);
  }
  return format;
}

/** A share as per cent with one decimal: `12.3 %`. */
export function percent(share: number): string {
  return `${fixed(share * 100, 1)} %`;
}

/** A number with one decimal, or none where that is nought: `17.2`, `137`. */
export function tenths(value: number): string {
  const whole = Math.round(value * 10);
  return fixed(whole / 10, whole % 10 === 0 ? 0 : 1);
}

export function kPaToInHg(kPa: number): number {
  return (kPa * PA_PER_KPA) / PA_PER_INHG;
}

/** Vacuum as the trade reads it: `15.0 inHg`. */
export function inHg(kPa: number): string {
  return `${fixed(kPaToInHg(kPa), 1)} inHg`;
}

/** Vacuum on the water manometer: `10.2 inH2O`. */
export function inH2O(kPa: number): string {
  return `${inchesOfWater(kPa)} inH2O`;
}

/** A pressure as its digits in inches of water. */
export function inchesOfWater(kPa: number): string {
  return fixed((kPa * PA_PER_KPA) / PA_PER_INH2O, 1);
}

/** Vacuum with SI beside it: `15.0 inHg (50.8 kPa)`. */
export function inHgAndKPa(kPa: number): string {
  return `${inHg(kPa)} (${fixed(kPa, 1)} kPa)`;
}

/** Vacuum as a number of the unit that is shown, for curves and scales. */
export function shownVacuum(kPa: number): number {
  return displayUnits() === 'us' ? kPaToInHg(kPa) : kPa;
}

/** A volume of vapour space: `10.6 gal`, `40 L`. */
export function volume(litres: number): string {
  return displayUnits() === 'us' ? `${fixed(litres / LITRES_PER_GALLON, 1)} gal` : `${fixed(litres, 0)} L`;
}

export function vacuumUnit(): 'inHg' | 'kPa' {
  return displayUnits() === 'us' ? 'inHg' : 'kPa';
}

/** Vacuum to a tenth: `15.0 inHg` or `50.8 kPa`. */
export function vacuum(kPa: number): string {
  return `${fixed(shownVacuum(kPa), 1)} ${vacuumUnit()}`;
}

/** Vacuum to aim at with the hand pump: `15.0 inHg` or `51 kPa`, which is as fine as the dial is divided. */
export function vacuumAim(kPa: number): string {
  return displayUnits() === 'us' ? inHg(kPa) : `${fixed(kPa, 0)} kPa`;
}

/**
 * The water manometer's digits: tenths of an inch of water, or fifths of a hectopascal. Both are as fine as its lens
 * shows, and no finer.
 */
export function waterDigits(kPa: number): string {
  return displayUnits() === 'us' ? inchesOfWater(kPa) : fixed(Math.round(kPa * HPA_PER_KPA * 5) / 5, 1);
}

/** Vacuum on the water manometer: `10.2 inH2O` or `25.4 hPa`. */
export function waterColumn(kPa: number): string {
  return `${waterDigits(kPa)} ${displayUnits() === 'us' ? 'inH2O' : 'hPa'}`;
}

/** Pressure of the smoke machine, whose own dial is in kilopascals: `10.0 inH2O` or `2.5 kPa`. */
export function smokePressure(kPa: number): string {
  return displayUnits() === 'us' ? inH2O(kPa) : `${fixed(kPa, 1)} kPa`;
}

/** What an eye makes of a needle: the nearest half inch of mercury, as `15` or `4.5`, or the nearest whole kilopascal. */
export function needleByEye(kPa: number): string {
  if (needleAtRest(kPa)) return fixed(0, 0);
  if (displayUnits() === 'metric') return fixed(kPa, 0);
  const half = Math.round(kPaToInHg(kPa) * 2) / 2;
  return fixed(half, Number.isInteger(half) ? 0 : 1);
}

/** The digits beside a needle that teach its reading: tenths of an inch of mercury, or whole kilopascals. */
export function dialDigits(kPa: number): string {
  return displayUnits() === 'us' ? fixed(kPaToInHg(kPa), 1) : fixed(kPa, 0);
}

/** A needle that an eye takes to rest on its pin, in whatever units it reads. */
export function needleAtRest(kPa: number): boolean {
  return Math.round(kPaToInHg(kPa) * 2) <= 0;
}

/** Vacuum as an eye reads it off the needle, to half a division: `15 inHg`, `4.5 inHg`, `51 kPa`. */
export function gaugeByEye(kPa: number): string {
  return `${needleByEye(kPa)} ${vacuumUnit()}`;
}

/** Pressure of the air outside: `29.2 inHg` or `98.9 kPa`. */
export function barometer(kPa: number): string {
  return vacuum(kPa);
}

/** Temperature in whole degrees: `68 °F` or `20 °C`. */
export function temperature(celsius: number): string {
  return displayUnits() === 'us'
    ? `${fixed(celsius * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_AT_0_CELSIUS, 0)} °F`
    : `${fixed(celsius, 0)} °C`;
}

/** Way on the road as a whole number of the unit that is shown. */
export function shownDistance(miles: number): number {
  return Math.round(displayUnits() === 'us' ? miles : miles * KM_PER_MILE);
}

/** Way on the road: `1 mile`, `247 miles` or `398 km`. */
export function distance(miles: number): string {
  const count = shownDistance(miles);
  return displayUnits() === 'us' ? say('roadTest.mileCount', { count }) : `${fixed(count, 0)} km`;
}

/** Time since the sitting began: `00:12:40`. */
export function clock(tick: Tick): string {
  const seconds = Math.floor(tick / TICKS_PER_SECOND);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

/** Whole dollars of the invented price list. */
export function money(amount: number): string {
  return `$${fixed(amount, 0)}`;
}

export function volts(value: number): string {
  return `${fixed(value, 2)} V`;
}

/** A date and time of the wall clock, for lists of finished jobs. */
export function date(epochMs: number): string {
  return new Intl.DateTimeFormat(language(), { dateStyle: 'medium', timeStyle: 'short' }).format(epochMs);
}

/** First letter as a capital. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toLocaleUpperCase(language()) + sentence.slice(1);
}
