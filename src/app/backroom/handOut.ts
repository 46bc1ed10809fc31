import { download } from '../../platform/browser/download.ts';
import { noteTried } from '../../platform/browser/triedDraft.ts';
import { JOB_FILE_ENDING } from '../../training/handout/JobFile.ts';
import { sealedFileSteps } from '../../training/handout/sealedFileOf.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import type { HandedOut, HandOutWish } from '../../ui/backroom/HandOutDialog.tsx';
import type { AppShop } from '../createShop.ts';
import { fileJobOf } from '../handout/fileJobOf.ts';
import { inSlices } from '../inSlices.ts';

/** Saves a draft in order as the file that learners get. Null where it cannot be sealed. */
export async function handOut(
  text: string,
  scenario: Scenario,
  wish: HandOutWish,
): Promise<HandedOut | null> {
  const { id, contentHash } = scenario;
  if (wish.kind === 'readable') {
    const file = `${id}.yaml`;
    download(file, text, 'application/yaml');
    return { file, contentHash, code: null };
  }
  const file = `${id}${JOB_FILE_ENDING}`;
  const { code, seats } = wish;
  const sealed = await inSlices(
    sealedFileSteps(text, file, {
      ...(code === null ? {} : { classCode: code }),
      ...(seats === null ? {} : { seats }),
    }),
  );
  if (!sealed.ok) return null;
  download(file, sealed.value);
  return { file, contentHash, code };
}

/** Puts a draft on the job board as a learner would who opened its file, and opens it. */
export async function tryAsLearner(scenario: Scenario, draft: string, shop: AppShop): Promise<void> {
  const job = fileJobOf(scenario, null, Date.now());
  await shop.jobs.put(job);
  noteTried(job.key, draft);
  shop.toJob(job.key);
}

/** A class code that nobody can guess, easy to read out: no letter that looks or sounds like another. */
export function drawnCode(random: (count: number) => Uint32Array = chance): string {
  const letters = [...random(16)].map((word) => LETTERS[word % LETTERS.length] ?? '');
  return [0, 4, 8, 12].map((at) => letters.slice(at, at + 4).join('')).join('-');
}

const LETTERS = 'ACEFHKLMNPRTUWXY3479';

function chance(count: number): Uint32Array {
  return crypto.getRandomValues(new Uint32Array(count));
}
