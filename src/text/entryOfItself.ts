import { unreachable } from '../base/assert.ts';
import type { DriveCycle, Finding, Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { distance, fixed } from './format.ts';
import { say } from './translate.ts';

/** What and value of an entry that wrote itself down; null for the learner's own readings. */
export function writtenByItself({ about, seen }: LogEntry): { what: string; value: string } | null {
  switch (about) {
    case 'reading':
      return null;
    case 'codes':
      return { what: say('log.codesRead'), value: codesWords(seen.reader.codes) };
    case 'finding': {
      const finding = seen.findings.at(-1);
      return finding === undefined ? null : { what: findingWhat(finding), value: signsWords(finding) };
    }
    case 'drive':
      return { what: driveWhat(seen), value: driveWords(seen) };
    default:
      return unreachable(about);
  }
}

/** `P0456 stored, P0442 pending`, or that there is none. */
export function codesWords(codes: Observation['reader']['codes']): string {
  if (codes.length === 0) return say('log.noCodes');
  return codes.map(({ code, status }) => `${code} ${say(`codeStatus.${status}`)}`).join(', ');
}

/** Where eyes, ears or hands went. */
export function findingWhat({ how, at, cavity }: Finding): string {
  return say(`findingHow.${how}`, { place: say(`examined.${at}`), cavity: cavity ?? '' });
}

/** What they found there; what would help, where nothing could be seen. */
export function signsWords({ at, signs }: Finding): string {
  return signs.map((sign) => (sign === 'not-seen' ? notSeen(at) : say(`signs.${sign}`))).join(', ');
}

function notSeen(at: Finding['at']): string {
  switch (at) {
    case 'plug':
    case 'fuse':
    case 'tank':
      return say(`notSeen.${at}`);
    default:
      return say('signs.not-seen');
  }
}

function driveWhat({ lastDrive }: Observation): string {
  return say('log.driven', {
    count: lastDrive?.cycles.length ?? 0,
    distance: distance(lastDrive?.miles ?? 0),
  });
}

/** How often each outcome came, with what the last cycle in which the monitor ran brought. */
function driveWords({ lastDrive }: Observation): string {
  const cycles = lastDrive?.cycles ?? [];
  const told = cycles.filter(({ outcome }) => outcome !== 'not-run').at(-1) ?? cycles.at(-1);
  if (told === undefined) return say('log.noCodes');
  const counts = new Map<DriveCycle['outcome'], number>();
  for (const { outcome } of cycles) counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  const outcomes = [...counts].map(([outcome, times]) =>
    counts.size === 1 ? say(`driveOutcomes.${outcome}`) : `${say(`driveOutcomes.${outcome}`)} ×${times}`,
  );
  return [...outcomes, ...cycleDetails(told)].join(', ');
}

/** What one drive cycle brought: `monitor failed, P0456, 53 strokes, held 28 s`. */
export function cycleWords(cycle: DriveCycle): string {
  return [say(`driveOutcomes.${cycle.outcome}`), ...cycleDetails(cycle)].join(', ');
}

function cycleDetails({ codes, strokes, holdSeconds }: DriveCycle): string[] {
  return [
    ...codes,
    ...(strokes > 0 ? [say('log.strokes', { count: strokes })] : []),
    ...(holdSeconds === null ? [] : [say('log.held', { seconds: fixed(holdSeconds, 1) })]),
  ];
}
