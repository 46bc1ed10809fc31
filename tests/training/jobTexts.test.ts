import { afterEach, describe, expect, it } from 'vitest';
import { describeProblem } from '../../src/text/describeProblem.ts';
import { addOwnWords, jobSentence } from '../../src/text/jobWords.ts';
import { addLanguage, setLanguage } from '../../src/text/translate.ts';
import { boardCardOf } from '../../src/training/scenario/BoardCard.ts';
import { cardOf } from '../../src/training/scenario/cardOf.ts';
import { ofVariant } from '../../src/training/scenario/drawVariant.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { openSealed, sealScenario } from '../../src/training/scenario/seal.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const IN_TWO = SCENARIO_TEXT.replace('title: A short job', 'title: { es: Un trabajo corto, en: A short job }')
  .replace(
    '  - Say what the readings show.',
    '  - { en: Say what the readings show., es: Diga lo que muestran. }',
  )
  .replace('complaint: The lamp is on.', 'complaint: { es: La luz está encendida. }')
  .replace('    - Filler cap renewed.', '    - { en: Filler cap renewed., es: Tapón cambiado. }')
  .replace('remark: Nothing more to say.', 'remark: { en: Nothing more to say., es: Nada más que decir. }');

const load = (text: string): Scenario => {
  const loaded = loadScenario(text, 'job.yaml');
  if (!loaded.ok) throw new Error(loaded.error.map(describeProblem).join('\n'));
  return loaded.value;
};
const problems = (text: string): string[] => {
  const loaded = loadScenario(text, 'job.yaml');
  return loaded.ok ? [] : loaded.error.map(({ line, code, path }) => `${line} ${code} ${path}`);
};

describe('texts in several languages', () => {
  it('stand in English, or in what there is, with the other languages beside them', () => {
    const { title, workOrder, remark, words } = load(IN_TWO);
    expect([title, workOrder.complaint, remark]).toEqual([
      'A short job',
      'La luz está encendida.',
      'Nothing more to say.',
    ]);
    expect(words).toEqual({
      es: [
        ['A short job', 'Un trabajo corto'],
        ['Filler cap renewed.', 'Tapón cambiado.'],
        ['La luz está encendida.', 'La luz está encendida.'],
        ['Nothing more to say.', 'Nada más que decir.'],
        ['Say what the readings show.', 'Diga lo que muestran.'],
      ],
    });
  });

  it('that are all plain, or English alone, leave the content as it was', () => {
    const english = SCENARIO_TEXT.replace('title: A short job', 'title: { en: A short job }');
    expect(load(english)).toEqual(load(SCENARIO_TEXT));
    expect(Object.keys(load(SCENARIO_TEXT))).not.toContain('words');
  });

  it('show on the card what the card says, and keep the remark behind the curtain in every language', () => {
    const scenario = load(IN_TWO);
    const sealed = sealScenario(scenario);
    const card = JSON.stringify(sealed.card);
    expect(card).toContain('Tapón cambiado.');
    expect(card).not.toContain('Nada más');
    expect(openSealed(sealed)).toEqual({ ok: true, value: scenario });
    expect(JSON.stringify(boardCardOf(cardOf(scenario)))).not.toContain('Tapón');
    expect(boardCardOf(cardOf(scenario)).words?.es).toHaveLength(2);
  });
});

describe('variants in several languages', () => {
  const scenario = load(
    `${IN_TWO}variants:\n  - faults: [{ fault: fuse-blown }]\n    complaint: { en: Dead., es: Muerto. }\n    remark: { en: It was the fuse., es: Era el fusible. }\n`,
  );

  it('have their own sentences, which nobody sees before they are drawn', () => {
    expect(scenario.variants?.[1]).toMatchObject({ complaint: 'Dead.', remark: 'It was the fuse.' });
    const card = JSON.stringify(sealScenario(scenario).card);
    expect(card).not.toMatch(/Dead|Muerto|fusible/);
    expect(openSealed(sealScenario(scenario))).toEqual({ ok: true, value: scenario });
  });

  it('say on the card of the truth that was drawn what its own order says', () => {
    const [, second] = scenario.variants ?? [];
    if (second === undefined) throw new Error('a second truth');
    const drawn = ofVariant(scenario, second, 'first', () => 0);
    expect(cardOf(drawn).words?.es).toContainEqual(['Dead.', 'Muerto.']);
    expect(JSON.stringify(cardOf(drawn))).not.toContain('fusible');
    expect(openSealed(sealScenario(drawn)).ok).toBe(true);
  });
});

