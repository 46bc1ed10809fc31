import { runStandardTest } from '../../sim/rigs/standardTests/runStandardTest.ts';
import type { Reading, StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import type { Question } from './Question.ts';
import { WatchedWorld } from './WatchedWorld.ts';
import type { Asked } from './watchShown.ts';

/** What a watch asks where a test reads; null where it asks nothing. */
const ASKED_AT: Readonly<Record<Reading['of'], Question['about'] | null>> = {
  meter: 'meter',
  tone: 'tone',
  'meter-battery-sign': 'battery-sign',
  gauge: 'gauge',
  'gauge-lost': 'hold',
  manometer: 'manometer',
  'manometer-at-goal': 'manometer',
  'manometer-lost': 'manometer',
  'reader-volts': 'reader-volts',
  'reader-state': 'reader-state',
  'reader-driver': 'reader-driver',
  click: 'click',
  lamp: 'lamp',
  led: 'led',
  smoke: 'smoke',
  finding: 'finding',
  codes: 'codes',
  'freeze-data': 'codes',
  drive: 'drive',
  fuse: 'fuse',
  'jumper-fuse': null,
  'seconds-taken': 'turning',
  'strokes-taken': null,
};

/** What each test asks of a bench, by its number; the same for every sitting. */
const asksOf = new WeakMap<EvidenceTables, readonly ReadonlySet<string>[]>();

/**
 * Numbers of the tests of the table that a sitting has effectively done: everything that one of them reads has been shown
 * in the same set-up.
 */
export function testsDone(tables: EvidenceTables, asked: readonly Asked[]): ReadonlySet<number> {
  let asks = asksOf.get(tables);
  if (asks === undefined) {
    asks = tables.tests.map((test) => asksOfTest(test, tables.environment));
    asksOf.set(tables, asks);
  }
  const shown = new Set(asked.map(({ question }) => nameOf(question)));
  return new Set(
    asks.flatMap((ofTest, test) =>
      ofTest.size > 0 && [...ofTest].every((name) => shown.has(name)) ? [test] : [],
    ),
  );
}

/** Works a test on a truck with nothing wrong, and takes down what is asked where it reads. */
function asksOfTest(test: StandardTest, environment: Environment): ReadonlySet<string> {
  const bench = new WatchedWorld(createWorld({ seed: DRAW_SEEDS[0] as string, faults: [], ...environment }));
  const abouts = new Set<Question['about']>();
  const names = new Set<string>();
  let until = 0;
  runStandardTest(test, bench, ({ of }) => {
    const about = ASKED_AT[of];
    // A hand logs what it reads, however short it stands.
    bench.watch.acted({ kind: 'log' }, bench.observe());
    const { asked } = bench.watch;
    until = asked.length;
    if (about === null) return;
    abouts.add(about);
    const last = asked.filter(({ question }) => question.about === about).at(-1);
    if (last !== undefined) names.add(nameOf(last.question));
  });
  // An ear hears a little longer than the hand that notes it.
  for (const { question } of bench.watch.asked.slice(0, until + 1)) {
    if (question.about === 'click' && abouts.has('click')) names.add(nameOf(question));
  }
  return names;
}

/** A set-up without what does not change what is learnt in it: how much was drawn, and what was renewed. */
function nameOf({ about, setUp }: Question): string {
  if (about === 'codes' || about === 'drive' || about === 'battery-sign') return about;
  const core = setUp.replace(/ strokes [\d.]+/g, '').replace(/^(no )?smoke (\d )?\S+/, 'smoke');
  return `${about} ${core}`;
}
