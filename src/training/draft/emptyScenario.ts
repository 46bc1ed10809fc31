import { writeScenario } from '../scenario/writeScenario.ts';

/** What a new scenario says before its author does, in the author's language. */
export interface StartingWords {
  readonly vehicle: string;
  readonly cautions: readonly string[];
}

/**
 * The text of a scenario that nobody has written yet: every field that must be there, with what will do for most jobs; what only its
 * author can say is empty, and so is told as still to be written. `seed` draws its truck.
 */
export function emptyScenarioText({ vehicle, cautions }: StartingWords, seed: string): string {
  return writeScenario({
    format: 1,
    id: '',
    title: '',
    summary: '',
    mode: 'practice',
    level: 2,
    minutes: 30,
    aims: [''],
    'work-order': {
      number: '',
      vehicle,
      complaint: '',
      history: [],
      codes: [],
      cautions: [...cautions],
    },
    bench: { 'ambient-celsius': 20, 'altitude-metres': 200, 'fuel-percent': 50 },
    seed,
    drives: { cycles: 6, refuelled: false },
    faults: [],
    remark: '',
  });
}
