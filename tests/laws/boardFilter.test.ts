import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { type ItemId, TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { itemsInQuestion } from '../../src/training/evidence/itemsInQuestion.ts';
import { type BoardCard, boardCardOf } from '../../src/training/scenario/BoardCard.ts';
import { cardOf } from '../../src/training/scenario/cardOf.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { isJob } from '../../src/training/scenario/modes.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SKILLS, skillsOf } from '../../src/training/scenario/skills.ts';
import { rightVerdicts } from '../../src/training/score/truth.ts';
import { fits, itemsOffered, NO_FILTER, skillsOffered } from '../../src/ui/panels/boardFilter.ts';

const kept = keptTables();
if (!kept.ok) throw new Error(kept.error);
const tables = kept.value;

const jobs: readonly Scenario[] = readdirSync('scenarios')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const loaded = loadScenario(readFileSync(`scenarios/${name}`, 'utf8'), name);
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
    return loaded.value;
  })
  .filter(({ mode }) => isJob(mode));

function boardOf(job: Scenario): BoardCard {
  const inQuestion = itemsInQuestion(job, tables);
  return { ...boardCardOf(cardOf(job)), ...(inQuestion === null ? {} : { inQuestion }) };
}
const all = jobs.map(boardOf);
/** The tables are of one rig: jobs of another stand under no item. */
const cards = all.filter(({ inQuestion }) => inQuestion !== undefined);
const offered = itemsOffered(cards).flatMap(({ items }) => items);
const truthOf = new Map(jobs.map((job) => [job.id, rightVerdicts(job)]));
const isTrue = (card: BoardCard, item: ItemId): boolean =>
  truthOf.get(card.id)?.some((right) => right === item) === true;

describe('a board that is narrowed to an item', () => {
  it('goes by the work order alone: with any other fault in it a job stands under the same items', () => {
    for (const job of jobs) {
      for (const faults of [
        [],
        [{ fault: 'fuse-blown', severity: 0 }],
        [{ fault: 'capsule-torn', severity: 1 }],
      ]) {
        expect(boardOf({ ...job, faults }), job.id).toEqual(boardOf(job));
      }
    }
  });

  it('knows the items of all jobs of the shop’s rig', () => {
    expect(cards.length).toBeGreaterThanOrEqual(20);
  });

  it('leaves every job open: it stands under five items at least, in an order that is the same for all', () => {
    const order: readonly string[] = itemsOffered(cards).flatMap(({ items }) => items);
    for (const { id, inQuestion = [] } of cards) {
      expect(inQuestion.length, id).toBeGreaterThanOrEqual(5);
      const shown = order.filter((item) => inQuestion.some((one) => one === item));
      expect(shown.length, id).toBeGreaterThanOrEqual(4);
    }
    // Were the likeliest, or the true one, put first, its place would tell it.
    const firsts = cards.filter((card) => isTrue(card, (card.inQuestion ?? [])[0] as ItemId)).length;
    expect(firsts / cards.length).toBeLessThan(0.5);
  });

  it('singles out no truth: under every item there are jobs in which it is sound', () => {
    expect(offered.length).toBeGreaterThanOrEqual(12);
    for (const item of offered) {
      const listed = cards.filter((card) => fits(card, { ...NO_FILTER, item }));
      expect(listed.length, item).toBeGreaterThanOrEqual(2);
      expect(listed.filter((card) => !isTrue(card, item)).length, item).toBeGreaterThanOrEqual(1);
    }
  });

  it('does not help who bets on it: the item is the truth in no more of its jobs than the complaint makes it likely, and one', () => {
    for (const item of offered) {
      const listed = cards.filter((card) => fits(card, { ...NO_FILTER, item }));
      const truths = listed.filter((card) => isTrue(card, item)).length;
      expect(truths, item).toBeLessThanOrEqual(Math.max(1, listed.length / 2));
    }
  });

  it('asks after no tool: which of them is bad is never on a work order', () => {
    expect(offered.filter((item) => TOOL_ITEMS.includes(item))).toEqual([]);
  });
});

describe('a board that is narrowed to a skill', () => {
  it('knows one for every job, and every skill has several jobs', () => {
    expect(all.filter(({ aims }) => skillsOf(aims).length === 0).map(({ id }) => id)).toEqual([]);
    expect(skillsOffered(all)).toEqual(SKILLS);
    for (const skill of SKILLS) {
      const listed = all.filter((card) => fits(card, { ...NO_FILTER, skill }));
      expect(listed.length, skill).toBeGreaterThanOrEqual(3);
      expect(listed.length, skill).toBeLessThan(all.length);
    }
  });
});