describe('what is wrong with such texts', () => {
  const title = (written: string): string => SCENARIO_TEXT.replace('title: A short job', `title: ${written}`);

  it('is told with its place: no language, another language, too long, empty, no text', () => {
    expect(problems(title('{}'))).toEqual(['3 no-language title']);
    expect(problems(title('{ fr: Un travail }'))).toEqual(['3 unknown-key title.fr']);
    expect(problems(title(`{ en: ${'x'.repeat(81)} }`))).toEqual(['3 text-too-long title.en']);
    expect(problems(title('{ en: A job, es: "  " }'))).toEqual(['3 text-empty title.es']);
    expect(problems(title('{ en: [A], es: 5 }'))).toEqual(['3 wrong-type title.en', '3 wrong-type title.es']);
    expect(problems(title('[A, job]'))).toEqual(['3 wrong-type title']);
    expect(problems(title('""'))).toEqual(['3 text-empty title']);
    expect(problems(title('{ en: "a\\u202eb" }'))).not.toEqual([]);
  });

  it('is a sentence that is translated in two ways', () => {
    const twice = IN_TWO.replace(
      'summary: One page of work for tests.',
      'summary: { en: A short job, es: Otro }',
    );
    expect(problems(twice)).toEqual(['4 translated-twice summary.es']);
  });

  it('is not markup or script: in whatever language it is the text that it is', () => {
    for (const markup of [
      '<script>x()</script>',
      '"><img src=x>',
      '{{constructor}}',
      '$t(actions.key)',
      '<%= 7*7 %>',
    ]) {
      const both = load(
        title(`{ en: ${JSON.stringify(`E ${markup}`)}, es: ${JSON.stringify(`S ${markup}`)} }`),
      );
      expect(both.title).toBe(`E ${markup}`);
      expect(both.words?.es).toEqual([[`E ${markup}`, `S ${markup}`]]);
      addOwnWords(both.words);
      expect(jobSentence(`E ${markup}`).words).toBe(`E ${markup}`);
    }
  });

  it('is never taken for a word of the language itself', () => {
    const odd = title('{ en: constructor, es: __proto__ }');
    expect(load(odd).words).toEqual({ es: [['constructor', '__proto__']] });
    expect(openSealed(sealScenario(load(odd)))).toEqual({ ok: true, value: load(odd) });
  });
});

describe('a sentence with words of its own', () => {
  afterEach(() => setLanguage('en'));

  it('is shown in the language of the page, with its figures in the units of the page, and else marked as what it is', async () => {
    addOwnWords(load(IN_TWO).words);
    addOwnWords({ es: [['Draw on to [15 inHg|51 kPa].', 'Llegue a [15 inHg|51 kPa].']] });
    expect(jobSentence('A short job')).toEqual({ words: 'A short job', lang: undefined });
    expect(jobSentence('La luz está encendida.')).toEqual({ words: 'La luz está encendida.', lang: 'es' });
    addLanguage('es-US', {});
    await setLanguage('es-US');
    expect(jobSentence('A short job')).toEqual({ words: 'Un trabajo corto', lang: undefined });
    expect(jobSentence('Draw on to [15 inHg|51 kPa].').words).toBe('Llegue a 15 inHg.');
    expect(jobSentence('La luz está encendida.')).toEqual({
      words: 'La luz está encendida.',
      lang: undefined,
    });
    expect(jobSentence('Nobody translated this.')).toEqual({ words: 'Nobody translated this.', lang: 'en' });
    expect(jobSentence('constructor')).toEqual({ words: 'constructor', lang: 'en' });
  });
});
