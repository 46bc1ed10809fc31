import { TICKS_PER_SECOND, type Tick } from '../base/ticks.ts';
import { PA_PER_INH2O, PA_PER_INHG, PA_PER_KPA } from '../base/units.ts';
import { language } from './translate.ts';

/** A number with a fixed count of decimals, in the present language; minus zero is shown as zero. */
export function fixed(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return new Intl.NumberFormat(language(), {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  }).format(rounded === 0 ? 0 : rounded);
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
  return `${fixed((kPa * PA_PER_KPA) / PA_PER_INH2O, 1)} inH2O`;
}

/** Vacuum with SI beside it: `15.0 inHg (50.8 kPa)`. */
export function inHgAndKPa(kPa: number): string {
  return `${inHg(kPa)} (${fixed(kPa, 1)} kPa)`;
}

/** What an eye makes of a needle: the nearest half inch of mercury, as `15` or `4.5`. */
export function needleByEye(kPa: number): string {
  const half = Math.round(kPaToInHg(kPa) * 2) / 2;
  return fixed(half, Number.isInteger(half) ? 0 : 1);
}

/** A needle that an eye takes to rest on its pin. */
export function needleAtRest(kPa: number): boolean {
  return Math.round(kPaToInHg(kPa) * 2) <= 0;
}

/** Vacuum as an eye reads it off the needle, to half a division: `15 inHg`, `4.5 inHg`. */
export function gaugeByEye(kPa: number): string {
  return `${needleByEye(kPa)} inHg`;
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
