import type { Box, Vec } from './layout/geometry.ts';
import {
  betweenFits,
  bringingIn,
  keptOnSheet,
  type SheetFit,
  sameFit,
  scaledAbout,
  windowOf,
} from './viewFit.ts';
import {
  CLOSE_SCALE,
  firstView,
  fitShowing,
  fitView,
  MARGIN_PX,
  type ViewName,
  viewShowing,
} from './views.ts';

/** How long a move takes. */
const MOVE_SECONDS = 0.36;
/** The closest one can go, CSS pixels a bench unit. */
const MOST_SCALE = 4;
/** One press of plus or minus. */
export const ZOOM_STEP = 1.4;

interface Move {
  readonly from: SheetFit;
  readonly to: SheetFit;
  /** Running time at its first frame; null before it. */
  since: number | null;
}

/** Where one stands before the bench: at a named view or at a place of one's own, and on the way between them. */
export class ViewCamera {
  private width = 1;
  private height = 1;
  private shown: SheetFit = { scale: 1, offsetX: 0, offsetY: 0 };
  private move: Move | null = null;
  private named: ViewName | null = null;
  /** What the named view was gone to for, and shows whole. */
  private meant: Box | null = null;
  /** Somebody went where they stand; until then it is chosen for the size of the host. */
  private chosen = false;

  /** How the sheet lies now. */
  get fit(): SheetFit {
    return this.shown;
  }

  /** Where it will lie when the move is over: drawn words are made for this scale. */
  get goal(): SheetFit {
    return this.move?.to ?? this.shown;
  }

  /** The view one is at or on the way to; null at a place of one's own. */
  get view(): ViewName | null {
    return this.named;
  }

  get moving(): boolean {
    return this.move !== null;
  }

  /** The part of the bench that will be in sight when the move is over. */
  get window(): Box {
    return windowOf(this.goal, this.width, this.height);
  }

  /**
   * The host's size. Who has gone nowhere yet begins where one can work at this size, as on a phone that is turned; for the others
   * nothing moves: what was in the middle stays there.
   */
  resize(width: number, height: number): void {
    if (width < 2 || height < 2) return;
    const before = { width: this.width, height: this.height };
    [this.width, this.height] = [width, height];
    if (!this.chosen) this.named = firstView(width, height);
    this.move = null;
    if (this.named !== null) {
      this.shown = fitShowing(this.named, this.meant, width, height);
      return;
    }
    const scale = Math.max(this.shown.scale, this.least);
    const middle = windowOf(this.shown, before.width, before.height);
    this.shown = this.kept({
      scale,
      offsetX: width / 2 - (middle.x + middle.w / 2) * scale,
      offsetY: height / 2 - (middle.y + middle.h / 2) * scale,
    });
  }

  /** Moves to a named view; when `meant` is what one goes there for, so that it is whole in it. */
  go(view: ViewName, meant: Box | null = null): void {
    this.chosen = true;
    this.named = view;
    this.meant = meant !== null && this.viewFor(meant) === view ? meant : null;
    this.start(fitShowing(view, this.meant, this.width, this.height));
  }

  /** The view to go to for a place. */
  viewFor(box: Box): ViewName {
    return viewShowing(box, this.width, this.height);
  }

  /** One step closer or further off, about the middle of the view. */
  step(by: 1 | -1): void {
    const middle = { x: this.width / 2, y: this.height / 2 };
    const { goal } = this;
    const wanted = goal.scale * ZOOM_STEP ** by;
    // On a small screen the first step in goes as far as one can work.
    const far = by === 1 && wanted < CLOSE_SCALE ? CLOSE_SCALE : wanted;
    if (far <= this.least * 1.02) return this.go('whole');
    this.leave(scaledAbout(goal, Math.min(far, MOST_SCALE), middle));
  }

  /** Zooms by a factor about a place of the host, at once: a wheel or two fingers do the moving. */
  zoomAt(factor: number, at: Vec): void {
    const scale = Math.min(MOST_SCALE, Math.max(this.least, this.shown.scale * factor));
    this.jump(scaledAbout(this.shown, scale, at));
  }

  /** Moves the sheet by host pixels, at once. True when there was anything to move to. */
  panBy(dx: number, dy: number): boolean {
    const { scale, offsetX, offsetY } = this.shown;
    const before = this.shown;
    const moved = this.kept({ scale, offsetX: offsetX + dx, offsetY: offsetY + dy });
    if (sameFit(before, moved)) return false;
    this.jump(moved);
    return true;
  }

  /** Moves on by most of a window, one of the four ways. */
  stride(x: -1 | 0 | 1, y: -1 | 0 | 1): void {
    const { scale, offsetX, offsetY } = this.goal;
    const far = { x: this.width * 0.6, y: this.height * 0.6 };
    this.leave(this.kept({ scale, offsetX: offsetX - x * far.x, offsetY: offsetY - y * far.y }));
  }

  /** True when there is bench to be seen that way. */
  canStride(x: -1 | 0 | 1, y: -1 | 0 | 1): boolean {
    const { scale, offsetX, offsetY } = this.goal;
    return !sameFit(this.goal, this.kept({ scale, offsetX: offsetX - x * 9, offsetY: offsetY - y * 9 }));
  }

  /** Brings a box of the sheet into view with the least move. */
  show(box: Box): void {
    const to = bringingIn(this.goal, box, this.width, this.height, MARGIN_PX);
    if (!sameFit(to, this.goal)) this.leave(to);
  }

  /** One frame; true when the sheet lies elsewhere than before it. */
  frame(seconds: number, reducedMotion: boolean): boolean {
    const { move } = this;
    if (move === null) return false;
    move.since ??= seconds;
    const share = reducedMotion ? 1 : Math.min(1, (seconds - move.since) / MOVE_SECONDS);
    this.shown = share === 1 ? move.to : betweenFits(move.from, move.to, eased(share));
    if (share === 1) this.move = null;
    return true;
  }

  private get least(): number {
    return fitView('whole', this.width, this.height).scale;
  }

  private kept(fit: SheetFit): SheetFit {
    return keptOnSheet(fit, this.width, this.height);
  }

  private start(to: SheetFit): void {
    this.move = sameFit(to, this.shown) ? null : { from: this.shown, to, since: null };
  }

  /** Starts for a place of one's own; the whole bench keeps its name however one comes to it. */
  private leave(to: SheetFit): void {
    const kept = this.kept(to);
    this.chosen = true;
    this.named = this.nameOf(kept);
    this.meant = null;
    this.start(kept);
  }

  private jump(to: SheetFit): void {
    this.move = null;
    this.chosen = true;
    this.shown = this.kept(to);
    this.named = this.nameOf(this.shown);
    this.meant = null;
  }

  private nameOf(fit: SheetFit): ViewName | null {
    return fit.scale <= this.least * 1.001 ? 'whole' : null;
  }
}

/** Slow, quick, slow. */
function eased(share: number): number {
  return share < 0.5 ? 4 * share ** 3 : 1 - (2 - 2 * share) ** 3 / 2;
}
