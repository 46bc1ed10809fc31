import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { ControllerMemory } from '../devices/controller/ControllerMemory.ts';
import { senseStateOf } from '../devices/controller/circuitTests.ts';
import type { Monitor } from '../devices/controller/Monitor.ts';
import {
  CODE_STATUSES,
  type CodeStatus,
  TROUBLE_CODES,
  type TroubleCode,
} from '../devices/controller/troubleCodes.ts';
import type { ReaderObservation } from './Observation.ts';
import type { Rig } from './Rig.ts';

/** Key on, engine off, the lamp proves its bulb for 15 s: 13 CCR 1968.2(d)(2.1). */
const BULB_CHECK_TICKS: Tick = secondsToTicks(15);

/** The lamp in the dash: the bulb check with the key on and the engine off, by memory otherwise. */
export function dashLampLit({ state }: Rig): boolean {
  const { bench, watch, tick } = state;
  if (bench.key === 'off') return false;
  const proving = bench.key === 'on' && tick - watch.keyedAt < BULB_CHECK_TICKS;
  return proving || bench.controller.lamp;
}

/** What the reader shows of the controller; `before` again where that is what it showed before. */
export function readController(rig: Rig, before?: ReaderObservation): ReaderObservation {
  const { bench, watch } = rig.state;
  if (bench.key === 'off') return ASLEEP;
  const senseVolts = measuredVolts(rig.circuit.volts('controller-sense'));
  const { codes, freeze } = heldBy(bench.controller);
  const { command, driver } = bench;
  const monitor = readMonitor(bench.controller, watch.monitor, before?.monitor);
  const still =
    before?.senseVolts === senseVolts &&
    before.command === command &&
    before.driver === driver &&
    before.codes === codes &&
    before.freeze === freeze &&
    before.monitor === monitor;
  if (still) return before;
  return {
    awake: true,
    senseVolts,
    senseState: senseStateOf(senseVolts),
    command,
    driver,
    codes,
    freeze,
    monitor,
    fuelPercent: Math.floor(rig.spec.fuelLevel * 100 + 0.5),
  };
}

type MonitorSeen = ReaderObservation['monitor'];

function readMonitor(
  { result, complete }: ControllerMemory,
  running: Monitor | null,
  before: MonitorSeen | undefined,
): MonitorSeen {
  const phase = running?.phase ?? result?.phase ?? 'waiting';
  const seconds = result?.seconds ?? 0;
  const limitSeconds = result?.limitSeconds ?? null;
  const still =
    before?.phase === phase &&
    before.seconds === seconds &&
    before.limitSeconds === limitSeconds &&
    before.complete === complete;
  return still ? before : { phase, seconds, limitSeconds, complete };
}

/** The controller's converter has steps of 0.01 V. */
export function measuredVolts(volts: number): number {
  return Math.floor(volts * 100 + 0.5) / 100;
}

type Held = Pick<ReaderObservation, 'codes' | 'freeze'>;
/** What a memory holds, written out once: a memory that changes is another one (see the memory's transitions). */
const written = new WeakMap<ControllerMemory, Held>();

function heldBy(memory: ControllerMemory): Held {
  const before = written.get(memory);
  if (before !== undefined) return before;
  const held: Held = { codes: codesIn(memory), freeze: [...memory.freeze] };
  written.set(memory, held);
  return held;
}

/** Codes in the order of the list, each status by itself. */
function codesIn(memory: ControllerMemory): ReaderObservation['codes'] {
  const held: Readonly<Record<CodeStatus, readonly TroubleCode[]>> = memory;
  const found: { readonly code: TroubleCode; readonly status: CodeStatus }[] = [];
  for (const status of CODE_STATUSES) for (const code of held[status]) found.push({ code, status });
  // Sorting keeps equals as they are, so statuses of one code stay in their order.
  return found.length > 1 ? found.sort((a, b) => placeOf(a.code) - placeOf(b.code)) : found;
}

const PLACES: ReadonlyMap<TroubleCode, number> = new Map(TROUBLE_CODES.map((code, i) => [code, i]));

function placeOf(code: TroubleCode): number {
  return PLACES.get(code) ?? PLACES.size;
}

const ASLEEP: ReaderObservation = {
  awake: false,
  senseVolts: null,
  senseState: null,
  command: 'off',
  driver: null,
  codes: [],
  freeze: [],
  monitor: null,
  fuelPercent: null,
};
