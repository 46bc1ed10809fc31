import type { ItemId } from '../../sim/devices/items.ts';
import type { SittingAction } from './SittingAction.ts';

/** Minutes a job book would allow for each kind of action; waiting is the clock's affair, not the book's. Invented for teaching; only their order is meant. */
const BOOK_MINUTES: Readonly<Record<SittingAction['kind'], number>> = {
  'accept-job': 0,
  'set-key': 0.2,
  'set-meter': 0.1,
  'meter-jack': 0.2,
  'meter-range': 0.1,
  'meter-hold': 0.05,
  'meter-extremes': 0.1,
  'meter-relative': 0.1,
  'place-lead': 0.3,
  'lift-lead': 0.1,
  'insert-pin': 0.5,
  'remove-pin': 0.3,
  'part-plug': 1,
  'mate-plug': 0.5,
  'switch-jumper': 0.1,
  'renew-jumper-fuse': 1,
  'pull-fuse': 0.5,
  'fit-fuse': 0.5,
  fit: 0.5,
  'take-off': 0.5,
  clamp: 0.2,
  'pump-handle': 0.05,
  stroke: 0.05,
  release: 0.1,
  'switch-supply': 0.2,
  'set-bleed': 0.1,
  'refill-manometer': 2,
  'set-smoke': 1,
  'swap-unit': 5,
  'drag-test': 1,
  look: 1,
  listen: 0.5,
  wiggle: 0.3,
  'clear-codes': 0.5,
  'road-test': 0,
  'command-solenoid': 0.2,
  renew: 0,
  log: 0.2,
  'read-codes': 1,
  wait: 0,
  'wait-steady': 0,
  'skip-step': 0,
  'mark-item': 0,
  'ask-coach': 0,
  annotate: 0,
  'give-verdict': 1,
  'close-job': 0,
};

/** Minutes to renew an item, by the same book. */
const RENEWAL_MINUTES: Readonly<Record<ItemId, number>> = {
  unit: 30,
  'feed-wire': 25,
  'ground-wire': 20,
  'sense-wire': 25,
  plug: 20,
  fuse: 1,
  'key-switch': 40,
  battery: 15,
  controller: 45,
  'canister-hose': 15,
  'air-hose': 10,
  'engine-hose': 10,
  filter: 5,
  'filler-cap': 1,
  canister: 40,
  'tank-seal': 35,
  'purge-valve': 15,
  'hand-pump': 2,
  'meter-leads': 1,
  'meter-fuses': 2,
  'meter-battery': 2,
  jumper: 1,
  'plain-lead': 1,
};

/** Price of an item in dollars of the invented district's stores. Tools are the shop's: nothing. */
const PRICES: Readonly<Record<ItemId, number>> = {
  unit: 385,
  'feed-wire': 18,
  'ground-wire': 12,
  'sense-wire': 18,
  plug: 24,
  fuse: 2,
  'key-switch': 95,
  battery: 160,
  controller: 720,
  'canister-hose': 35,
  'air-hose': 22,
  'engine-hose': 14,
  filter: 16,
  'filler-cap': 20,
  canister: 210,
  'tank-seal': 28,
  'purge-valve': 65,
  'hand-pump': 0,
  'meter-leads': 0,
  'meter-fuses': 0,
  'meter-battery': 0,
  jumper: 0,
  'plain-lead': 0,
};

/** One drive cycle: warm-up, steady cruise, the monitor, the way back. Invented. */
const DRIVE_CYCLE_MINUTES = 25;

export function bookMinutes(action: SittingAction): number {
  switch (action.kind) {
    case 'renew':
      return RENEWAL_MINUTES[action.item];
    case 'road-test':
      return action.cycles * DRIVE_CYCLE_MINUTES;
    default:
      return BOOK_MINUTES[action.kind];
  }
}

export function priceOf(item: ItemId): number {
  return PRICES[item];
}
