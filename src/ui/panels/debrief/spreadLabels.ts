/**
 * Heights of labels that want to stand at `wanted` (downwards in any order), moved as little as keeps them `apart` and
 * between `top` and `bottom`.
 */
export function spreadLabels(
  wanted: readonly number[],
  apart: number,
  top: number,
  bottom: number,
): readonly number[] {
  const order = wanted.map((at, index) => ({ at, index })).sort((a, b) => a.at - b.at);
  let least = top;
  for (const label of order) {
    label.at = Math.max(label.at, least);
    least = label.at + apart;
  }
  let most = bottom;
  for (const label of [...order].reverse()) {
    label.at = Math.min(label.at, most);
    most = label.at - apart;
  }
  const at = new Array<number>(wanted.length).fill(0);
  for (const label of order) at[label.index] = label.at;
  return at;
}
