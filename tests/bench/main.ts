import { Matrix, solve } from 'ml-matrix';
import { createWorld } from '../../src/sim/world/World.ts';
import { replayActions } from '../../src/training/sitting/replayActions.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { type BenchRow, benchTable, writeBetweenMarks } from './BenchTable.ts';
import { checkBoard } from './checkBoard.ts';
import { CoilTransient, TRANSIENT_SECONDS } from './coilTransient.ts';
import { keptTables, liveEvidence, weighedMs } from './liveEvidence.ts';
import {
  type LongSitting,
  longSitting,
  SITTING_SECONDS,
  type SittingChoice,
  worldActions,
} from './longSitting.ts';
import { bytesPerWorld, stepTogether, type Together } from './manyWorlds.ts';
import { cpuMs, inTurns, median } from './measure.ts';
import { ownSystems, solveFull, solveSparse } from './ownSystems.ts';
import { screenRows } from './screen/screenRows.ts';

const SITTINGS: readonly SittingChoice[] = [
  golden('ready-by-friday'),
  golden('all-hoses-new'),
  { name: 'meter throughout', id: 'ready-by-friday', actions: 'tests/bench/meter-throughout.txt' },
];
const GOAL_TIMES_REAL = 20_000;
const GOAL_OVER_SPICE = 100;
const GOAL_DIFFERENCE = 1e-3;
const GOAL_OVER_ML_MATRIX = 10;
const GOAL_KIB = 64;
/** Milliseconds from a log entry to its chances, and how much of a core the benches of all suspects may take on the average. */
const GOAL_ENTRY_MS = 100;
const GOAL_SHARE = 0.25;
const GOAL_WEIGHED_MS = 8000;
/** Every job of the board proved, on two cores. */
const GOAL_CHECK_SECONDS = 60;
const TOGETHER: readonly Together[] = [
  { count: 1, sliceSeconds: 1 },
  { count: 10, sliceSeconds: 1 },
  { count: 100, sliceSeconds: 1 },
  { count: 1000, sliceSeconds: 1 },
  { count: 1000, sliceSeconds: 0.1 },
];
/** How much dearer a world may be among others and still count as no dearer: measurements scatter by as much. */
const SCATTER = 1.1;

// The rows of the screen alone need a browser and take some minutes of their own.
const rows: BenchRow[] = process.argv.includes('--screen')
  ? [...(await screenRows())]
  : [
      ...(await sittings()),
      newWorld(),
      ...(await transient()),
      ...(await linear()),
      memory(),
      ...together(),
      ...evidence(),
      board(),
      ...(process.argv.includes('--no-screen') ? [] : await screenRows()),
    ];
const table = benchTable(rows, new Date().toISOString().slice(0, 10));
process.stdout.write(`${table}\n`);
const into = process.argv.indexOf('--write');
if (into >= 0) writeBetweenMarks(process.argv[into + 1] ?? '', table);

/** A whole sitting replayed as the program does it, and its world alone. */
async function sittings(): Promise<BenchRow[]> {
  const all = SITTINGS.map(longSitting);
  const taken = await inTurns(
    all.flatMap((sitting) => {
      const actions = worldActions(sitting);
      return [
        { times: 1, work: () => replay(sitting) },
        { times: 1, work: () => replayWorld(sitting, actions) },
      ];
    }),
    15,
  );
  return all.flatMap(({ name }, i) => {
    const [whole, world] = [taken[2 * i] as number, taken[2 * i + 1] as number];
    const times = (SITTING_SECONDS * 1000) / whole;
    return [
      {
        what: `Replay of a 15-minute sitting (${name})`,
        measured: `${whole.toFixed(0)} ms: ${thousands(times)} × real time`,
        goal: `${thousands(GOAL_TIMES_REAL)} ×`,
        kept: times >= GOAL_TIMES_REAL,
      },
      {
        what: '… its world alone, without paperwork, strip and hash',
        measured: `${world.toFixed(0)} ms: ${thousands((SITTING_SECONDS * 1000) / world)} ×`,
        goal: '',
        kept: null,
      },
    ];
  });
}

