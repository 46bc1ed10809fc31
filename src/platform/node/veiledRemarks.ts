import type { Plugin } from 'vite';

const SPANISH_BOARD = 'virtual:spanish-board';
const SPANISH_JOBS = 'virtual:spanish-jobs';

type Sentences = Readonly<Record<string, string>>;

/** The words of the jobs in Spanish as the page fetches them. */
export interface JobsInSpanish {
  /** What the board says of the jobs. */
  readonly onTheBoard: Sentences;
  /** What is said once a job is open. */
  readonly inAJob: Sentences;
  /** What tells the end of a job, behind its veil. */
  readonly veiled: Sentences;
}

/** Gives the page the translated sentences of the jobs, made when they are asked for. */
export function veiledRemarks(make: () => JobsInSpanish): Plugin {
  const modules: Readonly<Record<string, () => Readonly<Record<string, Sentences>>>> = {
    [SPANISH_BOARD]: () => ({ boardSentences: make().onTheBoard }),
    [SPANISH_JOBS]: () => {
      const { inAJob, veiled } = make();
      return { jobSentences: inAJob, veiledSentences: veiled };
    },
  };
  return {
    name: 'veiled-remarks',
    resolveId: (id) => (id in modules ? `\0${id}` : undefined),
    load(id) {
      const exported = modules[id.replace('\0', '')];
      if (exported === undefined || !id.startsWith('\0')) return;
      return Object.entries(exported())
        .map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`)
        .join('\n');
    },
  };
}
