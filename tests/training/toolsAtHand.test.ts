import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BENCH_TOOLS, type BenchTool } from '../../src/sim/devices/items.ts';
import { eachStep } from '../../src/sim/rigs/standardTests/eachStep.ts';
import { SET_UPS } from '../../src/sim/rigs/standardTests/setUps.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import type { Observation } from '../../src/sim/world/Observation.ts';
import { toolsOfAction } from '../../src/training/scenario/benchTools.ts';
import { DUTY_RULES } from '../../src/training/scenario/ruleNeeds.ts';
import { CALLED_FOR } from '../../src/training/score/calledFor.ts';
import { placeHotspots } from '../../src/ui/interaction/layout/hotspots.ts';
import { SHELF_TABS } from '../../src/ui/interaction/layout/shelfPlan.ts';
import { offersFor } from '../../src/ui/interaction/targets.ts';
import { toolOfSpot } from '../../src/ui/interaction/toolOfSpot.ts';
import { mirrorSections } from '../../src/ui/mirror/mirrorGroups.ts';
import { bench } from '../support/bench.ts';

const all = (...without: BenchTool[]): readonly BenchTool[] =>
  BENCH_TOOLS.filter((tool) => !without.includes(tool));
const refusalOf = (tools: readonly BenchTool[], ...actions: readonly Action[]) => {
  const { sitting } = bench().job({ tools }).does('accept');
  return actions.map((action) => {
    const done = sitting.apply(action);
    return done.ok ? null : done.error;
  });
};

describe('a tool that is not at hand', () => {
  it('cannot be taken: every action of it is refused and leaves nothing in the record', () => {
    const refused = (tool: BenchTool, ...actions: Action[]) =>
      expect(refusalOf(all(tool), ...actions), tool).toEqual(actions.map(() => 'tool-not-at-hand'));
    refused(
      'meter',
      { kind: 'set-meter', function: 'ohms' },
      { kind: 'place-lead', end: 'meter-red', point: 'fuse-in' },
    );
    refused('back-probe-pins', { kind: 'insert-pin', cavity: 3 });
    refused('drag-gauge', { kind: 'drag-test', cavity: 1 });
    refused(
      'jumper',
      { kind: 'switch-jumper', on: true },
      { kind: 'look', at: 'jumper' },
      { kind: 'renew', item: 'jumper' },
    );
    refused('plain-lead', { kind: 'place-lead', end: 'plain-a', point: 'chassis-stud' });
    refused('test-lamp', { kind: 'place-lead', end: 'lamp-tip', point: 'fuse-in' });
    refused('led-tester', { kind: 'place-lead', end: 'led-tip', point: 'fuse-in' });
    refused(
      'bench-supply',
      { kind: 'switch-supply', on: true },
      { kind: 'place-lead', end: 'meter-red', point: 'supply-positive' },
    );
    refused(
      'hand-pump',
      { kind: 'stroke', depth: 1 },
      { kind: 'release', open: true },
      { kind: 'fit', item: 'plug-a', site: 'pump-hose-end' },
    );
    refused('caps-and-plugs', { kind: 'fit', item: 'cap-a', site: 'jar-tee-a' });
    refused('jar', { kind: 'set-bleed', openness: 0.5 }, { kind: 'fit', item: 'cap-a', site: 'jar-tee-a' });
    refused('manometer', { kind: 'refill-manometer' });
    refused('smoke-machine', { kind: 'set-smoke', gas: 'inert', pa: 2000 });
    refused('reader', { kind: 'clear-codes' }, { kind: 'command-solenoid', command: 'on' });
    refused('known-good-unit', { kind: 'swap-unit', to: 'known-good' });
  });

  it('takes nothing from the others', () => {
    expect(
      refusalOf(all('reader'), { kind: 'set-meter', function: 'ohms' }, { kind: 'set-key', position: 'on' }),
    ).toEqual([null, null]);
  });

  it('reads no codes where it is the reader', () => {
    const { sitting } = bench()
      .job({ tools: all('reader') })
      .does('accept\nkey on');
    expect(sitting.apply({ kind: 'read-codes' })).toEqual({ ok: false, error: 'tool-not-at-hand' });
    expect(sitting.record().actions).toHaveLength(2);
  });
});

describe('what an action takes into the hand', () => {
  it('is what the standard tests say that they need, action by action', () => {
    for (const { id, prepares, steps, needs } of STANDARD_TESTS) {
      const taken = eachStep([...SET_UPS[prepares], ...steps]).flatMap((step) =>
        toolsOfAction(step as Action),
      );
      // What is only read, as the codes, is no action.
      for (const tool of taken) expect(needs as readonly BenchTool[], id).toContain(tool);
    }
  });
});

describe('the guide', () => {
  it('names every tool once in its table', () => {
    const guide = readFileSync(new URL('../../scenarios/README.md', import.meta.url), 'utf8');
    const section = guide.slice(guide.indexOf('## Tools at hand'), guide.indexOf('## How a job is scored'));
    const rows = [...section.matchAll(/^\| `([a-z-]+)` \|/gm)].map(([, tool]) => tool);
    expect(rows).toEqual([...BENCH_TOOLS]);
  });
});