function replay({ scenario, record }: LongSitting): void {
  const done = replayActions(() => Sitting.begin(scenario, record.seed), scenario, record, {});
  if (!done.ok) throw new Error(JSON.stringify(done.error));
}

function replayWorld({ record }: LongSitting, { spec, actions }: ReturnType<typeof worldActions>): void {
  const world = createWorld(spec);
  for (const { tick, action } of actions) {
    world.advanceTo(tick);
    world.apply(action);
  }
  world.advanceTo(record.endTick);
}

/** Every truck has been driven before its work order is written; the drives of a seed are worked out once. */
function newWorld(): BenchRow {
  const { spec } = worldActions(longSitting(SITTINGS[0] as SittingChoice));
  const taken = Array.from({ length: 7 }, (_, i) => {
    const before = cpuMs();
    createWorld({ ...spec, seed: `bench ${i}` });
    return cpuMs() - before;
  });
  const cycles = spec.drives?.cycles ?? 0;
  return {
    what: `A world of a new seed, with the ${cycles} drives before its work order (replays of one seed share them)`,
    measured: `${median(taken).toFixed(0)} ms`,
    goal: '',
    kept: null,
  };
}

async function transient(): Promise<BenchRow[]> {
  const coil = new CoilTransient();
  coil.ours();
  const { amps, volts } = coil.difference(await coil.theirs(50e-6));
  const [ours, theirs, theirsFine] = (await inTurns(
    [
      { times: 200, work: () => coil.ours() },
      { times: 1, work: () => coil.theirs(1e-3) },
      { times: 1, work: () => coil.theirs(50e-6) },
    ],
    9,
  )) as [number, number, number];
  const worst = Math.max(amps, volts);
  const ratio = theirs / ours;
  return [
    {
      what: `Coil and sense line for ${TRANSIENT_SECONDS} s against ngspice in WebAssembly (its steps up to 1 ms)`,
      measured: `${ours.toFixed(3)} ms against ${theirs.toFixed(0)} ms: ${ratio.toFixed(0)} times faster`,
      goal: `${GOAL_OVER_SPICE} times`,
      kept: ratio >= GOAL_OVER_SPICE,
    },
    {
      what: '… with ngspice’s steps up to our tick of 50 µs',
      measured: `${theirsFine.toFixed(0)} ms: ${(theirsFine / ours).toFixed(0)} times faster`,
      goal: '',
      kept: null,
    },
    {
      what: '… largest difference of coil current and sense voltage between the two',
      measured: `${(100 * worst).toFixed(3)} % in ${coil.steps} steps of ours`,
      goal: `${100 * GOAL_DIFFERENCE} %`,
      kept: worst <= GOAL_DIFFERENCE,
    },
  ];
}

async function linear(): Promise<BenchRow[]> {
  const systems = ownSystems();
  const x = new Float64Array(systems[0]?.rhs.length ?? 0);
  const withReference = new Float64Array(x.length + 1);
  const prepared = systems.map((system) => ({
    system,
    a: new Matrix(system.matrix.map((row) => [...row])),
    b: Matrix.columnVector([...system.rhs]),
  }));
  const forAll = (work: (one: (typeof prepared)[number]) => unknown) => (): void => {
    for (const one of prepared) work(one);
  };
  const [sparse, full, theirs] = (
    await inTurns(
      [
        { times: 2000, work: forAll(({ system }) => solveSparse(system, withReference)) },
        { times: 300, work: forAll(({ system }) => solveFull(system, x)) },
        { times: 100, work: forAll(({ a, b }) => solve(a, b)) },
      ],
      9,
    )
  ).map((ms) => (1000 * ms) / systems.length) as [number, number, number];
  return [
    {
      what: `Linear solve, ${x.length} unknowns, against ml-matrix on the bench’s own equations`,
      measured: `${sparse.toFixed(2)} µs against ${theirs.toFixed(0)} µs: ${(theirs / sparse).toFixed(0)} times faster`,
      goal: `${GOAL_OVER_ML_MATRIX} times`,
      kept: theirs / sparse >= GOAL_OVER_ML_MATRIX,
    },
    {
      what: '… our full matrix, which only ideal sources need',
      measured: `${full.toFixed(1)} µs: ${(theirs / full).toFixed(1)} times faster`,
      goal: '',
      kept: null,
    },
  ];
}

