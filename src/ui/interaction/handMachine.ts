import { assign, initialTransition, type SnapshotFrom, setup, transition } from 'xstate';
import { unreachable } from '../../base/assert.ts';
import type { Action } from '../../sim/world/Action.ts';
import { type Grip, staysInHand, type Target } from './Grip.ts';
import type { ShelfTab } from './layout/shelfPlan.ts';

/** Whether the hand was moved by a pointer or by keys: keys open the list of places. */
export type HandMeans = 'pointer' | 'keys';

/** `from` says whether the thing was on something, so that laying it on the mat is an action or none. */
export type HandEvent =
  | { readonly type: 'pick-up'; readonly grip: Grip; readonly placed: boolean; readonly means: HandMeans }
  | { readonly type: 'place'; readonly target: Target }
  | { readonly type: 'put-back' }
  | { readonly type: 'open-shelf'; readonly tab: ShelfTab };

interface Holding {
  readonly grip: Grip | null;
  readonly placed: boolean;
  readonly means: HandMeans;
}

/** The hand, and which compartment of the tool shelf it has opened last. */
interface HandContext extends Holding {
  readonly shelf: ShelfTab;
}

/** What placing a held thing means to the world; null when it lies there already. */
export function placingAction(grip: Grip, placed: boolean, target: Target): Action | null {
  switch (target.kind) {
    case 'point':
      return grip.kind === 'lead' ? { kind: 'place-lead', end: grip.end, point: target.point } : null;
    case 'site':
      return grip.kind === 'fitting' ? { kind: 'fit', item: grip.item, site: target.site } : null;
    case 'cavity':
      if (grip.kind === 'drag-gauge') return { kind: 'drag-test', cavity: target.cavity };
      return grip.kind === 'pin' ? { kind: 'insert-pin', cavity: target.cavity } : null;
    case 'place':
      if (grip.kind !== 'sense') return null;
      return grip.how === 'look' ? { kind: 'look', at: target.place } : { kind: 'listen', at: target.place };
    case 'mat':
      if (!placed) return null;
      if (grip.kind === 'lead') return { kind: 'lift-lead', end: grip.end };
      return grip.kind === 'fitting' ? { kind: 'take-off', item: grip.item } : null;
    default:
      return unreachable(target);
  }
}

const EMPTY: Holding = { grip: null, placed: false, means: 'pointer' };
const START: HandContext = { ...EMPTY, shelf: 'leads' };

const PLACE = {
  type: 'act',
  params: ({ context, event }: { context: HandContext; event: HandEvent }) => ({
    action:
      context.grip === null || event.type !== 'place'
        ? null
        : placingAction(context.grip, context.placed, event.target),
  }),
} as const;

/** The learner's one hand. Picking up changes nothing in the world; only placing does. */
export const handMachine = setup({
  types: { context: {} as HandContext, events: {} as HandEvent },
  actions: {
    take: assign(({ event }) =>
      event.type === 'pick-up' ? { grip: event.grip, placed: event.placed, means: event.means } : EMPTY,
    ),
    empty: assign(EMPTY),
    open: assign(({ context, event }) => ({
      shelf: event.type === 'open-shelf' ? event.tab : context.shelf,
    })),
    act: (_, _params: { readonly action: Action | null }) => {},
  },
}).createMachine({
  id: 'hand',
  context: START,
  initial: 'idle',
  on: { 'open-shelf': { actions: 'open' } },
  states: {
    idle: { on: { 'pick-up': { target: 'holding', actions: 'take' } } },
    holding: {
      on: {
        'pick-up': { target: 'holding', actions: 'take' },
        place: [
          {
            guard: ({ context }) => context.grip !== null && staysInHand(context.grip),
            actions: [PLACE],
          },
          { target: 'idle', actions: [PLACE, 'empty'] },
        ],
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
