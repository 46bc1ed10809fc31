import { faultById } from '../../sim/faults/catalogue.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { TEXT_PLACES, type TextPlace } from './ScenarioProof.ts';

/** Words of a fault's name that are in every other sentence of the trade, so that they give nothing away by themselves. */
const COMMON_WORDS = new Set(['to', 'of', 'in', 'off', 'the', 'low', 'high']);

/**
 * Texts before the verdict in which all words of a fault's name stand: "the capsule is torn" tells `capsule-torn`. It finds
 * the plain slip, not every hint; and it knows the words of the catalogue alone, which are English.
 */
export function answersInText(
  scenario: Scenario,
): readonly { readonly where: TextPlace; readonly fault: string }[] {
  return TEXT_PLACES.flatMap((where) => {
    const text = new Set(wordsOf(textOf(scenario, where)));
    return scenario.faults
      .filter(({ fault }) => {
        const words = wordsOf(faultById(fault)?.id ?? '').filter((word) => !COMMON_WORDS.has(word));
        return words.length > 0 && words.every((word) => text.has(word));
      })
      .map(({ fault }) => ({ where, fault }));
  });
}

function textOf(scenario: Scenario, where: TextPlace): string {
  switch (where) {
    case 'id':
    case 'title':
    case 'summary':
    case 'seed':
      return scenario[where];
    case 'aims':
      return scenario.aims.join(' ');
    case 'complaint':
      return scenario.workOrder.complaint;
    case 'history':
      return scenario.workOrder.history.join(' ');
  }
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[a-z0-9]+/g) ?? [];
