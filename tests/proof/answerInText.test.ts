import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import { answersInText } from '../../src/training/proof/answerInText.ts';
import { SPANISH_BEGINNINGS } from '../../src/training/proof/spanishFaultWords.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function answers(text: string) {
  const loaded = loadScenario(text, 'job.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return answersInText(loaded.value);
}
const complaint = (written: string): string =>
  SCENARIO_TEXT.replace('complaint: The lamp is on.', `complaint: ${written}`);
const TOLD = [{ where: 'complaint', fault: 'capsule-torn' }];

describe('the answer in a text', () => {
  it('is found in every language that the file has', () => {
    expect(answers(complaint('The capsule is torn, they say.'))).toEqual(TOLD);
    expect(answers(complaint('{ en: The lamp is on., es: Dicen que la cápsula está rota. }'))).toEqual(TOLD);
    expect(answers(complaint('{ es: Dicen que la CÁPSULA está rota. }'))).toEqual(TOLD);
    expect(answers(complaint('Dicen que la cápsula está rota.'))).toEqual(TOLD);
  });

  it('is not found in one word alone, nor half in one language and half in another', () => {
    expect(answers(complaint('{ en: The lamp is on., es: Hay una hoja rota en la cabina. }'))).toEqual([]);
    expect(answers(complaint('{ en: A torn seat., es: La cápsula del asiento. }'))).toEqual([]);
  });

  it('stands in no shipped job before its end, but where one leads to it', () => {
    const told = readdirSync('scenarios')
      .filter((name) => name.endsWith('.yaml'))
      .flatMap((name) =>
        answers(readFileSync(`scenarios/${name}`, 'utf8')).map(({ where }) => `${name} ${where}`),
      );
    expect(told).toEqual([]);
  });

  it('can be found in Spanish for every fault of the leak detection pump', () => {
    const words = rigNamed('leak-detection-pump')
      .faults.filter(({ weight }) => weight > 0)
      .flatMap(({ id }) => id.split('-'))
      .filter((word) => !['to', 'of', 'in', 'off', 'low', 'high'].includes(word) && !/^\d$/.test(word));
    expect([...new Set(words)].filter((word) => !(word in SPANISH_BEGINNINGS))).toEqual([]);
  });
});
