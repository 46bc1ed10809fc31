/** What pages say to each other about a claim. */
interface Word {
  readonly claim: string;
  /** Tells one page from another. */
  readonly from: string;
  readonly kind: 'who-has-it' | 'it-is-mine';
}

const CHANNEL = 'known-good-claims';
/** A page that holds a claim answers within this, even one behind others. */
const ANSWER_MS = 400;
/** It is waited for in so many steps: a page that was held up for longer hears what came meanwhile before it counts on. */
const STEPS = 8;

/**
 * A claim among the pages of one browser without its locks: whoever wants it asks, and takes it when nobody answers. Gives a
 * function that lets it go, or null when another page still answers after `patienceMs`. Where pages cannot speak to each other
 * every claim succeeds.
 */
export async function askAround(claim: string, patienceMs: number): Promise<(() => void) | null> {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel(CHANNEL);
  const from = [...crypto.getRandomValues(new Uint32Array(2))].join('-');
  const say = (kind: Word['kind']): void => channel.postMessage({ claim, from, kind } satisfies Word);
  let mine = false;
  let answered = false;
  channel.addEventListener('message', ({ data }: MessageEvent<Word>) => {
    if (data.claim !== claim) return;
    if (data.kind === 'it-is-mine') answered = true;
    // Of two that ask at the same moment the one with the smaller name has it. The other gives way by itself: it may have asked
    // before there was anybody to hear it.
    else if (mine || from < data.from) say('it-is-mine');
    else answered = true;
  });
  const tries = Math.max(1, Math.floor(patienceMs / ANSWER_MS));
  for (let i = 0; i < tries && !mine; i++) {
    answered = false;
    say('who-has-it');
    for (let step = 0; step < STEPS; step++) {
      await new Promise((resolve) => setTimeout(resolve, ANSWER_MS / STEPS));
    }
    mine = !answered;
  }
  if (mine) return () => channel.close();
  channel.close();
  return null;
}
