import { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { ItemId } from '../devices/items.ts';
import type { WigglePlace } from '../devices/places.ts';
import { faultById } from '../faults/catalogue.ts';
import { wakeElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
import { NEVER } from './WorldState.ts';

/** A hand moves the harness for a second and jerks it some forty times. Common practice, no source. */
const WIGGLE_TICKS: Tick = secondsToTicks(1);
const JOLT_TICKS: Tick = secondsToTicks(0.025);
/** Chance that one jolt turns a fault that shows when moved, where the hand is; and for a wire moved by its plug. */
const TURNS = 0.3;
const TURNS_ALONG = 0.1;
/** Chance that one jolt parts a terminal spread all the way, at the plug and when only its wire is moved. */
const PARTS = 0.6;
const PARTS_ALONG = 0.25;

const MOVES: Readonly<Record<WigglePlace, Readonly<Partial<Record<ItemId, number>>>>> = {
  feed: { 'feed-wire': TURNS },
  ground: { 'ground-wire': TURNS },
  sense: { 'sense-wire': TURNS },
  plug: { plug: TURNS, 'feed-wire': TURNS_ALONG, 'ground-wire': TURNS_ALONG, 'sense-wire': TURNS_ALONG },
};

const PULLS: Readonly<Record<WigglePlace, readonly [number, number, number]>> = {
  feed: [PARTS_ALONG, 0, 0],
  ground: [0, PARTS_ALONG, 0],
  sense: [0, 0, PARTS_ALONG],
  plug: [PARTS, PARTS, PARTS],
};

/**
 * The bad face of a fault that shows when the harness is moved may be hidden as the job begins: drawn from the seed.
 * Empty where no fault is of that kind.
 */
export function startingFaces(seed: string, moved: readonly boolean[]): boolean[] {
  if (!moved.includes(true)) return [];
  const random = Random.of(seed, 'starting-faces');
  return moved.map((whenMoved) => !whenMoved || random.next() < 0.5);
}

/** A hand has taken hold of the harness at this tick. */
export function startWiggle(rig: Rig, tick: Tick): void {
  const { bench, deadlines } = rig.state;
  if (bench.wiggle === null) return;
  bench.wiggle.until = tick + WIGGLE_TICKS;
  deadlines.jolt = tick + JOLT_TICKS;
}

/**
 * One jolt: faults that show when moved may turn to their other face, spread terminals may part or touch. When the hand
 * lets go, terminals touch again and everything else stays as the last jolt left it.
 */
export function joltHarness(rig: Rig, tick: Tick): void {
  const { state } = rig;
  const { bench, deadlines } = state;
  const { wiggle } = bench;
  if (wiggle === null) return;
  const random = Random.restore(state.trials);
  const turned = turnFaces(rig, wiggle.at, random);
  const pulled = pullTerminals(rig, wiggle.at, random);
  state.trials = random.state;
  const ends = tick >= wiggle.until;
  const changed = ends ? letGo(rig) || pulled : pulled;
  deadlines.jolt = ends ? NEVER : tick + JOLT_TICKS;
  if (turned) rig.retune();
  else if (changed) {
    rig.sync();
    wakeElectrical(state);
  }
}

function turnFaces(rig: Rig, at: WigglePlace, random: Random): boolean {
  const { faces } = rig.state.bench;
  let turned = false;
  rig.spec.faults.forEach(({ fault, whenMoved }, i) => {
    const item = faultById(fault)?.item;
    const chance = whenMoved === true && item !== undefined ? (MOVES[at][item] ?? 0) : 0;
    if (chance === 0 || !(random.next() < chance)) return;
    faces[i] = faces[i] === false;
    turned = true;
  });
  return turned;
}

function pullTerminals(rig: Rig, at: WigglePlace, random: Random): boolean {
  const { spread1, spread2, spread3 } = rig.parameters;
  const { terminalsApart } = rig.state.bench;
  let changed = false;
  [spread1, spread2, spread3].forEach((spread, i) => {
    const chance = spread * (PULLS[at][i] as number);
    const apart = chance > 0 && random.next() < chance;
    if (apart === terminalsApart[i]) return;
    terminalsApart[i] = apart;
    changed = true;
  });
  return changed;
}

function letGo(rig: Rig): boolean {
  const { bench } = rig.state;
  const apart = bench.terminalsApart.includes(true);
  bench.wiggle = null;
  bench.terminalsApart = [false, false, false];
  return apart;
}
