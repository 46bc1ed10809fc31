import { TICKS_PER_SECOND, type Tick } from '../../base/ticks.ts';
import type { Happening, Observation } from '../../sim/world/Observation.ts';
import { headlineOf } from './headline.ts';
import type { ClickSource, EntrySubject, LogEntry } from './LogEntry.ts';
import type { StripSample } from './SittingView.ts';

/** The instruments are sampled ten times a second, on a grid that counts from the first tick. */
export const GRID_TICKS = TICKS_PER_SECOND / 10;
const WINDOW_TICKS = 10 * TICKS_PER_SECOND;
export const MAX_STRIP_SAMPLES = 3000;

/**
 * What was heard and what the gauge did lately, and the strip. Fed only at grid ticks and at actions, so that it
 * does not depend on how time was cut.
 */
export class Recorder {
  private lastHappening = 0;
  private clicks: { readonly tick: Tick; readonly kind: 'click-on' | 'click-off' }[] = [];
  private fedBy: { readonly tick: Tick; readonly by: ClickSource } | null = null;
  private lastReading: LogEntry | null = null;
  /** Every sample of the window. */
  private lately: StripSample[] = [];
  private samples: StripSample[] = [];
  private stride = 1;
  private taken = 0;

  /** Takes in the happenings not yet known; returns how many of them were clicks of pulling in. */
  hear(happenings: readonly Happening[], seen: Observation): number {
    const by = sourceOf(seen);
    if (by !== null) this.fedBy = { tick: seen.tick, by };
    const newest = happenings[happenings.length - 1];
    if (newest === undefined || newest.id <= this.lastHappening) return 0;
    let clicksOn = 0;
    for (const { id, tick, kind } of happenings) {
      if (id <= this.lastHappening) continue;
      this.lastHappening = id;
      if (kind !== 'click-on' && kind !== 'click-off') continue;
      this.clicks.push({ tick, kind });
      if (kind === 'click-on') clicksOn++;
    }
    return clicksOn;
  }

  /** One sample at a grid tick. */
  sample(seen: Observation): void {
    const oldest = seen.tick - WINDOW_TICKS;
    const meterVolts = seen.meter.function === 'volts-dc' ? seen.meter.display.value : null;
    const sample = { tick: seen.tick, meterVolts, gaugeKPa: seen.gauge.needleKPa };
    this.lately.push(sample);
    while ((this.lately[0]?.tick ?? oldest) < oldest) this.lately.shift();
    while ((this.clicks[0]?.tick ?? oldest) < oldest) this.clicks.shift();
    if ((seen.tick / GRID_TICKS) % this.stride !== 0) return;
    this.taken++;
    this.samples.push(sample);
    if (this.samples.length > MAX_STRIP_SAMPLES) {
      this.stride *= 2;
      this.samples = this.samples.filter(({ tick }) => (tick / GRID_TICKS) % this.stride === 0);
    }
  }

  /** The evidence of this moment. `hear` has had its happenings. */
  entry(id: number, about: EntrySubject, seen: Observation): LogEntry {
    const since = seen.tick - WINDOW_TICKS;
    let lowKPa = seen.gauge.needleKPa;
    let highKPa = seen.gauge.needleKPa;
    for (const { tick, gaugeKPa } of this.lately) {
      if (tick < since) continue;
      lowKPa = Math.min(lowKPa, gaugeKPa);
      highKPa = Math.max(highKPa, gaugeKPa);
    }
    const unheard = Math.max(since, this.lastReading === null ? 0 : this.lastReading.tick + 1);
    const clicks = this.clicks.filter(({ tick }) => tick >= unheard);
    const heard = {
      clicksOn: clicks.filter(({ kind }) => kind === 'click-on').length,
      clicksOff: clicks.filter(({ kind }) => kind === 'click-off').length,
      by: clicks.length > 0 && this.fedBy !== null && this.fedBy.tick >= since ? this.fedBy.by : null,
    };
    const entry: LogEntry = {
      id,
      tick: seen.tick,
      about,
      seen,
      heard,
      headline: headlineOf(this.lastReading, seen, heard),
      gaugeSwing: { lowKPa, highKPa },
      note: '',
    };
    if (about === 'reading') this.lastReading = entry;
    return entry;
  }

  /** Counts up with every strip sample taken. */
  get samplesTaken(): number {
    return this.taken;
  }

  /** A copy that later samples do not change. */
  strip(): readonly StripSample[] {
    return this.samples.slice();
  }
}

/** What feeds the solenoid as things stand; a jumper on the unit's terminals is taken to. */
function sourceOf({ leads, jumper, plug, reader }: Observation): ClickSource | null {
  if (plug.mated && reader.command !== 'off') return 'command';
  const far = leads['jumper-far'];
  const onUnit = far === 'unit-1' || far === 'unit-2';
  return jumper.switchedOn && onUnit && leads['jumper-supply'] !== null ? 'jumper' : null;
}
