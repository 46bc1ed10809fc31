/** An event of the browser's own trace, as far as it is used here; times in microseconds. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** Processor time of the thread, where the browser gives it: what other programs take from the machine does not count. */
  readonly tdur?: number;
  readonly tts?: number;
  readonly args?: { readonly name?: string };
}

/** What runs script: everything else a frame takes (style, layout, paint, the compositor) is not the program's own. */
const SCRIPT: ReadonlySet<string> = new Set([
  'FunctionCall',
  'EvaluateScript',
  'v8.compile',
  'v8.evaluateModule',
  'RunMicrotasks',
  'FireAnimationFrame',
  'FireIdleCallback',
  'TimerFire',
  'EventDispatch',
  'HandlePostMessage',
  'ResizeObserver.callback',
  'MinorGC',
  'MajorGC',
]);

const FRAME = 'FireAnimationFrame';

/**
 * Script on the page's main thread, frame by frame, milliseconds. A frame lasts from one animation callback to the next, so that
 * pointer events, messages of the worker and what the panels do in between belong to it; what runs within something that
 * is counted already is not counted twice.
 */
export function scriptPerFrame(events: readonly TraceEvent[]): readonly number[] {
  const frames = events.filter(({ name, ph }) => name === FRAME && ph === 'X');
  const thread = mostOf(frames.map(({ pid, tid }) => `${pid}/${tid}`));
  const ours = events
    .filter(({ name, ph, pid, tid }) => ph === 'X' && SCRIPT.has(name) && `${pid}/${tid}` === thread)
    .sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const starts = frames.filter(({ pid, tid }) => `${pid}/${tid}` === thread).map(({ ts }) => ts);
  starts.sort((a, b) => a - b);
  const spent = new Array<number>(Math.max(0, starts.length - 1)).fill(0);
  let frame = -1;
  let covered = Number.NEGATIVE_INFINITY;
  for (const event of ours) {
    const end = event.ts + (event.dur ?? 0);
    if (event.ts < covered) continue;
    covered = end;
    while (frame + 1 < starts.length && (starts[frame + 1] ?? 0) <= event.ts) frame++;
    if (frame >= 0 && frame < spent.length)
      spent[frame] = (spent[frame] ?? 0) + (event.tdur ?? event.dur ?? 0) / 1000;
  }
  return spent;
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function mostOf(names: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}
