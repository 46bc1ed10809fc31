import { err, ok, type Result } from '../base/Result.ts';
import { ITEMS } from '../sim/devices/items.ts';
import {
  AIR_SITES,
  CAVITIES,
  CLAMP_SETTINGS,
  EXAMINED_PLACES,
  EXTREMES,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  SMOKE_GASES,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
  UNITS,
  WIGGLE_PLACES,
} from '../sim/devices/places.ts';
import { LEAST_WAIT_SECONDS, MAX_DRIVE_CYCLES, MAX_WAIT_SECONDS } from '../training/sitting/actionSchema.ts';
import type { SittingAction } from '../training/sitting/SittingAction.ts';
import type { ScriptProblem, ScriptStep } from './ScriptStep.ts';

export type LineFault = Omit<ScriptProblem, 'line'>;
type Parsed = Result<ScriptStep, LineFault>;
type Verb = (words: readonly string[]) => Parsed;

/** A hand needs about a second for one thing on the bench. Common practice, no source. */
const HAND_SECONDS = 1;

const act = (action: SittingAction, handSeconds = HAND_SECONDS): Parsed =>
  ok({ kind: 'act', action, handSeconds });
const shape = (verb: string, allowed: string): { ok: false; error: LineFault } =>
  err({ code: 'wrong-shape', found: verb, allowed });

const ON_OFF = ['on', 'off'] as const;

/** One of a closed list of words. */
function oneOf<T extends string>(allowed: readonly T[], found: string, then: (word: T) => Parsed): Parsed {
  const word = allowed.find((candidate) => candidate === found);
  return word === undefined ? err({ code: 'unknown-word', found, allowed: allowed.join(', ') }) : then(word);
}

function numberIn(low: number, high: number, found: string, then: (value: number) => Parsed): Parsed {
  const value = /^\d+(\.\d+)?$/.test(found) ? Number(found) : Number.NaN;
  if (value >= low && value <= high) return then(value);
  return err({ code: 'bad-number', found, allowed: `${low} to ${high}` });
}

function wholeIn(low: number, high: number, found: string, then: (value: number) => Parsed): Parsed {
  return numberIn(low, high, found, (value) =>
    Number.isInteger(value) ? then(value) : err({ code: 'bad-number', found, allowed: `${low} to ${high}` }),
  );
}

/** A verb with a fixed number of words, some of which are only there to be read. */
function fixed(
  verb: string,
  usage: string,
  count: number,
  parse: (words: readonly string[]) => Parsed,
): Verb {
  return (words) => (words.length === count ? parse(words) : shape(verb, usage));
}

const bare = (verb: string, action: SittingAction, handSeconds = HAND_SECONDS): Verb =>
  fixed(verb, verb, 0, () => act(action, handSeconds));

function strokes(words: readonly string[]): Parsed {
  const usage = 'stroke full x3';
  const [depthWord, timesWord = 'x1', ...more] = words;
  if (depthWord === undefined || more.length > 0 || !timesWord.startsWith('x')) return shape('stroke', usage);
  return numberIn(0, 1, depthWord === 'full' ? '1' : depthWord, (depth) =>
    wholeIn(1, 50, timesWord.slice(1), (times) => ok({ kind: 'strokes', depth, times })),
  );
}

function wait(words: readonly string[]): Parsed {
  const [amount, unit = 's', ...more] = words;
  if (amount === 'steady' && words.length === 1) return act({ kind: 'wait-steady' }, 0);
  if (amount === undefined || more.length > 0) return shape('wait', 'wait 10 s');
  return oneOf(['s', 'min'], unit, (name) =>
    numberIn(LEAST_WAIT_SECONDS, MAX_WAIT_SECONDS / (name === 'min' ? 60 : 1), amount, (value) =>
      act({ kind: 'wait', seconds: name === 'min' ? value * 60 : value }, 0),
    ),
  );
}

function verdict(words: readonly string[]): Parsed {
  const [item, cites, ...entries] = words;
  if (item === undefined || (cites !== undefined && cites !== 'cites'))
    return shape('verdict', 'verdict unit cites 3 4 5');
  const ids = entries.map((word) => (/^\d{1,6}$/.test(word) ? Number(word) : Number.NaN));
  const bad = ids.findIndex((id) => !(id >= 1));
  if (bad >= 0) return err({ code: 'bad-number', found: entries[bad] ?? '', allowed: '1, 2, 3 …' });
  return oneOf([...ITEMS, 'nothing-wrong'] as const, item, (named) =>
    act({ kind: 'give-verdict', item: named, cites: ids }, 0),
  );
}

