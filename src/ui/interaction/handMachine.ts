import { assign, initialTransition, type SnapshotFrom, setup, transition } from 'xstate';
import { unreachable } from '../../base/assert.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Grip, Target } from './Grip.ts';

/** Whether the hand was moved by a pointer or by keys: keys open the list of places. */
export type HandMeans = 'pointer' | 'keys';

/** `from` says whether the thing was on something, so that laying it on the mat is an action or none. */
export type HandEvent =
  | { readonly type: 'pick-up'; readonly grip: Grip; readonly placed: boolean; readonly means: HandMeans }
  | { readonly type: 'place'; readonly target: Target }
  | { readonly type: 'put-back' };

interface Holding {
  readonly grip: Grip | null;
  readonly placed: boolean;
  readonly means: HandMeans;
}

/** What placing a held thing means to the world; null when it lies there already. */
export function placingAction(grip: Grip, placed: boolean, target: Target): Action | null {
  switch (target.kind) {
    case 'point':
      return grip.kind === 'lead' ? { kind: 'place-lead', end: grip.end, point: target.point } : null;
    case 'site':
      return grip.kind === 'fitting' ? { kind: 'fit', item: grip.item, site: target.site } : null;
    case 'cavity':
      return grip.kind === 'pin' ? { kind: 'insert-pin', cavity: target.cavity } : null;
    case 'mat':
      if (!placed || grip.kind === 'pin') return null;
      return grip.kind === 'lead'
        ? { kind: 'lift-lead', end: grip.end }
        : { kind: 'take-off', item: grip.item };
    default:
      return unreachable(target);
  }
}

const EMPTY: Holding = { grip: null, placed: false, means: 'pointer' };

/** The learner's one hand. Picking up changes nothing in the world; only placing does. */
export const handMachine = setup({
  types: { context: {} as Holding, events: {} as HandEvent },
  actions: {
    take: assign(({ event }) =>
      event.type === 'pick-up' ? { grip: event.grip, placed: event.placed, means: event.means } : EMPTY,
    ),
    empty: assign(EMPTY),
    act: (_, _params: { readonly action: Action | null }) => {},
  },
}).createMachine({
  id: 'hand',
  context: EMPTY,
  initial: 'idle',
  states: {
    idle: { on: { 'pick-up': { target: 'holding', actions: 'take' } } },
    holding: {
      on: {
        'pick-up': { target: 'holding', actions: 'take' },
        place: {
          target: 'idle',
          actions: [
            {
              type: 'act',
              params: ({ context, event }) => ({
                action:
                  context.grip === null ? null : placingAction(context.grip, context.placed, event.target),
              }),
            },
            'empty',
          ],
        },
        'put-back': { target: 'idle', actions: 'empty' },
      },
    },
  },
});

export type HandState = SnapshotFrom<typeof handMachine>;

/** An empty hand. */
export function emptyHand(): HandState {
  return initialTransition(handMachine)[0];
}

/** The next state of the hand, and what it did to the world. Pure. */
export function moveHand(
  state: HandState,
  event: HandEvent,
): { readonly state: HandState; readonly actions: readonly Action[] } {
  const [next, effects] = transition(handMachine, state, event);
  const actions: Action[] = [];
  for (const effect of effects) {
    if (effect.type !== 'act') continue;
    const { action } = effect.params as { readonly action: Action | null };
    if (action !== null) actions.push(action);
  }
  return { state: next, actions };
}
