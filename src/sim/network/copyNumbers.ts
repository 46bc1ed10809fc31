/** Copies as many numbers as `to` holds. For the few dozen of a network it is done sooner than the engine's own `set`. */
export function copyNumbers(to: Float64Array, from: Float64Array): void {
  for (let i = 0; i < to.length; i++) to[i] = from[i] as number;
}
