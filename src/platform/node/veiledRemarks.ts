import type { Plugin } from 'vite';

const SPANISH_BOARD = 'virtual:spanish-board';
const SPANISH_JOBS = 'virtual:spanish-jobs';
const SPANISH_JOB = 'virtual:spanish-job/';
/** A job that is none of the shop's may still say some of their sentences. */
const ALL = '*';

type Sentences = Readonly<Record<string, string>>;

/** What is said once a job is open, in Spanish. */
export interface JobInSpanish {
  readonly said: Sentences;
  /** What tells the end of a job, behind its veil. */
  readonly veiled: Sentences;
}

/** The words of the jobs in Spanish as the page fetches them. */
export interface JobsInSpanish {
  /** What the board says of the jobs. */
  readonly onTheBoard: Sentences;
  /** By id, what each says once it is open. */
  readonly jobs: ReadonlyMap<string, JobInSpanish>;
}

/** Gives the page the translated sentences of the jobs, made when they are asked for: each job's in a module of its own. */
export function veiledRemarks(make: () => JobsInSpanish): Plugin {
  return {
    name: 'veiled-remarks',
    resolveId: (id) =>
      id === SPANISH_BOARD || id.startsWith(SPANISH_JOB.slice(0, -1)) ? `\0${id}` : undefined,
    load(id) {
      const asked = id.slice(1);
      if (!id.startsWith('\0virtual:spanish-')) return;
      const { onTheBoard, jobs } = make();
      if (asked === SPANISH_BOARD) return `export const boardSentences = ${JSON.stringify(onTheBoard)};`;
      if (asked === SPANISH_JOBS) return fetchersOf([...jobs.keys()]);
      const name = asked.slice(SPANISH_JOB.length);
      const job = name === ALL ? together([...jobs.values()]) : jobs.get(name);
      if (job === undefined) this.error(`no scenario has the id of ${asked}`);
      return [
        `export const jobSentences = ${JSON.stringify(job.said)};`,
        `export const veiledSentences = ${JSON.stringify(job.veiled)};`,
      ].join('\n');
    },
  };
}

function fetchersOf(ids: readonly string[]): string {
  const fetcher = (id: string): string => `() => import(${JSON.stringify(SPANISH_JOB + id)})`;
  return [
    `export const jobFetchers = { ${ids.map((id) => `${JSON.stringify(id)}: ${fetcher(id)}`).join(', ')} };`,
    `export const allJobs = ${fetcher(ALL)};`,
  ].join('\n');
}

function together(jobs: readonly JobInSpanish[]): JobInSpanish {
  return {
    said: Object.assign({}, ...jobs.map(({ said }) => said)),
    veiled: Object.assign({}, ...jobs.map(({ veiled }) => veiled)),
  };
}
