import { AIR_SITES, type LeadPoint } from '../../sim/devices/places.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { dropTarget, isAtHome, tabUnder } from './dropTarget.ts';
import { type Grip, placeOf, sameGrip, staysInHand, type Target } from './Grip.ts';
import { gripAt, hotspotOf, pressAction, tabAt, targetAt, turnAction } from './HotspotMeaning.ts';
import { emptyHand, type HandEvent, type HandMeans, moveHand } from './handMachine.ts';
import type { Vec } from './layout/geometry.ts';
import type { HotspotId } from './layout/PlacedHotspot.ts';
import { hiddenIn } from './layout/shelf.ts';
import type { ShelfTab } from './layout/shelfPlan.ts';
import { legalTargets } from './targets.ts';

/** What happened to the hand, for the words around it. */
export type HandNews =
  | { readonly kind: 'picked-up'; readonly grip: Grip }
  | { readonly kind: 'placed'; readonly grip: Grip; readonly target: Target }
  | { readonly kind: 'put-back'; readonly grip: Grip }
  /** The next turn of this clamp cracks the barb. */
  | { readonly kind: 'tight-already' };

/** What the hand works on. `act` gives false when the bench refused. */
export interface HandPorts {
  observe(): Observation;
  act(action: Action): boolean;
  news(news: HandNews): void;
  /** The held thing or the open compartment changed. */
  changed(): void;
}

/** Turns what pointer, keys and lists mean into actions. One hand, one thing. */
export class BenchHand {
  private state = emptyHand();
  /** The clamp that was asked to turn past hand tight, until the hand does anything else. */
  private warnedOf: HotspotId | null = null;

  constructor(private readonly ports: HandPorts) {}

  get holding(): Grip | null {
    return this.state.context.grip;
  }

  /** The bench as it stands this moment, not as the panels saw it last. */
  look(): Observation {
    return this.ports.observe();
  }

  /** How the held thing was picked up; keys and touch are offered a list of places. */
  get means(): HandMeans {
    return this.state.context.means;
  }

  /** The compartment of the tool shelf that stands open. */
  get shelf(): ShelfTab {
    return this.state.context.shelf;
  }

  openShelf(tab: ShelfTab): void {
    this.send({ type: 'open-shelf', tab });
  }

  /** Places the held thing can go now, as hotspots; for a place in a closed compartment, the tab that opens it. */
  targets(): readonly HotspotId[] {
    const grip = this.holding;
    if (grip === null) return [];
    const seen = this.ports.observe();
    const spots = legalTargets(grip, seen).flatMap((target) => {
      const tab = hiddenIn(target, seen, this.shelf);
      return tab === null ? (hotspotOf(target, grip) ?? []) : (`shelf:${tab}` as const);
    });
    return [...new Set<HotspotId>(spots)];
  }

  /** What is lit while something is held: where it can go, and the place it was taken from, to which it may go back. */
  lit(): readonly HotspotId[] {
    const grip = this.holding;
    if (grip === null) return [];
    const seen = this.ports.observe();
    const home = homeSpot(placeOf(grip, seen), seen, this.shelf);
    return home === null ? this.targets() : [...this.targets(), home];
  }

  /** A press on a hotspot: places what is held, or picks up, or works the control. */
  press(id: HotspotId, means: HandMeans): void {
    this.warnedOf = null;
    const tab = tabAt(id);
    if (tab !== null) return this.openShelf(tab);
    const seen = this.ports.observe();
    const held = this.holding;
    const grip = gripAt(id, seen);
    if (held !== null) {
      const target = targetAt(id, held, seen);
      if (grip !== null && sameGrip(held, grip)) this.putBack();
      else if (target !== null) this.place(target);
      else this.takeOrWork(id, grip, means, seen);
    } else this.takeOrWork(id, grip, means, seen);
  }

  private takeOrWork(id: HotspotId, grip: Grip | null, means: HandMeans, seen: Observation): void {
    const action = grip === null ? pressAction(id, seen) : null;
    if (grip !== null) this.pickUp(grip, means);
    else if (action !== null) this.ports.act(action);
  }

  /** Turns a clamp, the needle bleed or the smoke's regulator one step up or down. Past hand tight it warns first. */
  turn(id: HotspotId, turn: 1 | -1): void {
    const action = turnAction(id, turn, this.ports.observe());
    if (action === null) return;
    const cracks = action.kind === 'clamp' && action.setting === 'over-tight';
    if (cracks && this.warnedOf !== id) {
      this.warnedOf = id;
      return this.ports.news({ kind: 'tight-already' });
    }
    this.warnedOf = null;
    this.ports.act(action);
  }

  /** Turns a clamp past hand tight: the warning was seen, and the hand held on. */
  overTighten(id: HotspotId): void {
    this.warnedOf = id;
    this.turn(id, 1);
  }

  pickUp(grip: Grip, means: HandMeans): void {
    const placed = placeOf(grip, this.ports.observe()) !== null;
    this.send({ type: 'pick-up', grip, placed, means });
    this.ports.news({ kind: 'picked-up', grip });
  }

  place(target: Target): void {
    const grip = this.holding;
    if (grip === null) return;
    const actions = this.send({ type: 'place', target });
    const done = actions.every((action) => this.ports.act(action));
    // What an eye or a gauge finds is told by the bench itself.
    if (staysInHand(grip)) return;
    if (actions.length === 0) this.ports.news({ kind: 'put-back', grip });
    else if (done) this.ports.news({ kind: 'placed', grip, target });
  }

  /** Lets the held thing go at a place on the bench. Over a tab it opens the compartment and stays in the hand. */
  drop(at: Vec): void {
    const grip = this.holding;
    if (grip === null) return;
    const seen = this.ports.observe();
    const tab = tabUnder(at);
    if (tab !== null && tab !== this.shelf) return this.openShelf(tab);
    if (isAtHome(grip, at, seen, this.shelf)) return this.putBack();
    const target = dropTarget(grip, at, seen, this.shelf);
    if (target === null || (staysInHand(grip) && target.kind === 'mat')) return this.putBack();
    this.dropOn(target);
  }

  /** Lets the held thing go for good: what would stay in the hand goes back to where it was. */
  dropOn(target: Target): void {
    this.place(target);
    if (this.holding !== null) this.send({ type: 'put-back' });
  }

  putBack(): void {
    const grip = this.holding;
    if (grip === null) return;
    this.send({ type: 'put-back' });
    this.ports.news({ kind: 'put-back', grip });
  }

  private send(event: HandEvent): readonly Action[] {
    const { state, actions } = moveHand(this.state, event);
    this.state = state;
    this.ports.changed();
    return actions;
  }
}

/** The spot of the place a thing was taken from; null for the mat and for what a closed compartment hides. */
function homeSpot(home: ReturnType<typeof placeOf>, seen: Observation, shelf: ShelfTab): HotspotId | null {
  if (home === null) return null;
  const site = AIR_SITES.find((each) => each === home);
  if (site === undefined) return `point:${home as LeadPoint}`;
  return hiddenIn({ kind: 'site', site }, seen, shelf) === null ? `site:${site}` : null;
}
