/** In which units the page speaks. Inside, everything is SI; only what is shown differs. */
export type UnitSystem = 'us' | 'metric';

/** United States customary until somebody chooses: the command line stays with it. */
let shown: UnitSystem = 'us';

/** Told at every look at the units, so that whoever drew a number can draw it anew in others. */
let heed = (): void => {};

/** Gives the page its chance to notice what it drew in the present units. */
export function heedUnits(noticed: () => void): void {
  heed = noticed;
}

export function displayUnits(): UnitSystem {
  heed();
  return shown;
}

/** Switches the units of everything that is shown from now on. */
export function setDisplayUnits(system: UnitSystem): void {
  shown = system;
}

/** A passage written twice, `[15 inHg|51 kPa]`: US units first. Neither side may be empty of words nor hold another. */
const WRITTEN_TWICE = /\[([^[\]|]+)\|([^[\]|]+)\]/g;

/**
 * A sentence with each of its `[15 inHg|51 kPa]` in the present units. Who writes a sentence rounds for himself: no
 * conversion knows whether 22 inHg is a limit, which must not be rounded up, or a rough aim.
 */
export function inShownUnits(sentence: string): string {
  const side = displayUnits() === 'us' ? 1 : 2;
  return sentence.includes('|')
    ? sentence.replace(WRITTEN_TWICE, (...found: string[]) => found[side] ?? '')
    : sentence;
}
