import { unreachable } from '../base/assert.ts';
import type { Outcome } from '../sim/rigs/standardTests/Outcome.ts';
import type { MarkReadings } from '../training/proof/FaultReadings.ts';
import { capital, fixed, smokePressure, vacuum, volts, waterColumn } from './format.ts';
import { has, say } from './translate.ts';

/** What a standard test showed at a read mark, in words: for whoever compares two benches, not one bench with its limits. */

type OfNumber = Extract<Outcome, { kind: 'number' }>;
type OfWord = Extract<Outcome, { kind: 'word' }>;
type OfYesNo = Extract<Outcome, { kind: 'yes-no' }>;

const SMOKE_AT = 'smoke-at-';

/** Instrument and moment: `Meter, under vacuum`. */
export function readingLabel({ setUp, good, faulted }: MarkReadings): string {
  const outcome = good[0] ?? faulted[0];
  const mark = setUp.slice(setUp.indexOf('/') + 1);
  if (outcome === undefined) return mark;
  if (mark.startsWith(SMOKE_AT)) {
    const place = `smokePlaces.${mark.slice(SMOKE_AT.length)}`;
    return say('readings.smokeAt', { place: has(place) ? say(place) : mark });
  }
  if (outcome.channel === 'finding') {
    const place = `examined.${mark === 'seen' ? 'jumper' : mark}`;
    if (has(place)) return capital(say(place));
    return say('readings.terminal', { cavity: mark.replace('terminal-', '') });
  }
  const channel = say(`readings.channels.${instrumentOf(outcome)}`);
  const when = `readings.when.${mark}`;
  return has(when) ? say('readings.labelled', { channel, when: say(when) }) : channel;
}

type Instrument = Outcome['channel'] | 'batterySign' | 'pressure' | 'flow' | 'time' | 'strokes';

function instrumentOf(outcome: Outcome): Instrument {
  if (outcome.kind === 'yes-no' && outcome.channel === 'lamp') return 'batterySign';
  if (outcome.kind !== 'number') return outcome.channel;
  if (outcome.unit === 's') return 'time';
  if (outcome.unit === 'count') return 'strokes';
  if (outcome.unit === 'share') return 'flow';
  return outcome.channel === 'smoke' ? 'pressure' : outcome.channel;
}

/** What was shown at a mark, its repeats together: `8.98 V`, `5 of 9`, `0.2 inHg to 4.1 inHg`. */
export function readingWords(outcomes: readonly Outcome[]): string {
  const [first] = outcomes;
  if (first === undefined) return say('readings.none');
  switch (first.kind) {
    case 'yes-no':
      return yesNoWords(first, outcomes);
    case 'word':
      return eachWords(outcomes.map((one) => (one.kind === 'word' ? wordOf(one) : '')));
    case 'number':
      return numberWords(outcomes.filter((one): one is OfNumber => one.kind === 'number'));
    default:
      return unreachable(first);
  }
}

/** From the lowest to the highest that good benches show; null where it says no more than one reading. */
export function spreadWords(good: readonly Outcome[]): string | null {
  const numbers = good.filter((one): one is OfNumber => one.kind === 'number');
  const [low, high] = limitsOf(numbers);
  if (low === undefined || high === undefined) return null;
  const [one, other] = [amount(low), amount(high)];
  if (one === other) return null;
  return say('readings.others', { range: say('readings.range', { low: one, high: other }) });
}

function yesNoWords({ channel }: OfYesNo, outcomes: readonly Outcome[]): string {
  const yes = outcomes.filter(({ value }) => value === true).length;
  const kind = channel === 'click' || channel === 'tone' || channel === 'smoke' ? channel : 'lamp';
  const all = outcomes.length;
  if (all > 1) return say('readings.times', { yes, all });
  return say(yes === 1 ? `readings.yes.${kind}` : `readings.no.${kind}`);
}

/** Different words once each, with how often where there are several. */
function eachWords(words: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  if (counts.size === 1) return words[0] ?? '';
  return [...counts].map(([what, count]) => say('readings.each', { what, count })).join(', ');
}

