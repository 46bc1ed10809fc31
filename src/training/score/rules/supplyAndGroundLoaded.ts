import { SUPPLY_ITEMS } from '../../evidence/supplyItems.ts';
import { entriesWhere, isLoaded, readsFeed, readsGround } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * Feed and ground were read at the plug while the solenoid carried its current. The occasion is suspecting a circuit:
 * a reading of either was taken, or the verdict names one.
 */
export const supplyAndGroundLoaded: MethodRule = ({ moments, log, verdict }) => {
  const before = moments.filter(({ tick }) => tick <= verdict.tick);
  const feed = before.filter(({ seen }) => readsFeed(seen));
  const ground = before.filter(({ seen }) => readsGround(seen));
  if (feed.length === 0 && ground.length === 0 && !SUPPLY_ITEMS.has(verdict.item)) return NO_OCCASION;
  const loadedFeed = feed.find(({ seen }) => isLoaded(seen));
  const loadedGround = ground.find(({ seen }) => isLoaded(seen));
  if (loadedFeed === undefined || loadedGround === undefined) return missed();
  const shown = entriesWhere(log, ({ seen }) => isLoaded(seen) && (readsFeed(seen) || readsGround(seen)));
  return kept([loadedFeed.tick, loadedGround.tick], shown);
};
