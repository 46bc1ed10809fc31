import { err, ok, type Result } from '../base/Result.ts';
import { secondsToTicks } from '../base/ticks.ts';
import type { Refusal } from '../sim/world/Action.ts';
import type { Sitting } from '../training/sitting/Sitting.ts';
import type { SittingAction, SittingRefusal } from '../training/sitting/SittingAction.ts';
import type { ScriptLine, ScriptStep } from './ScriptStep.ts';

const LOOK_TICKS = secondsToTicks(0.1);
/** A stroke takes well under this; the limit only keeps a broken handle from hanging the program. */
const STROKE_SECONDS = 5;

export interface RefusedLine {
  readonly line: number;
  readonly text: string;
  readonly refusal: Refusal | SittingRefusal;
}

/**
 * Does the lines of an action file one after the other; `seen` is told after each.
 * Errors: the first line that the bench or the paperwork refused. Lines after it are not done.
 */
export function runActions(
  sitting: Sitting,
  lines: readonly ScriptLine[],
  seen: (line: ScriptLine) => void = () => undefined,
): Result<void, RefusedLine> {
  for (const line of lines) {
    const refusal = runStep(sitting, line.step);
    if (refusal !== null) return err({ line: line.line, text: line.text, refusal });
    seen(line);
  }
  return ok(undefined);
}

function runStep(sitting: Sitting, step: ScriptStep): Refusal | SittingRefusal | null {
  switch (step.kind) {
    case 'act': {
      const refusal = act(sitting, step.action);
      if (refusal === null) pass(sitting, step.handSeconds);
      return refusal;
    }
    case 'log': {
      const refusal = act(sitting, { kind: 'log' });
      if (refusal !== null || step.note === '') return refusal;
      return act(sitting, { kind: 'annotate', entry: sitting.view().log.length, text: step.note });
    }
    case 'strokes':
      for (let i = 0; i < step.times; i++) {
        const refusal = act(sitting, { kind: 'stroke', depth: step.depth });
        if (refusal !== null) return refusal;
        lookUntil(sitting, STROKE_SECONDS, () => !sitting.observe().handPump.moving);
      }
      return null;
  }
}

function act(sitting: Sitting, action: SittingAction): Refusal | SittingRefusal | null {
  const done = sitting.apply(action);
  return done.ok ? null : done.error;
}

function pass(sitting: Sitting, seconds: number): void {
  sitting.advanceTo(sitting.tick + secondsToTicks(seconds));
}

function lookUntil(sitting: Sitting, atMostSeconds: number, done: () => boolean): void {
  const end = sitting.tick + secondsToTicks(atMostSeconds);
  while (!done() && sitting.tick < end && sitting.view().phase !== 'closed') {
    sitting.advanceTo(sitting.tick + LOOK_TICKS);
  }
}
