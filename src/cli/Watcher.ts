import { ticksToSeconds } from '../base/ticks.ts';
import type { Observation } from '../sim/world/Observation.ts';
import { displayWords } from '../text/displayWords.ts';
import { writtenByItself } from '../text/entryOfItself.ts';
import { fixed, inH2O, inHg } from '../text/format.ts';
import { glowWords, ledWords, smokeWords } from '../text/instrumentWords.ts';
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
  /** What the other instruments show that are connected, and what wrote itself down in the log. */
  readonly also: readonly string[];
  readonly words: string;
}

/** Tells after each line what the instruments show and what was heard since the line before. */
export class Watcher {
  readonly sights: Sight[] = [];
  private lastHeard = 0;
  private lastEntry = 0;

  look(sitting: Sitting, { line, text }: ScriptLine): Sight {
    const seen = sitting.observe();
    const { tick, meter, gauge, happenings } = seen;
    const fresh = happenings.filter(({ id }) => id > this.lastHeard);
    this.lastHeard = happenings.at(-1)?.id ?? this.lastHeard;
    const heard = fresh.map(({ kind }) => say(`happenings.${kind}`));
    const also = [...connected(seen), ...this.written(sitting)];
    const shown = displayWords(meter.display);
    const seconds = ticksToSeconds(tick);
    const words = [
      `${fixed(seconds, 1).padStart(7)} s`,
      text.padEnd(44),
      `${shown}${meter.display.settled ? '' : ' …'}`.padEnd(12),
      inHg(gauge.needleKPa).padStart(9),
      [...heard, ...also].join(', '),
    ];
    const sight: Sight = {
      line,
      seconds,
      did: text,
      meter: shown,
      gaugeKPa: gauge.needleKPa,
      heard,
      also,
      words: words.join('  ').trimEnd(),
    };
    this.sights.push(sight);
    return sight;
  }

  /** Codes, findings and drives that wrote themselves down since the line before. */
  private written(sitting: Sitting): readonly string[] {
    const fresh = sitting.view().log.filter(({ id }) => id > this.lastEntry);
    this.lastEntry = fresh.at(-1)?.id ?? this.lastEntry;
    return fresh.flatMap((entry) => {
      const words = writtenByItself(entry);
      return words === null ? [] : [`[${entry.id}] ${words.what}: ${words.value}`];
    });
  }
}

/** Manometer, lamp, LED tester, smoke and the dash lamp, as far as they are at work. */
function connected(seen: Observation): readonly string[] {
  const { leads, manometer } = seen;
  const words: string[] = [];
  if (Object.values(seen.sites).includes('manometer-hose'))
    words.push(
      manometer.kPa === null ? say('log.noWater') : say('log.manometer', { reading: inH2O(manometer.kPa) }),
    );
  if (leads['lamp-clip'] !== null && leads['lamp-tip'] !== null)
    words.push(say('log.lampIs', { state: glowWords(seen.testLamp.glow) }));
  if (leads['led-clip'] !== null && leads['led-tip'] !== null)
    words.push(say('log.ledIs', { state: ledWords(seen) }));
  if (seen.smoke.gas !== 'off') words.push(smokeWords(seen));
  if (seen.dashLamp) words.push(say('log.dashLamp'));
  return words;
}
