import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { nextTouch } from '../../src/app/nextTouch.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingAction } from '../../src/training/sitting/SittingAction.ts';
import { BenchHand } from '../../src/ui/interaction/BenchHand.ts';
import { placeHotspots } from '../../src/ui/interaction/layout/hotspots.ts';
import { sameTouch, type Touch } from '../../src/ui/interaction/Touch.ts';

function shipped(id: string): Scenario {
  const text = readFileSync(new URL(`../../scenarios/${id}.yaml`, import.meta.url), 'utf8');
  const loaded = loadScenario(text, `${id}.yaml`);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

/** A newcomer who reads nothing and touches only what has the ring; where nothing has it, lays down what is held, or waits. */
class Follower {
  readonly sitting: Sitting;
  readonly touched: Touch[] = [];
  private readonly hand: BenchHand;

  constructor(scenario: Scenario) {
    this.sitting = Sitting.begin(scenario);
    this.sitting.apply({ kind: 'accept-job' });
    this.hand = new BenchHand({
      observe: () => this.sitting.observe(),
      act: (action) => this.sitting.apply(action).ok,
      news: () => {},
      changed: () => {},
    });
  }

  get asked(): Touch | null {
    const todo = this.sitting.stillToDo();
    return todo === null ? null : nextTouch(todo, this.sitting.observe(), this.hand);
  }

  /** The ring is on something that can be touched as the bench stands. */
  get ringIsOnTheBench(): boolean {
    const { asked } = this;
    if (asked?.kind !== 'bench') return true;
    const spots = placeHotspots(this.sitting.observe(), this.hand.shelf);
    return spots.some(({ id, enabled }) => id === asked.at && enabled);
  }

  openShelf(tab: 'smoke'): void {
    this.hand.openShelf(tab);
  }

  goOn(): void {
    const { asked } = this;
    if (asked !== null) this.touched.push(asked);
    if (asked === null && this.hand.holding !== null) this.hand.place({ kind: 'mat' });
    else if (asked?.kind === 'log') this.sitting.apply({ kind: 'log' });
    else if (asked?.kind === 'bench' && asked.at === 'pump-handle')
      this.sitting.apply({ kind: 'stroke', depth: 1 });
    else if (asked?.kind === 'bench') this.hand.press(asked.at, 'pointer');
    this.sitting.advanceTo(this.sitting.tick + secondsToTicks(1));
  }
}

describe('the ring of a step', () => {
  const scenario = shipped('first-minutes');

  test('leads a hand that only follows it through the whole of the first minutes', () => {
    const newcomer = new Follower(scenario);
    // Whatever compartment stands open, the way to the leads is shown.
    newcomer.openShelf('smoke');
    for (let n = 0; n < 120 && newcomer.sitting.view().step < scenario.steps.length; n++) {
      expect(newcomer.ringIsOnTheBench, JSON.stringify(newcomer.asked)).toBe(true);
      newcomer.goOn();
    }
    expect(newcomer.sitting.view().step).toBe(scenario.steps.length);
    expect(newcomer.sitting.view().passedOver).toEqual([]);
    expect(newcomer.asked).toBeNull();
    // Two touches for what is carried, one for what is pressed; nobody touches sixty times in five minutes.
    expect(newcomer.touched.length).toBeLessThan(60);
  });

  test('has each hose closed before the next one is opened', () => {
    const newcomer = new Follower(scenario);
    for (let n = 0; n < 120 && newcomer.sitting.view().step < scenario.steps.length; n++) newcomer.goOn();
    const at = (touch: Touch): number => newcomer.touched.findIndex((each) => sameTouch(each, touch));
    const [taken, closed, next] = [
      at({ kind: 'bench', at: 'fitting:canister-hose' }),
      at({ kind: 'bench', at: 'site:canister-hose-end' }),
      at({ kind: 'bench', at: 'fitting:air-hose' }),
    ];
    expect(taken).toBeGreaterThan(0);
    expect(closed).toBeGreaterThan(taken);
    expect(next).toBeGreaterThan(closed);
  });

  test('is on what can be touched at every moment of the walkthrough', () => {
    const walkthrough = shipped('first-day-on-the-bench');
    const script = readFileSync(
      new URL('../golden/actions/first-day-on-the-bench.full.txt', import.meta.url),
      'utf8',
    );
    const lines = parseActions(script);
    if (!lines.ok) throw new Error('reads');
    const sitting = Sitting.begin(walkthrough);
    const lost: string[] = [];
    let led = 0;
    const look = (): void => {
      const todo = sitting.stillToDo();
      const seen = sitting.observe();
      const asked = todo === null ? null : nextTouch(todo, seen, { holding: null, shelf: 'leads' });
      if (asked?.kind !== 'bench') return;
      led++;
      const spot = placeHotspots(seen, 'leads').find(({ id }) => id === asked.at);
      if (spot?.enabled !== true) lost.push(`${walkthrough.steps[sitting.view().step]?.id}: ${asked.at}`);
    };
    for (const line of lines.value) {
      look();
      const run = runActions(sitting, [line]);
      if (!run.ok) throw new Error(run.error.text);
    }
    expect([...new Set(lost)]).toEqual([]);
    expect(led).toBeGreaterThan(40);
  });

  test('a full hand is led to the place of what it holds, and to nothing else', () => {
    const sitting = Sitting.begin(scenario);
    const acts: readonly SittingAction[] = [
      { kind: 'accept-job' },
      { kind: 'set-meter', function: 'volts-dc' },
    ];
    for (const act of acts) expect(sitting.apply(act).ok).toBe(true);
    const todo = sitting.stillToDo();
    if (todo === null) throw new Error('a step is to do');
    const led = (holding: Parameters<typeof nextTouch>[2]['holding']): Touch | null =>
      nextTouch(todo, sitting.observe(), { holding, shelf: 'leads' });
    expect(led(null)).toEqual({ kind: 'bench', at: 'end:meter-black' });
    expect(led({ kind: 'lead', end: 'meter-black' })).toEqual({
      kind: 'bench',
      at: 'point:battery-negative',
    });
    expect(led({ kind: 'lead', end: 'meter-red' })).toBeNull();
    expect(led({ kind: 'fitting', item: 'cap-a' })).toBeNull();
  });
});