function numberWords(outcomes: readonly OfNumber[]): string {
  const [low, high] = limitsOf(outcomes);
  const rest = outcomes.filter(({ value }) => typeof value !== 'number').map(withoutNumber);
  if (low === undefined || high === undefined) return eachWords(rest);
  const wide = (high.value as number) - (low.value as number) > low.half + high.half;
  const numbers = wide ? say('readings.range', { low: amount(low), high: amount(high) }) : amount(low);
  return rest.length === 0 ? numbers : `${numbers}, ${eachWords(rest)}`;
}

function limitsOf(outcomes: readonly OfNumber[]): readonly [OfNumber | undefined, OfNumber | undefined] {
  const sorted = outcomes
    .filter(({ value }) => typeof value === 'number')
    .sort((one, other) => (one.value as number) - (other.value as number));
  return [sorted[0], sorted.at(-1)];
}

/** Marks at which nothing but a goal is waited for, and one that a good bench outlasts. */
const AT_GOAL = ['trip', 'reset'];
const OUTLASTED = 'held-for';

function withoutNumber({ value, channel, unit, setUp }: OfNumber): string {
  const mark = setUp.slice(setUp.indexOf('/') + 1);
  if (value === 'unstable') return say('readings.notSettled');
  if (channel === 'meter') return say('log.ol');
  if (mark === OUTLASTED) return say('readings.toTheEnd');
  const dry = unit === 'kPa' && channel === 'manometer' && !AT_GOAL.includes(mark);
  return say(dry ? 'log.noWater' : 'readings.notReached');
}

/** Marks whose vacuum is told as gone although it has come: the rise of the needle is meant. */
const RISES = ['hand-pump-dead-end/part-stroke', 'hand-pump-dead-end/let-off'];

function amount({ value, unit, channel, setUp }: OfNumber): string {
  const number = typeof value === 'number' ? value : 0;
  switch (unit) {
    case 'V':
      return Math.abs(number) < 0.1 ? `${fixed(number * 1000, 1)} mV` : volts(number);
    case 'Ω':
      if (Math.abs(number) >= 1e6) return `${fixed(number / 1e6, 2)} MΩ`;
      return Math.abs(number) >= 1000 ? `${fixed(number / 1000, 2)} kΩ` : `${fixed(number, 1)} Ω`;
    case 'A':
      return Math.abs(number) < 1 ? `${fixed(number * 1000, 1)} mA` : `${fixed(number, 2)} A`;
    case 'kPa':
      if (channel === 'manometer') return waterColumn(number);
      if (channel === 'smoke') return smokePressure(number);
      return vacuum(RISES.includes(setUp) ? -number : number);
    case 's':
      return say('readings.seconds', { seconds: fixed(number, number % 1 === 0 ? 0 : 1) });
    case 'share':
      return `${fixed(number * 100, 0)} %`;
    case 'count':
      return say('readings.count', { count: number });
    default:
      return unreachable(unit);
  }
}

/** Words of an outcome are ids, some of them several in a row. */
function wordOf({ channel, value }: OfWord): string {
  switch (channel) {
    case 'reader-state':
      return known(`reader.states.${value}`);
    case 'reader-driver':
      return known(`reader.drivers.${value}`);
    case 'lamp':
      return known(`log.${value}`);
    case 'led':
      return known(`log.led.${value}`);
    case 'fuse':
      return known(`readings.fuse.${value}`);
    case 'finding':
      return value
        .split(', ')
        .map((sign) => known(`signs.${sign}`))
        .join(', ');
    case 'codes':
      return value === 'none' ? say('log.noCodes') : value.split(', ').map(codeWords).join(', ');
    case 'drive': {
      const [outcome = '', ...codes] = value.split(' ');
      return [known(`driveOutcomes.${outcome}`), ...codes].join(', ');
    }
    default:
      return value;
  }
}

/** `P0456 stored`; of freeze data `P0456`, or `P0456 held` where it was taken in the hold. */
function codeWords(written: string): string {
  const [code = '', status] = written.split(' ');
  if (status === undefined) return code;
  return `${code} ${status === 'held' ? say('readings.when.held-for') : known(`codeStatus.${status}`)}`;
}

function known(key: string): string {
  const word = key.slice(key.lastIndexOf('.') + 1);
  if (word === 'asleep') return say('readings.asleep');
  return has(key) ? say(key) : word;
}
