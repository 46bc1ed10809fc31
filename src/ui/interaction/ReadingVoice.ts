import type { MeterObservation } from '../../sim/world/Observation.ts';

export type AnnounceMode = 'off' | 'settled' | 'continuous';

/** A reading as it is spoken: digits and unit as shown, `over-range`, or the continuity tone coming or going. */
export interface SpokenReading {
  readonly kind: 'number' | 'over-range' | 'tone-on' | 'tone-off';
  readonly digits: string;
  readonly unit: MeterObservation['display']['unit'];
}

const STABLE_S = 0.5;
/** The last digit hunts: a move of two counts is told only when it has not come back for so long. */
const HUNTING_COUNTS = 2;
const HUNTING_S = 2;
const SHORTEST_GAP_S = 2;
/** The display has caught up with the tone by then. */
const DIGITS_FOLLOW_S = 1.5;

/**
 * Decides when a screen reader is told what the meter shows: after a change of more than one count that then stood still for half a
 * second, at most every two seconds; after one of two counts only when it lasts; continuity once at each change, and no more
 * often. Time is an argument, in seconds.
 */
export class ReadingVoice {
  private shown = '';
  private shownSinceS = 0;
  private spoken: SpokenReading | null = null;
  private spokenAtS = Number.NEGATIVE_INFINITY;
  /** When the display was last seen within one count of what was spoken. */
  private nearSpokenAtS = Number.NEGATIVE_INFINITY;
  /** As it was last told. */
  private tone = false;
  private toneToldAtS = Number.NEGATIVE_INFINITY;
  private turnedAtS: number | null = null;
  private functionNow = '';

  /** The reading to speak now, or null. */
  hear(meter: MeterObservation, nowS: number, mode: AnnounceMode): SpokenReading | null {
    const { digits, unit } = meter.display;
    if (meter.function !== this.functionNow) {
      this.functionNow = meter.function;
      this.spoken = null;
    }
    if (meter.function !== 'continuity' || mode === 'off' || digits === '') this.tone = meter.tone;
    if (mode === 'off' || digits === '') return null;
    const tone = this.toneTurned(meter, nowS);
    if (tone !== null) return this.speak({ kind: tone, digits, unit }, nowS);
    if (meter.tone !== this.tone) return null;
    const near = this.shown !== '' && withinOneCount(this.shown, digits);
    if (!near) {
      this.shown = digits;
      this.shownSinceS = nowS;
    }
    const before = this.spoken?.unit === unit ? this.spoken.digits : null;
    const nearSpoken = before !== null && withinOneCount(before, digits);
    if (nearSpoken) this.nearSpokenAtS = nowS;
    if (nowS - this.spokenAtS < SHORTEST_GAP_S) return null;
    if (mode === 'settled' && nowS - this.shownSinceS < STABLE_S) return null;
    if (nearSpoken) return null;
    const hunts = before !== null && withinCounts(before, digits, HUNTING_COUNTS);
    if (hunts && nowS - this.nearSpokenAtS < HUNTING_S) return null;
    return this.speak({ kind: digits.includes('OL') ? 'over-range' : 'number', digits, unit }, nowS);
  }

  /**
   * The tone that came or went and is to be told now. It is faster than the digits, which are waited for; a contact that chatters is
   * told again when it has come to the other side for good.
   */
  private toneTurned(meter: MeterObservation, nowS: number): 'tone-on' | 'tone-off' | null {
    if (meter.tone === this.tone) {
      this.turnedAtS = null;
      return null;
    }
    this.turnedAtS ??= nowS;
    const { digits, settled } = meter.display;
    const shown = settled && meter.tone === !digits.includes('OL');
    if (!shown && nowS - this.turnedAtS < DIGITS_FOLLOW_S) return null;
    if (nowS - this.toneToldAtS < SHORTEST_GAP_S) return null;
    this.tone = meter.tone;
    this.turnedAtS = null;
    this.toneToldAtS = nowS;
    return meter.tone ? 'tone-on' : 'tone-off';
  }

  private speak(reading: SpokenReading, nowS: number): SpokenReading {
    this.spoken = reading;
    this.spokenAtS = nowS;
    this.nearSpokenAtS = nowS;
    return reading;
  }
}

/** True when two displays of the same range differ by one count of their last digit at most. */
export function withinOneCount(a: string, b: string): boolean {
  return withinCounts(a, b, 1);
}

function withinCounts(a: string, b: string, most: number): boolean {
  if (a === b) return true;
  const decimals = decimalsOf(a);
  if (a.includes('OL') || b.includes('OL') || decimals !== decimalsOf(b)) return false;
  const counts = Math.abs(Number(a) - Number(b)) * 10 ** decimals;
  return counts < most + 0.5;
}

function decimalsOf(digits: string): number {
  const point = digits.indexOf('.');
  return point < 0 ? 0 : digits.length - point - 1;
}
