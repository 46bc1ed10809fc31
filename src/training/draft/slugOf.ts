const LONGEST = 60;

/** A name for a file made of a title: small letters, digits and single hyphens; empty where nothing of it can be used. */
export function slugOf(title: string): string {
  return title
    .normalize('NFD')
    .toLowerCase()
    .replaceAll(/['\u2019]|\p{M}/gu, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replaceAll(/^-+|-+$/g, '');
}
