import { Random } from '../../base/Random.ts';
import type { Rig } from './Rig.ts';

/** One draw of the stream that everything intermittent draws from; none is made where there is no chance. */
export function trial(rig: Rig, chance: number): boolean {
  if (chance <= 0) return false;
  const random = Random.restore(rig.state.trials);
  const comesUp = random.next() < chance;
  rig.state.trials = random.state;
  return comesUp;
}
