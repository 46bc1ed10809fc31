import {
  CAVITIES,
  EXAMINED_PLACES,
  EXTREMES,
  METER_FUNCTIONS,
  METER_JACKS,
  SMOKE_GASES,
  UNITS,
  WIGGLE_PLACES,
} from '../sim/devices/places.ts';
import { MAX_DRIVE_CYCLES } from '../training/sitting/actionSchema.ts';
import {
  act,
  choice,
  fixed,
  numberIn,
  ON_OFF,
  oneOf,
  type Parsed,
  shape,
  type Verb,
  wholeIn,
} from './verbParts.ts';

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

/** Verbs of the instruments, of eyes, ears and hands, of the reader and the road. */
export const TOOL_VERBS: Readonly<Record<string, Verb>> = {
  meter: choice('meter volts-dc', METER_FUNCTIONS, (name) => ({ kind: 'set-meter', function: name })),
  jack: choice('jack milliamps', METER_JACKS, (jack) => ({ kind: 'meter-jack', jack })),
  range,
  hold: choice('hold on', ON_OFF, (state) => ({ kind: 'meter-hold', on: state === 'on' })),
  extremes: choice('extremes low', EXTREMES, (show) => ({ kind: 'meter-extremes', show })),
  relative: choice('relative on', ON_OFF, (state) => ({ kind: 'meter-relative', on: state === 'on' })),
  supply: choice('supply on', ON_OFF, (state) => ({ kind: 'switch-supply', on: state === 'on' })),
  bleed: fixed('bleed', 'bleed 0.2', 1, ([word = '']) =>
    numberIn(0, 1, word, (openness) => act({ kind: 'set-bleed', openness })),
  ),
  refill: choice('refill manometer', ['manometer'], () => ({ kind: 'refill-manometer' })),
  smoke,
  swap: choice('swap known-good', UNITS, (to) => ({ kind: 'swap-unit', to })),
  drag: fixed('drag', 'drag 3', 1, ([word = '']) =>
    wholeIn(1, 3, word, (value) => act({ kind: 'drag-test', cavity: CAVITIES[value - 1] ?? 1 })),
  ),
  look: choice('look plug', EXAMINED_PLACES, (at) => ({ kind: 'look', at })),
  listen: choice('listen canister', EXAMINED_PLACES, (at) => ({ kind: 'listen', at })),
  wiggle: choice('wiggle sense', WIGGLE_PLACES, (at) => ({ kind: 'wiggle', at })),
  read: choice('read codes', ['codes'], () => ({ kind: 'read-codes' })),
  clear: choice('clear codes', ['codes'], () => ({ kind: 'clear-codes' })),
  drive: fixed('drive', 'drive 2', 1, ([word = '']) =>
    wholeIn(1, MAX_DRIVE_CYCLES, word, (cycles) => act({ kind: 'road-test', cycles })),
  ),
};
