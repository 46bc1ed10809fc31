import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../src/training/draft/Draft.ts';
import { emptyScenarioText } from '../../../src/training/draft/emptyScenario.ts';
import { isStillToWrite } from '../../../src/training/draft/stillToWrite.ts';

const empty = emptyScenarioText({ vehicle: 'Truck 14', cautions: ['Key off first.'] }, 'a-word');

function standsIn(text: string): Readonly<Record<string, boolean>> {
  const draft = draftOf(text);
  return Object.fromEntries(draft.problems.map((each) => [each.path, isStillToWrite(each, draft.form)]));
}

describe('what waits to be written', () => {
  test('a new draft has nothing wrong in it', () => {
    const stands = standsIn(empty);
    expect(stands.id).toBe(true);
    expect(stands['work-order.complaint']).toBe(true);
    expect(Object.values(stands)).not.toContain(false);
  });

  test('what was written and is not right wants mending', () => {
    const stands = standsIn(empty.replace('id: ""', 'id: Not A Name').replace('minutes: 30', 'minutes: 3'));
    expect(stands.id).toBe(false);
    expect(stands.minutes).toBe(false);
    expect(stands.title).toBe(true);
  });

  test('a list that lost its last entry, and a figure that was taken out, wait again', () => {
    const stands = standsIn(empty.replace(/aims:\n {2}- ""/, 'aims: []').replace('minutes: 30', 'minutes:'));
    expect(stands.aims).toBe(true);
    expect(stands.minutes).toBe(true);
  });
});