describe('rules', () => {
  const pump = 'take canister-hose off\nfit pump-hose on canister-port\nkey on\nstroke full\nrelease open\n';

  it('are not held against anybody who has no tools for them', () => {
    const drawn = (tools?: readonly BenchTool[]) =>
      bench()
        .job(tools === undefined ? {} : { tools })
        .does(`accept\n${pump}key off\nverdict unit\nclose`);
    expect(drawn().rule('air-port-capped')).toBe('missed');
    expect(drawn().rule('canister-hose-plugged')).toBe('missed');
    expect(drawn(all('caps-and-plugs')).rule('air-port-capped')).toBe('no-occasion');
    expect(drawn(all('caps-and-plugs')).rule('canister-hose-plugged')).toBe('no-occasion');
  });

  it('that are turned on are missed by whoever leaves them out, and kept as ever', () => {
    const idle = bench()
      .job({ rulesOn: ['meter-proven'] })
      .does('accept\nverdict unit\nclose');
    expect(bench().does('accept\nverdict unit\nclose').rule('meter-proven')).toBe('no-occasion');
    expect(idle.ruleOutcome('meter-proven')).toMatchObject({ outcome: 'missed', asked: true });
    const proven =
      'accept\nmeter volts-dc\nlead meter-red to battery-positive\nlead meter-black to battery-negative\nwait steady\nlog\nverdict unit\nclose';
    expect(
      bench()
        .job({ rulesOn: ['meter-proven'] })
        .does(proven)
        .rule('meter-proven'),
    ).toBe('kept');
  });

  it('that can be turned on are the duties', () => {
    expect([...DUTY_RULES].sort()).toEqual(Object.keys(CALLED_FOR).sort());
  });
});

describe('the repair', () => {
  const mended =
    'accept\nverdict unit vacuum-switch\npart plug\nrenew unit\nmate plug\nfit canister-hose on canister-port\nfit air-hose on air-port\nfit engine-hose on engine-port\nclamp canister-port hand-tight\nclamp air-port hand-tight\nclamp engine-port hand-tight\ndrive 3\nclose';
  const repair = (tools?: readonly BenchTool[]) => {
    const work = bench()
      .fault('switch-stuck-open')
      .evidence({ weight: 1 })
      .job(tools === undefined ? {} : { tools })
      .does(mended);
    return work.debrief().score.parts.find(({ part }) => part === 'repair');
  };

  it('is decided by the road where the deciding test cannot be made', () => {
    const [usual, short] = [repair(), repair(all('hand-pump'))];
    const retest = (of: typeof usual) => of?.because.find(({ kind }) => kind === 'retest')?.points;
    expect(retest(usual)).toBe(0);
    expect(retest(short)).toBe(4);
    expect(short?.points).toBe(10);
  });
});

describe('the bench as it is seen', () => {
  it('has no place of a tool that is away, for the hand and for the eye alike, and every other one', () => {
    const whole = bench().does('accept').sees();
    for (const tool of BENCH_TOOLS) {
      const short = bench()
        .job({ tools: all(tool) })
        .does('accept')
        .sees();
      expect(short.away).toEqual([tool]);
      for (const shelf of SHELF_TABS) {
        const usable = (seen: Observation) =>
          placeHotspots(seen, shelf).flatMap(({ id, enabled }) => (enabled ? [id] : []));
        const gone = usable(whole).filter((id) => !usable(short).includes(id));
        expect(gone.every((id) => toolOfSpot(id) === tool)).toBe(true);
        expect(usable(whole).filter((id) => toolOfSpot(id) === tool)).toEqual(gone);
        const named = mirrorSections(short, shelf).flatMap(({ controls }) => controls.map(({ id }) => id));
        expect(named.filter((id) => toolOfSpot(id) === tool)).toEqual([]);
      }
    }
    expect(whole.away).toBeUndefined();
  });

  it('offers a held thing no place of a tool that is away', () => {
    const { sitting } = bench()
      .job({ tools: all('bench-supply', 'jar') })
      .does('accept');
    const points = offersFor({ kind: 'lead', end: 'meter-red' }, sitting.observe()).map(
      ({ target }) => target,
    );
    expect(points).not.toContainEqual({ kind: 'point', point: 'supply-positive' });
    expect(points).toContainEqual({ kind: 'point', point: 'battery-positive' });
    const sites = offersFor({ kind: 'fitting', item: 'cap-a' }, sitting.observe()).map(
      ({ target }) => target,
    );
    expect(sites).not.toContainEqual({ kind: 'site', site: 'jar-tee-a' });
  });

  it('has every tool on some spot, but the one that stands in the cupboard', () => {
    const seen = bench().does('accept').sees();
    const tools = SHELF_TABS.flatMap((shelf) => placeHotspots(seen, shelf)).map(({ id }) => toolOfSpot(id));
    expect(BENCH_TOOLS.filter((tool) => !tools.includes(tool))).toEqual(['known-good-unit']);
  });
});
