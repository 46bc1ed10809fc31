import type { Observation } from '../sim/world/Observation.ts';
import { gaugeByEye, waterDigits } from '../text/format.ts';
import { say } from '../text/translate.ts';
import { type AnnounceMode, ReadingVoice } from '../ui/interaction/ReadingVoice.ts';
import { spokenReading } from '../ui/mirror/meterNames.ts';
import { changesTold, placesWords, type Told, toldOf } from './benchChanges.ts';
import { OftenHeard } from './OftenHeard.ts';

/** What a screen reader is told of the bench without asking: settled readings, what is heard, and what lights or smokes. */
export class BenchAnnouncer {
  private readonly voice = new ReadingVoice();
  private readonly often = new OftenHeard();
  private lastHappening: number | null = null;
  private last: Told | null = null;

  /** The sentence to speak now, or null. `seconds` is running time. */
  hear(seen: Observation, seconds: number, mode: AnnounceMode): string | null {
    const sentences = [this.happenings(seen, seconds), this.changes(seen), this.reading(seen, seconds, mode)];
    const spoken = sentences.filter((sentence) => sentence !== null);
    return spoken.length === 0 ? null : spoken.join(' ');
  }

  /** Every instrument in use, on demand. */
  readNow(seen: Observation): string {
    const { display } = seen.meter;
    const used = Object.values(seen.sites).includes('manometer-hose') && seen.manometer.kPa !== null;
    return [
      say('hand.readNow', {
        reading: display.digits === '' ? say('meterFunctions.off') : spokenReading(display),
        vacuum: gaugeByEye(seen.gauge.needleKPa),
      }),
      ...(used ? [say('controls.manometerNow', { digits: waterDigits(seen.manometer.kPa ?? 0) })] : []),
      ...(seen.smoke.seenAt.length > 0
        ? [say('controls.smokeNow', { places: placesWords(seen.smoke.seenAt) })]
        : []),
    ].join(' ');
  }

  private reading(seen: Observation, seconds: number, mode: AnnounceMode): string | null {
    const reading = this.voice.hear(seen.meter, seconds, mode);
    if (reading === null) return null;
    const spoken = spokenReading({ ...seen.meter.display, digits: reading.digits, unit: reading.unit });
    switch (reading.kind) {
      case 'tone-on':
        return say('hand.continuity', { reading: spoken });
      case 'tone-off':
        return say('hand.noContinuity', { reading: spoken });
      case 'number':
      case 'over-range':
        return say('hand.display', { reading: spoken });
    }
  }

  private changes(seen: Observation): string | null {
    const now = toldOf(seen);
    const told = this.last === null ? [] : changesTold(this.last, now);
    this.last = now;
    return told.length === 0 ? null : told.join(' ');
  }

  private happenings({ happenings }: Observation, seconds: number): string | null {
    const newest = happenings.at(-1)?.id ?? 0;
    const last = this.lastHappening ?? newest;
    this.lastHappening = newest;
    // Where smoke is seen is told with its place, so not here as well.
    const kinds = happenings
      .filter(({ id, kind }) => id > last && kind !== 'tone' && kind !== 'smoke-seen')
      .map(({ kind }) => kind);
    const news = [...new Set(kinds)].filter((kind) => this.often.isNews(kind, seconds));
    if (news.length === 0) return null;
    return news.map((kind) => say(`happeningSentences.${kind}`)).join(' ');
  }
}
