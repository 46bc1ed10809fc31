import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { type Box, inside, type Vec } from '../interaction/layout/geometry.ts';
import { ViewCamera } from '../interaction/ViewCamera.ts';
import { type SheetFit, sameFit } from '../interaction/viewFit.ts';
import { isInSight, type ViewName } from '../interaction/views.ts';

/** So near to the edge of the stage a carried thing moves the view on, CSS pixels. */
const EDGE_PX = 30;
/** After it was there for so long: a hand that only passes the edge moves nothing. */
const EDGE_WAITS_SECONDS = 0.3;
const EDGE_PX_A_SECOND = 520;

/** The four ways one can move on, and whether there is bench that way. */
export type Ways = Readonly<Record<'left' | 'up' | 'down' | 'right', boolean>>;
const NO_WAYS: Ways = { left: false, up: false, down: false, right: false };

/** The view of the bench as signals, for the drawing, the mirror over it and the buttons under it alike. */
export class BenchViews {
  private readonly camera = new ViewCamera();
  private host: HTMLElement | null = null;
  private readonly nowFit = signal<SheetFit>(this.camera.fit);
  private readonly goalFit = signal<SheetFit>(this.camera.fit);
  private readonly nowView = signal<ViewName | null>(null);
  private readonly nowWays = signal<Ways>(NO_WAYS);
  /** What a step asks to be touched. */
  private meant: Box | null = null;
  /** It is new, and the view has not been looked over for it. */
  private newlyMeant = false;
  /** Fingers or a button are down on the stage: nothing moves away under them by itself. */
  pressed = false;
  private edgeSince: number | null = null;
  private lastSeconds = 0;

  /** How the sheet lies now. */
  get fit(): ReadonlySignal<SheetFit> {
    return this.nowFit;
  }

  /** How it lies when the move under way is over. */
  get goal(): ReadonlySignal<SheetFit> {
    return this.goalFit;
  }

  /** The named view one is at; null at a place of one's own. */
  get view(): ReadonlySignal<ViewName | null> {
    return this.nowView;
  }

  get ways(): ReadonlySignal<Ways> {
    return this.nowWays;
  }

  get window(): Box {
    return this.camera.window;
  }

  attach(host: HTMLElement | null): void {
    this.host = host;
    this.resize();
  }

  resize(): void {
    if (this.host === null) return;
    this.camera.resize(this.host.clientWidth, this.host.clientHeight);
    this.tell();
  }

  /** Moves to a named view; where what a step asks for lies in it, that is whole in it. */
  go(view: ViewName): void {
    this.camera.go(view, this.meant);
    this.tell();
  }

  /** What a step asks to be touched from now on. Who stands at its view already sees it whole there. */
  mean(box: Box | null): void {
    const before = this.meant;
    this.meant = box;
    const same = before !== null && box !== null && inside(box, before) && inside(before, box);
    if (!same) this.newlyMeant = box !== null;
  }

  /** The view in which lies what a step asks for; null while it is in sight. */
  viewAsked(): ViewName | null {
    const { meant } = this;
    return meant === null || isInSight(meant, this.camera.window) ? null : this.camera.viewFor(meant);
  }

  /** One step closer (1) or further off (-1). */
  step(by: 1 | -1): void {
    this.camera.step(by);
    this.tell();
  }

  stride(way: keyof Ways): void {
    this.camera.stride(
      way === 'left' ? -1 : way === 'right' ? 1 : 0,
      way === 'up' ? -1 : way === 'down' ? 1 : 0,
    );
    this.tell();
  }

  /** Zooms about a place given in client coordinates. */
  zoomAt(factor: number, clientX: number, clientY: number): void {
    this.camera.zoomAt(factor, this.toHost(clientX, clientY));
    this.tell();
  }

  panBy(dx: number, dy: number): boolean {
    const moved = this.camera.panBy(dx, dy);
    if (moved) this.tell();
    return moved;
  }

  show(box: Box): void {
    this.camera.show(box);
    this.tell();
  }

  /** One frame of the move under way. `carried` is where a thing in the hand is, in host pixels. */
  frame(seconds: number, reducedMotion: boolean, carried: Vec | null): void {
    if (this.newlyMeant && !this.pressed) {
      this.newlyMeant = false;
      const { view } = this.camera;
      if (view !== null && this.viewAsked() === view) this.go(view);
    }
    this.carry(carried, seconds, Math.min(0.1, seconds - this.lastSeconds));
    this.lastSeconds = seconds;
    if (this.camera.frame(seconds, reducedMotion)) this.tell();
  }

  toBench(clientX: number, clientY: number): Vec {
    return this.fromHost(this.toHost(clientX, clientY));
  }

  fromHost({ x, y }: Vec): Vec {
    const { scale, offsetX, offsetY } = this.nowFit.peek();
    return { x: (x - offsetX) / scale, y: (y - offsetY) / scale };
  }

  toHostPixels({ x, y }: Vec): Vec {
    const { scale, offsetX, offsetY } = this.nowFit.peek();
    return { x: x * scale + offsetX, y: y * scale + offsetY };
  }

  private toHost(clientX: number, clientY: number): Vec {
    const box = this.host?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  }

  /** A carried thing held at the edge moves the bench along under it. */
  private carry(at: Vec | null, seconds: number, passed: number): void {
    const [width, height] = [this.host?.clientWidth ?? 0, this.host?.clientHeight ?? 0];
    const push = at === null ? { x: 0, y: 0 } : { x: edgePush(at.x, width), y: edgePush(at.y, height) };
    if (push.x === 0 && push.y === 0) {
      this.edgeSince = null;
      return;
    }
    this.edgeSince ??= seconds;
    if (seconds - this.edgeSince < EDGE_WAITS_SECONDS || this.camera.moving) return;
    this.panBy(push.x * EDGE_PX_A_SECOND * passed, push.y * EDGE_PX_A_SECOND * passed);
  }

  private tell(): void {
    const { fit, goal, view } = this.camera;
    const can = (x: -1 | 0 | 1, y: -1 | 0 | 1): boolean => this.camera.canStride(x, y);
    const ways: Ways = { left: can(-1, 0), up: can(0, -1), down: can(0, 1), right: can(1, 0) };
    batch(() => {
      if (!sameFit(fit, this.nowFit.peek())) this.nowFit.value = fit;
      if (!sameFit(goal, this.goalFit.peek())) this.goalFit.value = goal;
      this.nowView.value = view;
      const before = this.nowWays.peek();
      if (Object.entries(ways).some(([way, free]) => before[way as keyof Ways] !== free))
        this.nowWays.value = ways;
    });
  }
}

/** How hard a place pushes on: 1 at the near edge to the far one's -1, nothing in between and nothing outside. */
function edgePush(at: number, size: number): number {
  if (at < 0 || at > size) return 0;
  if (at < EDGE_PX) return 1 - at / EDGE_PX;
  return at > size - EDGE_PX ? -(1 - (size - at) / EDGE_PX) : 0;
}
