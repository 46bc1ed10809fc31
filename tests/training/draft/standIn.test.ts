import { describe, expect, it } from 'vitest';
import { draftOf } from '../../../src/training/draft/Draft.ts';
import { emptyScenarioText } from '../../../src/training/draft/emptyScenario.ts';
import { truckOf } from '../../../src/training/draft/standIn.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';

const EMPTY = emptyScenarioText({ vehicle: 'Truck 14', cautions: ['Key off first.'] }, 'truck-1');

describe('the truck of a draft', () => {
  it('is the scenario itself where that is whole', () => {
    const draft = draftOf(SCENARIO_TEXT);
    expect(truckOf(draft)).toBe(draft.scenario);
  });

  it('is there from the first moment of a new draft, with its faults and its place', () => {
    expect(draftOf(EMPTY).scenario).toBeNull();
    const text = EMPTY.replace('faults: []', 'faults: [{ fault: sense-open }]').replace(
      'ambient-celsius: 20',
      'ambient-celsius: -5',
    );
    expect(truckOf(draftOf(text))).toMatchObject({
      seed: 'truck-1',
      faults: [{ fault: 'sense-open' }],
      bench: { ambientC: -5 },
    });
  });

  it('does not wait for words that are half written', () => {
    expect(truckOf(draftOf(EMPTY))).not.toBeNull();
    expect(truckOf(draftOf(SCENARIO_TEXT.replace('minutes: 20', 'minutes: soon')))).not.toBeNull();
    expect(truckOf(draftOf(''))).not.toBeNull();
  });

  it('waits where the text cannot be read, whatever part of it is broken', () => {
    expect(truckOf(draftOf(EMPTY.replace('title: ""', 'title: "half')))).toBeNull();
    expect(truckOf(draftOf('hello'))).toBeNull();
    expect(truckOf(draftOf('- a\n- b\n'))).toBeNull();
  });

  it('is not guessed where the truck itself cannot be read', () => {
    expect(truckOf(draftOf(EMPTY.replace('faults: []', 'faults: [{ fault: no-such }]')))).toBeNull();
    expect(truckOf(draftOf(EMPTY.replace('faults: []', 'faults: [')))).toBeNull();
    expect(truckOf(draftOf(EMPTY.replace('ambient-celsius: 20', 'ambient-celsius: 900')))).toBeNull();
    expect(truckOf(draftOf('['.repeat(90)))).toBeNull();
  });
});
