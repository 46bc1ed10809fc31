import type { HappeningKind, Observation } from '../sim/world/Observation.ts';
import { describeHappening } from '../text/describeHappening.ts';

/** What is more than a sound of the work: something broke, burnt, was lost, or came to be seen. */
const EVENTS: ReadonlySet<HappeningKind> = new Set<HappeningKind>([
  'spark',
  'fuse-pop',
  'barb-cracked',
  'water-lost',
  'smoke-seen',
  'crack-heard',
  'lead-burnt',
]);

/** Finds the events of a sitting as they come, each told once. What was there at the first look is old. */
export class BenchEvents {
  private last: number | null = null;

  /** The sentences of what happened since the last look, or null. */
  since({ happenings }: Observation): string | null {
    const newest = happenings[happenings.length - 1]?.id ?? 0;
    const last = this.last ?? newest;
    this.last = newest;
    if (newest <= last) return null;
    const fresh = happenings.filter(({ id, kind }) => id > last && EVENTS.has(kind));
    if (fresh.length === 0) return null;
    return [...new Set(fresh.map(describeHappening))].join(' ');
  }
}
