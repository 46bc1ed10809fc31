import type { Observation } from '../sim/world/Observation.ts';
import { needleByEye } from '../text/format.ts';
import { say } from '../text/translate.ts';
import { type AnnounceMode, ReadingVoice } from '../ui/interaction/ReadingVoice.ts';
import { spokenReading } from '../ui/mirror/controlName.ts';

/** What a screen reader is told of the bench without asking: settled readings, and what is heard. */
export class BenchAnnouncer {
  private readonly voice = new ReadingVoice();
  private lastHappening: number | null = null;

  /** The sentence to speak now, or null. `seconds` is running time. */
  hear(seen: Observation, seconds: number, mode: AnnounceMode): string | null {
    const heard = this.happenings(seen);
    const reading = this.voice.hear(seen.meter, seconds, mode);
    if (reading === null) return heard;
    const spoken = spokenReading({ ...seen.meter.display, digits: reading.digits, unit: reading.unit });
    const sentence =
      reading.kind === 'tone-on' || reading.kind === 'tone-off'
        ? say('hand.continuity', { reading: spoken })
        : say('hand.display', { reading: spoken });
    return heard === null ? sentence : `${heard} ${sentence}`;
  }

  /** Meter and gauge, on demand. */
  readNow(seen: Observation): string {
    const { display } = seen.meter;
    return say('hand.readNow', {
      reading: display.digits === '' ? say('meterFunctions.off') : spokenReading(display),
      inHg: needleByEye(seen.gauge.needleKPa),
    });
  }

  private happenings({ happenings }: Observation): string | null {
    const newest = happenings.at(-1)?.id ?? 0;
    const last = this.lastHappening ?? newest;
    this.lastHappening = newest;
    const kinds = happenings.filter(({ id, kind }) => id > last && kind !== 'tone').map(({ kind }) => kind);
    if (kinds.length === 0) return null;
    return [...new Set(kinds)].map((kind) => say(`happeningSentences.${kind}`)).join(' ');
  }
}
