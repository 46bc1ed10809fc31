import type { Tick } from '../../../base/ticks.ts';
import type { ExaminedPlace } from '../../../sim/devices/places.ts';
import type { ItemChance } from '../../evidence/EvidenceFacts.ts';
import { priceOf } from '../../sitting/book.ts';
import type { VerdictItem } from '../../sitting/SittingAction.ts';
import type { JudgedJob } from '../JudgedJob.ts';
import { trialFits } from '../trialFits.ts';
import { kept, type MethodRule, missedOn, NO_OCCASION } from './RuleFinding.ts';

/** As likely as this after the complaint is likely, and a part for as little as this is cheap, dollars. */
const LIKELY = 0.05;
const CHEAP = 40;
/** An item whose chance what was shown has halved has been checked. */
const CHECKED_SHARE = 0.5;

/** Where an eye goes for an item; a look takes a minute. */
const LOOKED_AT: Readonly<Partial<Record<VerdictItem, ExaminedPlace>>> = {
  fuse: 'fuse',
  plug: 'plug',
  'filler-cap': 'filler-cap',
  'canister-hose': 'canister-hose',
  'air-hose': 'air-hose',
  'engine-hose': 'engine-hose',
  filter: 'filter',
  'feed-wire': 'harness',
  'ground-wire': 'harness',
  'sense-wire': 'harness',
};

/**
 * What is likely and cheap was checked before the verdict fell on something dearer, or the known-good unit was put on the
 * truck. Checked is what was looked at, and what the readings speak against: so the history on a work order counts when
 * its proof was seen. The occasion is a likely item that costs less than the one that was named.
 */
export const cheapCheckedFirst: MethodRule = (job) => {
  const { verdict, evidence } = job;
  const dearer = verdict.item === 'nothing-wrong' ? CHEAP + 1 : priceOf(verdict.item);
  const asked = (evidence.steps[0]?.items ?? []).filter(({ item, chance }) => {
    if (item === 'nothing-wrong' || evidence.verdict.group.includes(item)) return false;
    return chance >= LIKELY && priceOf(item) <= CHEAP && priceOf(item) < dearer;
  });
  if (asked.length === 0) return NO_OCCASION;
  const deadline = Math.min(verdict.tick, trialFits(job)[0] ?? verdict.tick);
  const left = asked.filter(
    (item) => !wasLookedAt(job, item, deadline) && !isUnlikelier(job, item, deadline),
  );
  return left.length > 0
    ? missedOn(left.map(({ item }) => item))
    : kept([deadline], looks(job, asked, deadline));
};

function wasLookedAt(job: JudgedJob, item: ItemChance, until: Tick): boolean {
  return looks(job, [item], until).length > 0;
}

function looks({ log }: JudgedJob, items: readonly ItemChance[], until: Tick): readonly number[] {
  const places = items.map(({ item }) => LOOKED_AT[item]);
  return log.flatMap(({ id, tick, about, seen }) => {
    const finding = about === 'finding' ? seen.findings.at(-1) : undefined;
    if (finding === undefined || tick > until || finding.signs.includes('not-seen')) return [];
    return places.includes(finding.at) ? [id] : [];
  });
}

/** What had been shown by then has at least halved its chance. */
function isUnlikelier({ evidence }: JudgedJob, { item, chance }: ItemChance, until: Tick): boolean {
  const step = evidence.steps.filter(({ tick }) => tick <= until).at(-1);
  const left = step?.items.find((one) => one.item === item)?.chance ?? chance;
  return left <= CHECKED_SHARE * chance;
}
