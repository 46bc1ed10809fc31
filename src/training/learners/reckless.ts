import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { putTogether, renew } from './fitting.ts';
import { hastyTests } from './hasty.ts';
import type { Learner } from './Learner.ts';
import type { LearnersBench } from './LearnersBench.ts';
import { drive } from './repair.ts';
import { Technician } from './Technician.ts';
import { modeOf } from './verdict.ts';

/** The right tests, and between them what hurts people: a source without a fuse, a live plug, shop air for smoke. */
export const reckless: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  feedUnfused(bench);
  const cites = hastyTests(hands);
  blowShopAir(bench);
  const item = hands.beliefs.posterior.leading().item as VerdictItem;
  bench.do({ kind: 'give-verdict', item, mode: modeOf(hands.beliefs, item), cites });
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) renew(bench, item);
  drive(bench, 1);
  bench.do({ kind: 'close-job' });
};

/** Parts the plug with the key on and feeds the coil by a plain lead straight from the battery. */
function feedUnfused(bench: LearnersBench): void {
  bench.do(
    { kind: 'set-key', position: 'on' },
    { kind: 'part-plug' },
    { kind: 'place-lead', end: 'plain-b', point: 'unit-1' },
    { kind: 'place-lead', end: 'plain-a', point: 'battery-positive' },
  );
  bench.wait(2);
  bench.do(
    { kind: 'lift-lead', end: 'plain-a' },
    { kind: 'lift-lead', end: 'plain-b' },
    { kind: 'mate-plug' },
    { kind: 'set-key', position: 'off' },
  );
}

const HIGH_PA = 7000;

/** Smoke with shop air, and more of it than tank and canister bear. */
function blowShopAir(bench: LearnersBench): void {
  const { hose, end } = bench.see().surface.spoiledBy;
  bench.do(
    { kind: 'take-off', item: hose },
    { kind: 'fit', item: 'smoke-hose', site: end },
    { kind: 'set-smoke', gas: 'shop-air', pa: HIGH_PA },
  );
  bench.wait(20);
  bench.do({ kind: 'set-smoke', gas: 'off', pa: 0 }, { kind: 'take-off', item: 'smoke-hose' });
  putTogether(bench);
}
