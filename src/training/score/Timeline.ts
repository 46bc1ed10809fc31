import { ok, type Result } from '../../base/Result.ts';
import { TICKS_PER_SECOND, type Tick } from '../../base/ticks.ts';
import type { Happening, Observation } from '../../sim/world/Observation.ts';
import { isJob } from '../scenario/modes.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { LogEntry } from '../sitting/LogEntry.ts';
import { GRID_TICKS } from '../sitting/Recorder.ts';
import { replay } from '../sitting/replay.ts';
import type { ReplayProblem } from '../sitting/replayActions.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import type { SittingView } from '../sitting/SittingView.ts';
import type { TraceSample } from './DebriefFacts.ts';

/** A moment of a sitting: after an action, or (with `action` null) when an instrument showed something new. */
export interface Moment {
  readonly tick: Tick;
  readonly action: SittingAction | null;
  /** As things stood just before the action; the same as `seen` when there was none. */
  readonly before: Observation;
  readonly seen: Observation;
}

/** A whole closed sitting, laid out for the rules to look at. */
export interface Timeline {
  readonly scenario: Scenario;
  readonly start: Observation;
  readonly end: Observation;
  readonly moments: readonly Moment[];
  readonly happenings: readonly Happening[];
  readonly log: readonly LogEntry[];
  readonly verdict: NonNullable<SittingView['verdict']>;
  readonly coachAsked: SittingView['coachAsked'];
  readonly trace: readonly TraceSample[];
}

export type TimelineProblem =
  | ReplayProblem
  | { readonly code: 'job-not-closed' | 'introduction-has-no-score' };

/** The inside is sampled five times a second for the chart. */
const TRACE_TICKS = TICKS_PER_SECOND / 5;
const MAX_TRACE = 2000;

/** Sits the record again and takes it down moment by moment. Errors: as `replay`, or the job is not closed, or it is no job. */
export function timelineOf(scenario: Scenario, record: SittingRecord): Result<Timeline, TimelineProblem> {
  if (!isJob(scenario.mode)) return { ok: false, error: { code: 'introduction-has-no-score' } };
  const moments: Moment[] = [];
  const happenings: Happening[] = [];
  const trace: TraceSample[] = [];
  let start: Observation | null = null;
  let before: Observation | null = null;
  let shown = '';
  const note = (seen: Observation): void => {
    for (const happening of seen.happenings)
      if (happening.id > (happenings.at(-1)?.id ?? 0)) happenings.push(happening);
  };
  /** What stands now is a moment of its own where it shows something new. */
  const look = (seen: Observation): void => {
    const showing = shownBy(seen);
    if (showing === shown) return;
    shown = showing;
    moments.push({ tick: seen.tick, action: null, before: seen, seen });
  };
  const replayed = replay(scenario, record, {
    sample: {
      every: GRID_TICKS,
      at: (sitting) => {
        const seen = sitting.observe();
        note(seen);
        if (seen.tick % TRACE_TICKS === 0) {
          const { senseVolts, switchSideKPa } = sitting.insideForJudging();
          trace.push({ tick: seen.tick, senseVolts, canisterKPa: switchSideKPa });
        }
        look(seen);
      },
    },
    before: (sitting) => {
      before = sitting.observe();
      start ??= before;
      note(before);
      look(before);
    },
    after: (sitting, { tick, action }) => {
      const seen = sitting.observe();
      note(seen);
      shown = shownBy(seen);
      moments.push({ tick, action, before: before ?? seen, seen });
    },
  });
  if (!replayed.ok) return replayed;
  const view = replayed.value.view();
  if (view.phase !== 'closed' || view.verdict === null)
    return { ok: false, error: { code: 'job-not-closed' } };
  const end = view.observation;
  const { log, verdict, coachAsked } = view;
  return ok({
    scenario,
    start: start ?? end,
    end,
    moments,
    happenings,
    log,
    verdict,
    coachAsked,
    trace: thinned(trace),
  });
}

/** What tells two moments apart when no hand moved: every display, needle, column and lamp. */
function shownBy(seen: Observation): string {
  const { meter, gauge, reader, jumper, handPump, manometer, testLamp, ledTester, smoke, supply } = seen;
  const needle = Math.floor(gauge.needleKPa / 0.1);
  const { digits, unit, settled } = meter.display;
  const column = manometer.kPa === null ? 'empty' : Math.floor(manometer.kPa / 0.025);
  const tools = `${column} ${Math.floor(testLamp.glow * 10)} ${ledTester.lit} ${supply.limiting}`;
  const blown = `${Math.floor(smoke.gaugeKPa / 0.1)} ${smoke.seenAt.join('/')}`;
  const circuit = `${reader.driver} ${jumper.fuse} ${handPump.moving}`;
  return `${digits}${unit}${settled} ${needle} ${circuit} ${tools} ${blown}`;
}

/** Every second sample goes until few enough are left; the first stays. */
function thinned(samples: readonly TraceSample[]): readonly TraceSample[] {
  let kept = samples;
  while (kept.length > MAX_TRACE) kept = kept.filter((_, index) => index % 2 === 0);
  return kept;
}