function memory(): BenchRow {
  const kib = bytesPerWorld() / 1024;
  return {
    what: 'Memory of a world, from 200 of them',
    measured: `${kib.toFixed(0)} KiB`,
    goal: `${GOAL_KIB} KiB`,
    kept: kib <= GOAL_KIB,
  };
}

function together(): BenchRow[] {
  const taken = stepTogether(TOGETHER, 5);
  const one = taken[0] as number;
  return TOGETHER.map(({ count, sliceSeconds }, i) => {
    const each = taken[i] as number;
    return {
      what: `${count} ${count === 1 ? 'world' : 'worlds'}, solenoid pulsed, by turns of ${sliceSeconds} s: one second of each`,
      measured: `${each.toFixed(3)} ms a world${i === 0 ? '' : ` (${(each / one).toFixed(2)} of one alone)`}`,
      goal: i === 0 ? '' : 'no dearer than alone',
      kept: i === 0 ? null : each <= SCATTER * one,
    };
  });
}

/** The benches of all suspects beside a sitting, as they go along with it and at one go. */
function evidence(): BenchRow[] {
  const tables = keptTables();
  return ['ready-by-friday', 'tight-as-a-drum'].map(golden).flatMap((choice): BenchRow[] => {
    const sitting = longSitting(choice);
    const { entryMs, worstEntryMs, share } = liveEvidence(sitting, tables);
    const weighed = weighedMs(sitting, tables);
    const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
    return [
      {
        what: `Chances after a log entry, benches in step (${choice.name})`,
        measured: `${entryMs.toFixed(1)} ms, at most ${worstEntryMs.toFixed(1)} ms: ${percent(worstEntryMs / GOAL_ENTRY_MS)} of ${GOAL_ENTRY_MS} ms`,
        goal: `${GOAL_ENTRY_MS} ms`,
        kept: worstEntryMs <= GOAL_ENTRY_MS,
      },
      {
        what: '… all suspects’ benches beside the sitting, as a share of its time',
        measured: `${percent(share)} of one core`,
        goal: percent(GOAL_SHARE),
        kept: share <= GOAL_SHARE,
      },
      {
        what: '… the whole record weighed at one go',
        measured: `${(weighed / 1000).toFixed(1)} s: ${percent(weighed / GOAL_WEIGHED_MS)} of ${GOAL_WEIGHED_MS / 1000} s`,
        goal: `${GOAL_WEIGHED_MS / 1000} s`,
        kept: weighed <= GOAL_WEIGHED_MS,
      },
    ];
  });
}

/** The command that an instructor has the whole board proved with. */
function board(): BenchRow {
  const { jobs, fit, seconds, cores } = checkBoard();
  return {
    what: `\`check\` of the whole job board: ${jobs} jobs proved, six learners each, on ${cores} ${cores === 1 ? 'core' : 'cores'}`,
    measured: `${seconds.toFixed(0)} s by the clock, ${fit} fit: ${((100 * seconds) / GOAL_CHECK_SECONDS).toFixed(0)} % of ${GOAL_CHECK_SECONDS} s`,
    goal: `${GOAL_CHECK_SECONDS} s on two cores`,
    kept: seconds <= GOAL_CHECK_SECONDS && fit === jobs,
  };
}

/** A golden job, done in full. */
function golden(id: string): SittingChoice {
  return { name: id, id, actions: `tests/golden/actions/${id}.full.txt` };
}

function thousands(x: number): string {
  return Math.round(x).toLocaleString('en-US');
}
