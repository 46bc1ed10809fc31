import { ITEMS, type ItemId } from '../../sim/devices/items.ts';
import { FIRST_RIG } from '../../sim/rigs/rigs.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { Posterior } from './Posterior.ts';
import { priorOfJob } from './priorOfJob.ts';

/** A complaint puts an item in question that it leaves so much, and the likeliest few whatever they have. */
const LEAST_CHANCE = 0.04;
const LEAST_ITEMS = 5;

/**
 * Items of the truck that a job's work order puts in question: what a learner may have to prove there. It goes by what is written on
 * the order and by the tables, and never looks at the faults; so a board that is narrowed by it says nothing that the order
 * does not. In the order of all items, for which of them is the likeliest is for the learner to find out. Null where the
 * tables are of another rig.
 */
export function itemsInQuestion(
  job: Pick<Scenario, 'workOrder' | 'drives' | 'rig'>,
  tables: EvidenceTables,
): readonly ItemId[] | null {
  if ((job.rig ?? FIRST_RIG) !== (tables.environment.rig ?? FIRST_RIG)) return null;
  const posterior = new Posterior(tables.suspects, [], priorOfJob(job, tables), []);
  const sorted = ITEMS.map((item) => ({ item, chance: posterior.ofItem(item) }))
    .filter(({ chance }) => chance > 0)
    .sort((one, other) => other.chance - one.chance);
  const asked = sorted.filter(({ chance }, i) => chance >= LEAST_CHANCE || i < LEAST_ITEMS);
  return ITEMS.filter((item) => asked.some((one) => one.item === item));
}
