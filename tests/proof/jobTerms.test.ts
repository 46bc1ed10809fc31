import { describe, expect, it } from 'vitest';
import { describeFinding } from '../../src/text/describeProof.ts';
import { limitFindings } from '../../src/training/proof/limitFindings.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function load(more: string): Scenario {
  const loaded = loadScenario(`${SCENARIO_TEXT}${more}\n`, 'job.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

describe('limits that par does not keep', () => {
  const par = { minutes: 80, money: 385 };
  const found = (limits: string) => limitFindings(load(`limits: ${limits}`), par);

  it('are named with what to give instead: minutes with a quarter to spare, dollars to the dollar', () => {
    expect(found('{ minutes: 99, dollars: 384 }')).toEqual([
      { kind: 'limit-too-tight', forbids: true, of: 'minutes', limit: 99, par: 80, wanted: 100 },
      { kind: 'limit-too-tight', forbids: true, of: 'dollars', limit: 384, par: 385, wanted: 385 },
    ]);
    expect(found('{ minutes: 100, dollars: 385 }')).toEqual([]);
    expect(limitFindings(load(''), par)).toEqual([]);
  });

  it('are told in sentences with the remedy', () => {
    const sentences = found('{ minutes: 99, dollars: 384 }').map(describeFinding);
    expect(sentences[0]).toBe(
      'Par takes 80 book minutes, and the limit of 99 leaves it no quarter to spare. Give 100 or more, or make the job shorter.',
    );
    expect(sentences[1]).toContain('Give $385 or more');
  });
});
