import { TICKS_PER_SECOND } from '../base/ticks.ts';

/** What the loop runs on: the browser's frames, or a test's own. */
export interface FrameSource {
  request(callback: (nowMs: number) => void): number;
  cancel(handle: number): void;
  hidden(): boolean;
}

/** Longest stretch of real time that one frame makes up for, milliseconds. */
const MOST_CATCH_UP_MS = 250;

/**
 * Turns real time into whole ticks. Time that a frame took too long for, or that passed while the page was hidden, is not made up:
 * the sitting pauses. What is left over of a tick is carried to the next frame.
 */
export class FrameLoop {
  private handle: number | null = null;
  private lastMs: number | null = null;
  private rest = 0;

  constructor(
    private readonly source: FrameSource,
    /** `ticks` to let pass now, `seconds` of real time since the loop began. */
    private readonly onFrame: (ticks: number, seconds: number) => void,
  ) {}

  start(): void {
    if (this.handle === null) this.handle = this.source.request(this.frame);
  }

  stop(): void {
    if (this.handle !== null) this.source.cancel(this.handle);
    this.handle = null;
    this.lastMs = null;
  }

  /** The next frame begins a new stretch: call it when the page was hidden or stood still. */
  pause(): void {
    this.lastMs = null;
  }

  private readonly frame = (nowMs: number): void => {
    this.handle = this.source.request(this.frame);
    const passedMs = this.lastMs === null || this.source.hidden() ? 0 : nowMs - this.lastMs;
    this.lastMs = nowMs;
    const exact = (Math.min(Math.max(passedMs, 0), MOST_CATCH_UP_MS) / 1000) * TICKS_PER_SECOND + this.rest;
    const ticks = Math.floor(exact);
    this.rest = exact - ticks;
    this.onFrame(ticks, nowMs / 1000);
  };
}

/** The frames of this page. */
export const pageFrames: FrameSource = {
  request: (callback) => requestAnimationFrame(callback),
  cancel: (handle) => cancelAnimationFrame(handle),
  hidden: () => document.hidden,
};
