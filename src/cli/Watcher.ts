import { ticksToSeconds } from '../base/ticks.ts';
import { displayWords } from '../text/describeEntry.ts';
import { fixed, inHg } from '../text/format.ts';
import { say } from '../text/translate.ts';
import type { Sitting } from '../training/sitting/Sitting.ts';
import type { ScriptLine } from './ScriptStep.ts';

/** What was to be seen after one line. */
export interface Sight {
  readonly line: number;
  readonly seconds: number;
  readonly did: string;
  readonly meter: string;
  readonly gaugeKPa: number;
  readonly heard: readonly string[];
  readonly words: string;
}

/** Tells after each line what the instruments show and what was heard since the line before. */
export class Watcher {
  readonly sights: Sight[] = [];
  private lastHeard = 0;

  look(sitting: Sitting, { line, text }: ScriptLine): Sight {
    const { tick, meter, gauge, happenings } = sitting.observe();
    const fresh = happenings.filter(({ id }) => id > this.lastHeard);
    this.lastHeard = happenings.at(-1)?.id ?? this.lastHeard;
    const heard = fresh.map(({ kind }) => say(`happenings.${kind}`));
    const shown = displayWords(meter.display);
    const seconds = ticksToSeconds(tick);
    const words = [
      `${fixed(seconds, 1).padStart(7)} s`,
      text.padEnd(44),
      `${shown}${meter.display.settled ? '' : ' …'}`.padEnd(12),
      inHg(gauge.needleKPa).padStart(9),
      heard.join(', '),
    ];
    const sight: Sight = {
      line,
      seconds,
      did: text,
      meter: shown,
      gaugeKPa: gauge.needleKPa,
      heard,
      words: words.join('  ').trimEnd(),
    };
    this.sights.push(sight);
    return sight;
  }
}
