import type { EvidenceFacts, ItemChance } from '../training/evidence/EvidenceFacts.ts';
import { chance, listed } from './chance.ts';
import { tenths } from './format.ts';
import { say } from './translate.ts';

/** Chances below this are not worth a word. */
const WORTH_SAYING = 0.05;
const MOST_SAID = 3;
/** Chances of items that sum to more than this look wrong unless it is said why. */
const MORE_THAN_ALL = 1.01;
/** A tool likelier bad than this is in doubt; any tool that nobody proved is bad in a few cases of a hundred. */
const TOOL_IN_DOUBT = 0.1;

/** What the evidence left when the verdict was given, beside the named item's chances, in plain sentences. */
export function describeKnown(evidence: EvidenceFacts): readonly string[] {
  const { verdict, settling } = evidence;
  const last = evidence.steps.at(-1);
  const sentences: string[] = [];
  if (verdict.group.length > 1)
    sentences.push(
      say('knew.group', { items: listed(verdict.group.map((item) => say(`theItems.${item}`))) }),
    );
  const likely = [...(last?.items ?? [])]
    .filter((each) => each.chance >= WORTH_SAYING)
    .sort((a, b) => b.chance - a.chance)
    .slice(0, MOST_SAID);
  if (likely.length > 0) sentences.push(say('knew.best', { items: withChances(likely) }));
  if (likely.reduce((sum, each) => sum + each.chance, 0) > MORE_THAN_ALL) sentences.push(say('knew.over'));
  const doubtful = (last?.tools ?? []).filter((tool) => tool.chance > TOOL_IN_DOUBT);
  if (doubtful.length > 0) sentences.push(say('knew.tools', { tools: withChances(doubtful) }));
  if (settling === null) return [...sentences, say('knew.settled')];
  return [
    ...sentences,
    say('knew.settling', {
      test: say(`standardTests.list.${settling.test}.name`),
      minutes: tenths(settling.minutes),
    }),
    say('knew.settlingProves', { proves: say(`standardTests.list.${settling.test}.proves`) }),
  ];
}

function withChances(items: readonly ItemChance[]): string {
  return listed(
    items.map(({ item, chance: of }) =>
      say('knew.bestOne', { item: say(`theItems.${item}`), chance: chance(of) }),
    ),
  );
}