function renew(words: readonly string[]): Parsed {
  const [item, ...more] = words;
  if (item === undefined || more.length > 0) return shape('renew', 'renew unit');
  if (item === 'jumper-fuse') return act({ kind: 'renew-jumper-fuse' });
  return oneOf(ITEMS, item, (named) => act({ kind: 'renew', item: named }));
}

function fit(words: readonly string[]): Parsed {
  const [item, on, site, ...more] = words;
  if (item === 'fuse' && on === undefined) return act({ kind: 'fit-fuse' });
  if (item === undefined || on !== 'on' || site === undefined || more.length > 0)
    return shape('fit', 'fit cap-a on air-port');
  return oneOf(FITTINGS, item, (fitting) =>
    oneOf(AIR_SITES, site, (place) => act({ kind: 'fit', item: fitting, site: place })),
  );
}

function pin(words: readonly string[]): Parsed {
  const [way, number, ...more] = words;
  if (way === undefined || number === undefined || more.length > 0) return shape('pin', 'pin in 3');
  return oneOf(['in', 'out'], way, (direction) =>
    wholeIn(1, 3, number, (value) => {
      const cavity = CAVITIES[value - 1] ?? 1;
      return act(direction === 'in' ? { kind: 'insert-pin', cavity } : { kind: 'remove-pin', cavity });
    }),
  );
}

function smoke(words: readonly string[]): Parsed {
  const [gas, amount, unit = 'kPa', ...more] = words;
  if (gas === 'off' && amount === undefined) return act({ kind: 'set-smoke', gas: 'off', pa: 0 });
  if (gas === undefined || amount === undefined || more.length > 0)
    return shape('smoke', 'smoke inert 3 kPa');
  return oneOf(SMOKE_GASES, gas, (name) =>
    oneOf(['kPa'], unit, () =>
      numberIn(0, 14, amount, (value) => act({ kind: 'set-smoke', gas: name, pa: value * 1000 })),
    ),
  );
}

function range(words: readonly string[]): Parsed {
  const [number, ...more] = words;
  if (number === undefined || more.length > 0) return shape('range', 'range 2');
  if (number === 'auto') return act({ kind: 'meter-range', range: null });
  return wholeIn(0, 9, number, (value) => act({ kind: 'meter-range', range: value }));
}

function hold(words: readonly string[]): Parsed {
  const [state, ...more] = words;
  if (state === undefined || more.length > 0) return shape('hold', 'hold on');
  return oneOf(ON_OFF, state, (word) => act({ kind: 'meter-hold', on: word === 'on' }));
}

