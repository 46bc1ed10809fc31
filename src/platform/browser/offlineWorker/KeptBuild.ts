/** The build that a worker keeps: written into it when the build is finished. */
export interface KeptBuild {
  readonly version: string;
  /** The script its page starts with. Two builds with the same one can answer for each other's pages. */
  readonly page: string;
  /** Every file, with its content's hash in the form of Subresource Integrity. */
  readonly files: readonly (readonly [path: string, integrity: string])[];
}

/** Caches and claims belong to everything of one origin, so each name holds the folder that the program lies in. */
export function cachePrefix(scope: string): string {
  return `known-good:${new URL(scope).pathname}:`;
}

/** The claim that every page holds, shared with others of its build, for as long as it is open. */
export function pageClaim(scope: string, pageScript: string): string {
  return `${pageClaimPrefix(scope)}${pageScript}`;
}

export function pageClaimPrefix(scope: string): string {
  return `known-good-page:${new URL(scope).pathname}:`;
}

/** What a page says to a worker. */
export type WordToWorker =
  /** This page is open, its claim held: what no open page needs may go. */
  | { readonly kind: 'page-open' }
  /** The user asked for the version that waits. */
  | { readonly kind: 'take-over' };
