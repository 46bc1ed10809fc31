import { createMachine, transition } from 'xstate';
import type { SittingPhase } from './SittingView.ts';

/** What moves a job on. */
export type PhaseEvent = 'accept-job' | 'give-verdict' | 'close-job' | 'leave-bench';

/** How a job goes on. Pure data: no timers, no actions, no context; only its value is ever kept. */
export const phaseMachine = createMachine({
  id: 'sitting',
  types: {} as { events: { type: PhaseEvent } },
  initial: 'work-order',
  states: {
    'work-order': { on: { 'accept-job': 'bench' } },
    // Only an introduction is left without a verdict.
    bench: { on: { 'give-verdict': 'repair', 'leave-bench': 'closed' } },
    repair: { on: { 'close-job': 'closed' } },
    closed: { type: 'final' },
  },
});

/** The phase after an event, or null when the event has no place in this phase. */
export function nextPhase(phase: SittingPhase, event: PhaseEvent): SittingPhase | null {
  const state = phaseMachine.resolveState({ value: phase, context: {} });
  if (!state.can({ type: event })) return null;
  return transition(phaseMachine, state, { type: event })[0].value as SittingPhase;
}