/** The words of an action file, by the first word of the line. */
export const VERBS: Readonly<Record<string, Verb>> = {
  accept: bare('accept', { kind: 'accept-job' }, 0),
  wait,
  key: fixed('key', 'key on', 1, ([word = '']) =>
    oneOf(KEY_POSITIONS, word, (position) => act({ kind: 'set-key', position })),
  ),
  meter: fixed('meter', 'meter volts-dc', 1, ([word = '']) =>
    oneOf(METER_FUNCTIONS, word, (name) => act({ kind: 'set-meter', function: name })),
  ),
  jack: fixed('jack', 'jack milliamps', 1, ([word = '']) =>
    oneOf(METER_JACKS, word, (jack) => act({ kind: 'meter-jack', jack })),
  ),
  range,
  hold,
  extremes: fixed('extremes', 'extremes low', 1, ([word = '']) =>
    oneOf(EXTREMES, word, (show) => act({ kind: 'meter-extremes', show })),
  ),
  relative: fixed('relative', 'relative on', 1, ([word = '']) =>
    oneOf(ON_OFF, word, (state) => act({ kind: 'meter-relative', on: state === 'on' })),
  ),
  lead: fixed('lead', 'lead meter-red to cavity-3-back', 3, ([end = '', to, point = '']) =>
    to !== 'to'
      ? shape('lead', 'lead meter-red to cavity-3-back')
      : oneOf(LEAD_ENDS, end, (tip) =>
          oneOf(LEAD_POINTS, point, (place) => act({ kind: 'place-lead', end: tip, point: place })),
        ),
  ),
  lift: fixed('lift', 'lift meter-red', 1, ([end = '']) =>
    oneOf(LEAD_ENDS, end, (tip) => act({ kind: 'lift-lead', end: tip })),
  ),
  pin,
  part: fixed('part', 'part plug', 1, ([word = '']) =>
    oneOf(['plug'], word, () => act({ kind: 'part-plug' })),
  ),
  mate: fixed('mate', 'mate plug', 1, ([word = '']) =>
    oneOf(['plug'], word, () => act({ kind: 'mate-plug' })),
  ),
  swap: fixed('swap', 'swap known-good', 1, ([word = '']) =>
    oneOf(UNITS, word, (to) => act({ kind: 'swap-unit', to })),
  ),
  drag: fixed('drag', 'drag 3', 1, ([word = '']) =>
    wholeIn(1, 3, word, (value) => act({ kind: 'drag-test', cavity: CAVITIES[value - 1] ?? 1 })),
  ),
  look: fixed('look', 'look plug', 1, ([word = '']) =>
    oneOf(EXAMINED_PLACES, word, (at) => act({ kind: 'look', at })),
  ),
  listen: fixed('listen', 'listen canister', 1, ([word = '']) =>
    oneOf(EXAMINED_PLACES, word, (at) => act({ kind: 'listen', at })),
  ),
  wiggle: fixed('wiggle', 'wiggle sense', 1, ([word = '']) =>
    oneOf(WIGGLE_PLACES, word, (at) => act({ kind: 'wiggle', at })),
  ),
  supply: fixed('supply', 'supply on', 1, ([word = '']) =>
    oneOf(ON_OFF, word, (state) => act({ kind: 'switch-supply', on: state === 'on' })),
  ),
  bleed: fixed('bleed', 'bleed 0.2', 1, ([word = '']) =>
    numberIn(0, 1, word, (openness) => act({ kind: 'set-bleed', openness })),
  ),
  refill: fixed('refill', 'refill manometer', 1, ([word = '']) =>
    oneOf(['manometer'], word, () => act({ kind: 'refill-manometer' })),
  ),
  smoke,
  read: fixed('read', 'read codes', 1, ([word = '']) =>
    oneOf(['codes'], word, () => act({ kind: 'read-codes' })),
  ),
  clear: fixed('clear', 'clear codes', 1, ([word = '']) =>
    oneOf(['codes'], word, () => act({ kind: 'clear-codes' })),
  ),
  drive: fixed('drive', 'drive 2', 1, ([word = '']) =>
    wholeIn(1, MAX_DRIVE_CYCLES, word, (cycles) => act({ kind: 'road-test', cycles })),
  ),
  pull: fixed('pull', 'pull fuse', 1, ([word = '']) =>
    oneOf(['fuse'], word, () => act({ kind: 'pull-fuse' })),
  ),
  jumper: fixed('jumper', 'jumper on', 1, ([word = '']) =>
    oneOf(['on', 'off'], word, (state) => act({ kind: 'switch-jumper', on: state === 'on' })),
  ),
  fit,
  take: fixed('take', 'take canister-hose off', 2, ([item = '', off]) =>
    off !== 'off'
      ? shape('take', 'take canister-hose off')
      : oneOf(FITTINGS, item, (fitting) => act({ kind: 'take-off', item: fitting })),
  ),
  clamp: fixed('clamp', 'clamp canister-port hand-tight', 2, ([port = '', setting = '']) =>
    oneOf(UNIT_PORTS, port, (place) =>
      oneOf(CLAMP_SETTINGS, setting, (name) => act({ kind: 'clamp', port: place, setting: name })),
    ),
  ),
  handle: fixed('handle', 'handle 0.5', 1, ([word = '']) =>
    numberIn(0, 1, word, (position) => act({ kind: 'pump-handle', position })),
  ),
  stroke: strokes,
  release: fixed('release', 'release open', 1, ([word = '']) =>
    oneOf(['open', 'shut'], word, (state) => act({ kind: 'release', open: state === 'open' })),
  ),
  solenoid: fixed('solenoid', 'solenoid on', 1, ([word = '']) =>
    oneOf(SOLENOID_COMMANDS, word, (command) => act({ kind: 'command-solenoid', command })),
  ),
  log: (words) =>
    words.length > 1 ? shape('log', 'log "Sense at rest"') : ok({ kind: 'log', note: words[0] ?? '' }),
  note: fixed('note', 'note 3 "Lead was loose"', 2, ([number = '', text = '']) =>
    wholeIn(1, 999_999, number, (entry) => act({ kind: 'annotate', entry, text }, 0)),
  ),
  verdict,
  renew,
  close: bare('close', { kind: 'close-job' }, 0),
};
