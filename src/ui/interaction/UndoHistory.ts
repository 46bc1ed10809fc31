import { assert } from '../../base/assert.ts';
import { TICKS_PER_SECOND, type Tick } from '../../base/ticks.ts';
import type { Action, ActionKind } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { type TouchedThing, touchedBy } from './touchedThing.ts';
import { type BackAction, type UndoReason, undoingOf } from './undoing.ts';

/** Something done that a hand can put back. */
interface Step {
  readonly actions: readonly BackAction[];
  readonly thing: TouchedThing;
  /** How the thing stood when it was done; standing otherwise, it was moved since and is left alone. */
  readonly left: ReturnType<TouchedThing['stands']>;
  readonly stoodBefore: ReturnType<TouchedThing['stands']>;
  readonly kind: ActionKind;
  readonly tick: Tick;
}

/** What became of a wish to undo. `why` is a refusal of the bench, or null when the thing has been moved since. */
export type Undone<Why> =
  | { readonly kind: 'undone'; readonly actions: readonly BackAction[] }
  | { readonly kind: 'dropped'; readonly actions: readonly BackAction[]; readonly why: Why | null }
  | { readonly kind: 'nothing'; readonly why: UndoReason };

const DEEPEST = 50;
/** One turn of a knob from stop to stop is one step, when no more than this lies between two stops. */
const ONE_TURN_TICKS: Tick = TICKS_PER_SECOND;
const TURNED: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'set-meter',
  'meter-range',
  'set-bleed',
  'set-smoke',
]);

/** What a hand has done and could put back, last first. Putting back is done by ordinary actions: time does not run backwards. */
export class UndoHistory {
  private steps: Step[] = [];
  private lately: UndoReason | null;
  private puttingBack = false;

  /** `floor` is why nothing more can be put back once all steps are. */
  constructor(private floor: 'nothing-done' | 'loaded-again' | 'part-renewed' | 'driven') {
    this.lately = floor;
  }

  /** The actions that would be done next, or null. */
  get next(): readonly BackAction[] | null {
    return this.steps.at(-1)?.actions ?? null;
  }

  /** Why the last thing done is not what would be put back next; null when it is. */
  get why(): UndoReason | null {
    return this.lately;
  }

  /** An action was done: the bench looked like `before`, and looks like `after` now. */
  note(action: Action, before: Observation, after: Observation): void {
    if (this.puttingBack) return;
    const undoing = undoingOf(action, before);
    const thing = touchedBy(action);
    if (undoing.kind === 'put-back') {
      assert(thing !== null, 'what can be put back is a thing that stands somehow', { action });
      this.lately = null;
      return this.push(action, undoing.actions, thing, before, after);
    }
    // What was done to the same thing before can no longer be put back by itself.
    this.steps = this.steps.filter((step) => step.thing.name !== thing?.name);
    if (undoing.kind === 'settles') {
      this.steps = [];
      this.floor = undoing.why;
    }
    this.stays(undoing.why);
  }

  /** Something was done that stays done, and left the bench as it was. */
  stays(why: UndoReason): void {
    if (!this.puttingBack) this.lately = why;
  }

  /** Puts the last thing back through `act`, which gives the bench's refusal or null. */
  undo<Why>(seen: Observation, act: (action: BackAction) => Why | null): Undone<Why> {
    const step = this.steps.pop();
    if (step === undefined) return { kind: 'nothing', why: this.lately ?? this.floor };
    const { actions } = step;
    this.lately = this.steps.length === 0 ? this.floor : null;
    if (step.thing.stands(seen) !== step.left) return { kind: 'dropped', actions, why: null };
    this.puttingBack = true;
    try {
      for (const action of actions) {
        const why = act(action);
        if (why !== null) return { kind: 'dropped', actions, why };
      }
    } finally {
      this.puttingBack = false;
    }
    return { kind: 'undone', actions };
  }

  private push(
    action: Action,
    actions: readonly BackAction[],
    thing: TouchedThing,
    before: Observation,
    after: Observation,
  ): void {
    const { kind } = action;
    const { tick } = after;
    const left = thing.stands(after);
    const last = this.steps.at(-1);
    if (last !== undefined && TURNED.has(kind) && last.kind === kind && tick - last.tick < ONE_TURN_TICKS) {
      this.steps.pop();
      if (last.stoodBefore !== left) this.steps.push({ ...last, left, tick });
      return;
    }
    this.steps.push({ actions, thing, left, stoodBefore: thing.stands(before), kind, tick });
    if (this.steps.length > DEEPEST) this.steps.shift();
  }
}
