import { UNIT_PORTS } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { bookMinutes, priceOf } from './book.ts';
import type { SittingAction } from './SittingAction.ts';

/** Book minutes and dollars of parts. */
export interface Spent {
  readonly bookMinutes: number;
  readonly money: number;
}

/** Putting the known-good unit on the truck to see counts what fitting a unit counts, instead of the minutes of the swap. */
export const TRIAL_FIT_MINUTES =
  bookMinutes({ kind: 'renew', item: 'unit' }) - bookMinutes({ kind: 'swap-unit', to: 'truck' });

/** Adds up what a sitting takes by the book, action by action. */
export class Spending {
  /** So far; minutes to a tenth. The same object until something is added. */
  spent: Spent = { bookMinutes: 0, money: 0 };
  private minutes = 0;
  private onTruck = false;

  /** An action was done, and the bench stands so after it. `mayTry` until the verdict: afterwards no unit is tried. */
  note(action: SittingAction, seen: Observation, mayTry: boolean): void {
    const onTruck = isKnownGoodOnTruck(seen);
    const tried = onTruck && !this.onTruck && mayTry;
    const minutes = bookMinutes(action) + (tried ? TRIAL_FIT_MINUTES : 0);
    const price = action.kind === 'renew' ? priceOf(action.item) : 0;
    if (minutes > 0 || price > 0) {
      this.minutes += minutes;
      this.spent = {
        bookMinutes: Math.floor(this.minutes * 10 + 0.5) / 10,
        money: this.spent.money + price,
      };
    }
    // It stays one fitting until the truck's own unit is back in its place.
    this.onTruck = onTruck || (this.onTruck && seen.unit !== 'truck');
  }
}

/** The known-good unit has its plug mated, or a hose of the truck on it. */
export function isKnownGoodOnTruck({ unit, plug, sites }: Observation): boolean {
  if (unit === 'truck') return false;
  const hoses = UNIT_PORTS.map((port) => sites[port]);
  return (
    plug.mated ||
    hoses.includes('canister-hose') ||
    hoses.includes('air-hose') ||
    hoses.includes('engine-hose')
  );
}
