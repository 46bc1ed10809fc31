/** Three multipliers and two adders; X = A·C, Y = B·D, Z = C·E, F = X + Y, G = Y + Z, with A = 3, B = 2, C = 2, D = 3, E = 3. */
export type PolyboxPart = 'M1' | 'M2' | 'M3' | 'A1' | 'A2';

/** What alone explains F = 10 where 12 was due: the smallest diagnoses, found by trying each part with any output. */
export const POLYBOX_DIAGNOSES: readonly PolyboxPart[] = (['M1', 'M2', 'M3', 'A1', 'A2'] as const).filter(
  (part) => {
    // A part that is broken may put out anything: is there a value for which F comes out as 10?
    for (let output = -30; output <= 30; output++) if (solve(part, output).F === 10) return true;
    return false;
  },
);

/** What a probe would show if this part alone were broken so that F is 10. */
export function polyboxValue(probe: 'X' | 'Y' | 'Z' | 'G' | 'A' | 'F', broken: PolyboxPart): number {
  for (let output = -30; output <= 30; output++) {
    const values = solve(broken, output);
    if (values.F === 10) return values[probe];
  }
  throw new Error(`${broken} alone cannot explain it`);
}

function solve(broken: PolyboxPart, output: number): Record<'X' | 'Y' | 'Z' | 'G' | 'A' | 'F', number> {
  const part = (name: PolyboxPart, sound: number): number => (name === broken ? output : sound);
  const X = part('M1', 3 * 2);
  const Y = part('M2', 2 * 3);
  const Z = part('M3', 2 * 3);
  return { A: 3, X, Y, Z, F: part('A1', X + Y), G: part('A2', Y + Z) };
}
