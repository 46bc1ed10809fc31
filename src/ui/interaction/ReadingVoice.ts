import type { MeterObservation } from '../../sim/world/Observation.ts';

export type AnnounceMode = 'off' | 'settled' | 'continuous';

/** A reading as it is spoken: digits and unit as shown, `over-range`, or the continuity tone coming or going. */
export interface SpokenReading {
  readonly kind: 'number' | 'over-range' | 'tone-on' | 'tone-off';
  readonly digits: string;
  readonly unit: MeterObservation['display']['unit'];
}

const STABLE_S = 0.5;
const SHORTEST_GAP_S = 2;

/**
 * Decides when a screen reader is told what the meter shows: after a change of more than one count that then stood still for half a
 * second, at most every two seconds; continuity once at each
 * change, and no more often. Time is an argument, in seconds.
 */
export class ReadingVoice {
  private shown = '';
  private shownSinceS = 0;
  private spoken: SpokenReading | null = null;
  private spokenAtS = Number.NEGATIVE_INFINITY;
  /** As it was last told. */
  private tone = false;
  private toneToldAtS = Number.NEGATIVE_INFINITY;
  private functionNow = '';

  /** The reading to speak now, or null. */
  hear(meter: MeterObservation, nowS: number, mode: AnnounceMode): SpokenReading | null {
    const { digits, unit } = meter.display;
    if (meter.function !== this.functionNow) {
      this.functionNow = meter.function;
      this.spoken = null;
    }
    if (meter.function !== 'continuity') this.tone = meter.tone;
    if (mode === 'off' || digits === '') {
      this.tone = meter.tone;
      return null;
    }
    // The first touch is told at once. A contact that chatters is told again when it has come to the other side for good.
    if (meter.tone !== this.tone && nowS - this.toneToldAtS >= SHORTEST_GAP_S) {
      this.tone = meter.tone;
      this.toneToldAtS = nowS;
      return this.speak({ kind: meter.tone ? 'tone-on' : 'tone-off', digits, unit }, nowS);
    }
    const near = this.shown !== '' && withinOneCount(this.shown, digits);
    if (!near) {
      this.shown = digits;
      this.shownSinceS = nowS;
    }
    if (nowS - this.spokenAtS < SHORTEST_GAP_S) return null;
    if (mode === 'settled' && nowS - this.shownSinceS < STABLE_S) return null;
    if (this.spoken !== null && this.spoken.unit === unit && withinOneCount(this.spoken.digits, digits))
      return null;
    return this.speak({ kind: digits.includes('OL') ? 'over-range' : 'number', digits, unit }, nowS);
  }

  private speak(reading: SpokenReading, nowS: number): SpokenReading {
    this.spoken = reading;
    this.spokenAtS = nowS;
    return reading;
  }
}

/** True when two displays of the same range differ by one count of their last digit at most. */
export function withinOneCount(a: string, b: string): boolean {
  if (a === b) return true;
  const decimals = decimalsOf(a);
  if (a.includes('OL') || b.includes('OL') || decimals !== decimalsOf(b)) return false;
  const counts = Math.abs(Number(a) - Number(b)) * 10 ** decimals;
  return counts < 1.5;
}

function decimalsOf(digits: string): number {
  const point = digits.indexOf('.');
  return point < 0 ? 0 : digits.length - point - 1;
}
