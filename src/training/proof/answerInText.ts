import { faultById } from '../../sim/faults/catalogue.ts';
import { JOB_LANGUAGES } from '../scenario/jobTexts.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { TEXT_PLACES, type TextPlace } from './ScenarioProof.ts';
import { SPANISH_BEGINNINGS } from './spanishFaultWords.ts';

/** Words of a fault's name that are in every other sentence of the trade, so that they give nothing away by themselves. */
const COMMON_WORDS = new Set(['to', 'of', 'in', 'off', 'the', 'low', 'high']);

/**
 * Texts before the verdict in which all words of a fault's name stand: "the capsule is torn" tells `capsule-torn`, and so does "la
 * cápsula está rota", in whatever language of the file. It finds the plain slip, not every hint.
 */
export function answersInText(
  scenario: Scenario,
): readonly { readonly where: TextPlace; readonly fault: string }[] {
  return TEXT_PLACES.flatMap((where) => {
    const told = inEveryLanguage(scenario, textsAt(scenario, where));
    return scenario.faults
      .filter(({ fault }) => told.some((text) => tells(text, fault)))
      .map(({ fault }) => ({ where, fault }));
  });
}

function tells(text: string, fault: string): boolean {
  const name = wordsOf(faultById(fault)?.id ?? '').filter((word) => !COMMON_WORDS.has(word));
  if (name.length === 0) return false;
  const plain = withoutMarks(text);
  const words = new Set(wordsOf(plain));
  return name.every((word) => words.has(word)) || name.every((word) => hasInSpanish(plain, word));
}

function hasInSpanish(text: string, word: string): boolean {
  const beginnings = SPANISH_BEGINNINGS[word] ?? [];
  return beginnings.some((beginning) => ` ${text}`.includes(` ${beginning}`));
}

/** Texts that stand together, in each language of the file. */
function inEveryLanguage({ words }: Scenario, sentences: readonly string[]): readonly string[] {
  const inOther = JOB_LANGUAGES.map((language) => {
    const table = new Map(words?.[language] ?? []);
    return sentences.flatMap((sentence) => table.get(sentence) ?? []);
  });
  return [sentences, ...inOther].map((each) => each.join(' '));
}

function textsAt(scenario: Scenario, where: TextPlace): readonly string[] {
  switch (where) {
    case 'id':
    case 'title':
    case 'summary':
    case 'seed':
      return [scenario[where]];
    case 'aims':
      return scenario.aims;
    case 'complaint':
      return [scenario.workOrder.complaint];
    case 'history':
      return scenario.workOrder.history;
  }
}

/** Small letters without their marks, all else a blank. */
function withoutMarks(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, ' ');
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[a-z0-9]+/g) ?? [];
