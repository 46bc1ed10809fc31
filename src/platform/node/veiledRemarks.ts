import type { Plugin } from 'vite';

const SPANISH_JOBS = 'virtual:spanish-jobs';

/** The words of the jobs in Spanish as the page fetches them: what tells the end of a job behind its veil, the rest as it is. */
export interface JobsInSpanish {
  readonly jobSentences: Readonly<Record<string, string>>;
  readonly veiledSentences: Readonly<Record<string, string>>;
}

/** Gives the page the translated sentences of the jobs, made when they are asked for. */
export function veiledRemarks(make: () => JobsInSpanish): Plugin {
  return {
    name: 'veiled-remarks',
    resolveId: (id) => (id === SPANISH_JOBS ? `\0${SPANISH_JOBS}` : undefined),
    load(id) {
      if (id !== `\0${SPANISH_JOBS}`) return;
      return Object.entries(make())
        .map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`)
        .join('\n');
    },
  };
}
