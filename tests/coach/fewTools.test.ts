import { describe, expect, it } from 'vitest';
import { BENCH_TOOLS, type BenchTool } from '../../src/sim/devices/items.ts';
import { adviceOf } from '../../src/training/coach/adviceOf.ts';
import { Hands, made, madeTables, viewOf } from './support.ts';

const FOUR = [
  made('capsule', 'unit/capsule'),
  made('winding', 'unit/winding'),
  made('hose', 'canister-hose/split'),
  made('cap', 'filler-cap/leaking'),
];
const EVEN = [0.25, 0.25, 0.25, 0.25];
const TABLES = madeTables(FOUR, {
  'codes-and-freeze-data': 'nnnn',
  'meter-on-battery': 'nnnn',
  'meter-leads-together': 'nnnn',
  'hand-pump-dead-end': 'nnnn',
  'hold-capped': 'ynnn',
  'coil-ohms': 'nynn',
  'smoke-vessel-alone': 'nnyy',
});
const without = (...away: BenchTool[]): readonly BenchTool[] =>
  BENCH_TOOLS.filter((tool) => !away.includes(tool));
/** What the coach says to hands that do as he says, until he has nothing more. */
function saidTo(hands: Hands, tools: readonly BenchTool[], chances = EVEN): readonly string[] {
  const said: string[] = [];
  for (let turn = 0; turn < 12; turn++) {
    const now = adviceOf({ ...viewOf(hands, TABLES, chances), tools });
    if (!('test' in now)) return [...said, now.kind];
    said.push(now.test);
    hands.test(now.test);
  }
  return said;
}

describe('the coach of a job with few tools', () => {
  it('advises with everything what he always did', () => {
    const view = viewOf(new Hands(), TABLES, EVEN);
    expect(adviceOf({ ...view, tools: BENCH_TOOLS })).toEqual(adviceOf(view));
  });

  it('reads no codes where there is no reader, and begins with what there is', () => {
    expect(saidTo(new Hands(), without('reader'))).not.toContain('codes-and-freeze-data');
  });

  it('names no test, and no proof of a tool, that cannot be done', () => {
    const said = saidTo(new Hands().test('codes-and-freeze-data'), without('hand-pump', 'smoke-machine'));
    expect(said).toContain('coil-ohms');
    expect(said.filter((test) => /hold|pump|smoke/.test(test))).toEqual([]);
    expect(said.at(-1)).toBe('nothing-left');
  });

  it('trusts a tool that cannot be proven rather than ask for what is not there', () => {
    // The pump is proven on a closed end, which takes a plug.
    const said = saidTo(
      new Hands().test('codes-and-freeze-data'),
      without('caps-and-plugs'),
      [0.5, 0, 0.5, 0],
    );
    expect(said).not.toContain('hand-pump-dead-end');
  });
});
