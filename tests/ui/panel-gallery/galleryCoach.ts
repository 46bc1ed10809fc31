import { COACH_DEPTHS } from '../../../src/training/sitting/SittingAction.ts';
import type { CoachState } from '../../../src/ui/panels/Desk.ts';

/** The coach as the address has it: `question`, `test`, `procedure`, `stale`, `repeat`, `decide`, `repair`, `thinking`, `off`. */
export function galleryCoach(name: string | null): CoachState {
  const advice = { kind: 'do-test', test: 'hold-capped' } as const;
  const depth = COACH_DEPTHS.find((one) => one === name);
  if (depth !== undefined) return { kind: 'says', depth, advice, entries: 6 };
  switch (name) {
    case 'stale':
      return { kind: 'says', depth: 'test', advice, entries: 4 };
    case 'repeat':
      return {
        kind: 'says',
        depth: 'test',
        advice: { kind: 'repeat-test', test: 'jumper-clicks', done: 3, of: 9 },
        entries: 6,
      };
    case 'decide':
      return { kind: 'says', depth: 'procedure', advice: { kind: 'decide' }, entries: 6 };
    case 'repair':
      return { kind: 'says', depth: 'procedure', advice: { kind: 'prove-repair' }, entries: 6 };
    case 'thinking':
      return { kind: 'thinking', depth: 'question' };
    case 'off':
      return { kind: 'off' };
    default:
      return { kind: 'silent' };
  }
}
