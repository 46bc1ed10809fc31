import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

type Fetch<Props> = () => Promise<ComponentType<Props>>;

const all: (() => Promise<unknown>)[] = [];

/**
 * A part of a screen whose code is fetched when it is first shown, or ahead of that by `fetchLater`. Until it is there
 * nothing stands in its place; once it was fetched it is drawn at once. A fetch that failed is tried again at the next showing.
 */
export function later<Props extends object>(fetch: Fetch<Props>): ComponentType<Props> {
  let here: ComponentType<Props> | null = null;
  let coming: Promise<void> | null = null;
  const come = (): Promise<void> => {
    coming ??= fetch().then(
      (part) => {
        here = part;
      },
      (error: unknown) => {
        coming = null;
        throw error;
      },
    );
    return coming;
  };
  all.push(come);
  return function Later(props: Props) {
    const [, drawAgain] = useState(0);
    useEffect(() => {
      // What cannot be fetched is told by whoever listens for errors of the page.
      if (here === null) void come().then(() => drawAgain(1));
    }, []);
    const Part = here;
    return Part === null ? null : <Part {...props} />;
  };
}

let begin = (): void => {};
/** Settles when the bench stands and things are fetched ahead of their use. */
export const aheadOfUse = new Promise<void>((resolve) => {
  begin = resolve;
});

/** Fetches everything that has not been shown yet, one after the other, so that it opens at once. */
export async function fetchLater(): Promise<void> {
  begin();
  for (const come of all) await come().catch(() => {});
}
