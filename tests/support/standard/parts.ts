import { inH2OToPa } from '../../../src/base/units.ts';
import type { LeadEnd, LeadPoint } from '../../../src/sim/devices/places.ts';
import type { Action } from '../../../src/sim/world/Action.ts';
import type { WorldBench } from '../worldBench.ts';

/**
 * One thing a tool, an eye or an ear told. Numbers differ when they are further apart than `apart`, which is wider than
 * the tolerance of a sound truck and the instrument's accuracy together; words differ when they are not the same.
 */
export type Told =
  | { readonly what: string; readonly value: number; readonly apart: number }
  | { readonly what: string; readonly value: string };

export interface StandardTest {
  readonly name: string;
  /** Does the test on a bench fresh in the morning, by actions only. */
  readonly run: (bench: WorldBench) => readonly Told[];
}

/** What one test tells differently on two benches. */
export function differences(good: readonly Told[], bad: readonly Told[]): readonly string[] {
  return bad.flatMap((told, i) => {
    const other = good[i];
    if (other === undefined || other.what !== told.what) return [`${told.what}: not told on the good bench`];
    const differs =
      'apart' in told
        ? !(Math.abs(told.value - Number(other.value)) <= told.apart)
        : told.value !== other.value;
    return differs ? [`${told.what}: ${shown(other.value)} → ${shown(told.value)}`] : [];
  });
}

export const shown = (value: number | string): string =>
  typeof value === 'string' ? value : String(Number(value.toPrecision(3)));

/** Widths of a sound truck and its instruments. */
export const VOLTS = 0.6;
export const DROP_VOLTS = 0.1;
export const OHMS_SHARE = 0.13;
export const INHG = 1;
export const INH2O = 1.7;
/** An over-range display, as a number that is far from any other. */
export const OVER = 1e9;

export const read = (bench: WorldBench): number => bench.reading() ?? OVER;

export function between(bench: WorldBench, red: LeadPoint, black: LeadPoint): WorldBench {
  const put = (end: LeadEnd, point: LeadPoint): void => {
    if (bench.world.observe().leads[end] !== point) bench.lead(end, point);
  };
  put('meter-red', red);
  put('meter-black', black);
  return bench;
}

export const key = (position: 'off' | 'on' | 'running'): Action => ({ kind: 'set-key', position });
export const solenoid = (command: 'off' | 'on' | 'pulse'): Action => ({ kind: 'command-solenoid', command });
export const off = (item: 'canister-hose' | 'air-hose' | 'engine-hose'): Action => ({
  kind: 'take-off',
  item,
});

export function on(
  item: Extract<Action, { kind: 'fit' }>['item'],
  port: 'canister-port' | 'air-port' | 'engine-port',
): readonly Action[] {
  return [
    { kind: 'fit', item, site: port },
    { kind: 'clamp', port, setting: 'hand-tight' },
  ];
}

/** Draws until the needle stands at `inHg` or the strokes are used up. */
export function draw(bench: WorldBench, inHg: number, strokes = 14): WorldBench {
  for (let i = 0; i < strokes && bench.inHg < inHg; i++) bench.stroke();
  return bench.wait(1);
}

/** Vacuum lost over twenty seconds of holding. */
export function lost(bench: WorldBench, what: string, seconds = 20): Told {
  const before = bench.inHg;
  return { what, value: before - bench.wait(seconds).inHg, apart: INHG };
}

export const clicksHeard = (bench: WorldBench, since: number): number =>
  bench.world.observe().happenings.filter(({ kind, id }) => kind === 'click-on' && id > since).length;
export const lastHeard = (bench: WorldBench): number => bench.world.observe().happenings.at(-1)?.id ?? 0;
export const driverOf = (bench: WorldBench): string => bench.world.observe().reader.driver ?? 'asleep';

export function found(bench: WorldBench): readonly Told[] {
  return bench.world.observe().findings.map(({ how, at, cavity, signs }) => ({
    what: `${how} ${at} ${cavity ?? ''}`.trim(),
    value: signs.join(', '),
  }));
}

/** Low-pressure smoke of inert gas at 12 inH2O: pressure reached, flow, and where it comes out. */
export function smoke(bench: WorldBench, into: string, seconds: number): readonly Told[] {
  bench.do({ kind: 'set-smoke', gas: 'inert', pa: inH2OToPa(12) }).wait(seconds);
  const seen = bench.world.observe().smoke;
  return [
    { what: `${into}: smoke at`, value: [...seen.seenAt].sort().join(', ') || 'nowhere' },
    { what: `${into}: pressure, kPa`, value: seen.gaugeKPa, apart: 0.6 },
    { what: `${into}: flow`, value: seen.flow, apart: 0.15 },
  ];
}
