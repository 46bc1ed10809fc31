import { MAX_CITATIONS } from '../../training/sitting/mayAct.ts';

/** Entries chosen as proof, after one was ticked or its tick taken off. A ninth is not taken. */
export function toggledCite(cites: readonly number[], id: number): readonly number[] {
  if (cites.includes(id)) return cites.filter((cited) => cited !== id);
  return isFull(cites) ? cites : [...cites, id];
}

export function isFull(cites: readonly number[]): boolean {
  return cites.length >= MAX_CITATIONS;
}

/** In the order of the log, as a record keeps them. */
export function inLogOrder(cites: readonly number[]): readonly number[] {
  return [...cites].sort((a, b) => a - b);
}
