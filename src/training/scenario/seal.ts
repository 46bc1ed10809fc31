import { canonicalJson } from '../../base/hash.ts';
import { err, ok, type Result } from '../../base/Result.ts';
import { fromBase64, toBase64 } from './base64.ts';
import { cardOf, sentencesShown } from './cardOf.ts';
import { applyKeystream, asciiBytes, asciiText } from './curtain.ts';
import { hashOfContent } from './hashOfContent.ts';
import { areEmpty, wordsAmong } from './jobTexts.ts';
import type { Scenario, ScenarioContent, ScenarioStep } from './Scenario.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/**
 * A scenario as it is given out with the program: the public card, and the rest behind a curtain.
 *
 * This is a curtain, not a lock. It keeps the answer out of sight of someone who reads the page's source, searches it
 * or decodes it; it does not keep it from someone who runs the program's own code to open it, since the program must
 * be able to run the scenario without a server. What guards a mark is the replay by someone who has the scenario,
 * not this.
 */
export interface SealedScenario {
  readonly card: ScenarioCard;
  readonly sealed: string;
}

export type SealProblem = 'seal-unreadable' | 'seal-does-not-match';

export function sealScenario(scenario: Scenario): SealedScenario {
  const bytes = asciiBytes(canonicalJson(behindCurtain(scenario)));
  applyKeystream(bytes, (scenario.variant ?? scenario).contentHash);
  return { card: cardOf(scenario), sealed: toBase64(bytes) };
}

/** What the card does not show. The rest is not sealed a second time: sealed text cannot be packed for the way. */
interface BehindCurtain
  extends Pick<
    ScenarioContent,
    | 'format'
    | 'bench'
    | 'seed'
    | 'drives'
    | 'faults'
    | 'variants'
    | 'rulesOff'
    | 'rulesOn'
    | 'remark'
    | 'words'
  > {
  /** The test of each step's being done, in the order of the card's steps. */
  readonly done: readonly ScenarioStep['done'][];
}

function behindCurtain(scenario: Scenario): BehindCurtain {
  const { format, bench, seed, seedPolicy, drives, faults, variants, rulesOff, rulesOn, remark, steps } =
    scenario;
  const done = steps.map((step) => step.done);
  const shown = new Set(sentencesShown(scenario));
  const hidden = wordsAmong([scenario.words], (sentence) => !shown.has(sentence));
  return {
    format,
    bench,
    seed,
    ...(seedPolicy === undefined ? {} : { seedPolicy }),
    drives,
    faults,
    ...(variants === undefined ? {} : { variants }),
    rulesOff,
    ...(rulesOn === undefined ? {} : { rulesOn }),
    remark,
    ...(areEmpty(hidden) ? {} : { words: hidden }),
    done,
  };
}

function withCard(card: ScenarioCard, { done, ...behind }: BehindCurtain): ScenarioContent {
  const { contentHash: _hash, drawn: _drawn, variant: _variant, words: _words, steps, ...shown } = card;
  const { words: _hidden, ...rest } = behind;
  const words = wordsAmong([card.words, behind.words]);
  return {
    ...shown,
    ...rest,
    ...(areEmpty(words) ? {} : { words }),
    // A step without its test does not match the hash.
    steps: steps.map((step, index) => ({ ...step, done: done[index] as ScenarioStep['done'] })),
  };
}

/** Errors: `seal-unreadable` when the text is damaged, `seal-does-not-match` when its content is not the card's. */
export function openSealed({ card, sealed }: SealedScenario): Result<Scenario, SealProblem> {
  const bytes = fromBase64(sealed);
  if (bytes === null) return err('seal-unreadable');
  const { contentHash } = card.variant ?? card;
  applyKeystream(bytes, contentHash);
  let content: ScenarioContent;
  try {
    content = withCard(card, JSON.parse(asciiText(bytes)) as BehindCurtain);
    if (hashOfContent(content) !== contentHash) return err('seal-does-not-match');
  } catch {
    return err('seal-unreadable');
  }
  // The hash covers every byte of the content, so what matches it is what the loader checked when it was sealed.
  return ok({
    ...content,
    contentHash: card.contentHash,
    ...(card.variant === undefined ? {} : { variant: card.variant }),
  });
}
