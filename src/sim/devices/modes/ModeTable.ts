import { type AnyStateMachine, transition } from 'xstate';

/**
 * The discrete side of a device. An XState machine says which mode follows which event; answers are remembered, so a
 * device costs one map look-up an event and its whole state is one word. Machines used here are flat, without context.
 */
export class ModeTable<Mode extends string, Event extends string> {
  private readonly known = new Map<string, Mode>();

  constructor(
    readonly machine: AnyStateMachine,
    readonly initial: Mode,
  ) {}

  /** The mode after `event`; the same mode when the event means nothing in it. */
  next(mode: Mode, event: Event): Mode {
    const key = `${mode} ${event}`;
    const remembered = this.known.get(key);
    if (remembered !== undefined) return remembered;
    const from = this.machine.resolveState({ value: mode, context: {} });
    const [to] = transition(this.machine, from, { type: event });
    const next = to.value as Mode;
    this.known.set(key, next);
    return next;
  }
}
