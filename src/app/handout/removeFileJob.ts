import type { AppShop } from '../createShop.ts';
import { exportStored } from '../exportStored.ts';
import { holdJob } from '../holdJob.ts';
import type { FileJobs } from './fileJobs.ts';

/**
 * Takes a job of a file off the board. Its sittings stay, an open one put away, and the job with them for their debriefs; or
 * they are exported, and all goes. Gives false where another page has the job open: then nothing is done.
 */
export async function removeFileJob(
  shop: Pick<AppShop, 'store' | 'refresh'>,
  jobs: FileJobs,
  key: string,
  records: 'kept' | 'exported',
): Promise<boolean> {
  const letGo = await holdJob(key);
  if (letGo === null) return false;
  try {
    const job = jobs.all.peek()?.find((each) => each.key === key);
    const sittings = (await shop.store.list()).filter(({ scenario }) => scenario === key);
    for (const sitting of sittings) {
      if (records === 'exported') {
        exportStored(sitting);
        await shop.store.remove(sitting.key);
      } else if (sitting.key === key) {
        const state = sitting.state === 'open' ? 'put-away' : sitting.state;
        await shop.store.put({ ...sitting, key: `${key}@${sitting.savedAtMs}`, state });
        await shop.store.remove(key);
      }
    }
    if (records === 'kept' && sittings.length > 0 && job !== undefined)
      await jobs.put({ ...job, putAway: true });
    else await jobs.remove(key);
    await shop.refresh();
    return true;
  } finally {
    letGo();
  }
}
