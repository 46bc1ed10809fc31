import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { jobSentences } from '../../src/text/es/jobs.ts';
import { addJobSentences, jobSentence } from '../../src/text/jobWords.ts';
import { keyed } from '../../src/text/sentenceKey.ts';
import { setLanguage } from '../../src/text/translate.ts';
import { sentencesShown } from '../../src/training/scenario/cardOf.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';

/** Every sentence that a shipped job shows and that its file does not say in Spanish itself. */
const written = new Set(
  readdirSync('scenarios')
    .filter((name) => name.endsWith('.yaml'))
    .flatMap((name) => {
      const job = loadScenario(readFileSync(`scenarios/${name}`, 'utf8'), name);
      if (!job.ok) throw new Error(JSON.stringify(job.error));
      const own = new Set((job.value.words?.es ?? []).map(([sentence]) => sentence));
      return [...sentencesShown(job.value), job.value.remark].filter((sentence) => !own.has(sentence));
    }),
);
const translated = Object.entries(jobSentences);
const numbers = (text: string): string[] => (text.match(/[PBCU]\d{4}|\d+(?:[.,]\d+)?/g) ?? []).sort();

describe('the shipped jobs in Spanish', () => {
  it('have every sentence', () => {
    expect(written.size).toBeGreaterThan(200);
    expect([...written].filter((sentence) => !(sentence in jobSentences))).toEqual([]);
  });

  it('and none that no job says any more', () => {
    expect(translated.map(([sentence]) => sentence).filter((sentence) => !written.has(sentence))).toEqual([]);
  });

  it('name the same numbers and codes', () => {
    const differing = translated.filter(([en, es]) => `${numbers(en)}` !== `${numbers(es)}`);
    expect(differing).toEqual([]);
  });

  it('are nowhere left in English, and speak to the learner as usted', () => {
    expect(translated.filter(([en, es]) => en === es)).toEqual([]);
    expect(translated.filter(([, es]) => /\b(tú|tu|tus|te|ti|contigo)\b/i.test(es))).toEqual([]);
  });
});

describe('jobs that say themselves what they are in Spanish', () => {
  const own = readdirSync('scenarios')
    .filter((name) => name.endsWith('.yaml'))
    .flatMap((name) => {
      const job = loadScenario(readFileSync(`scenarios/${name}`, 'utf8'), name);
      return job.ok ? (job.value.words?.es ?? []) : [];
    });

  it('name the same numbers and codes, leave nothing in English, and speak to the learner as usted', () => {
    expect(own.length).toBeGreaterThan(5);
    expect(own.filter(([en, es]) => `${numbers(en)}` !== `${numbers(es)}`)).toEqual([]);
    expect(own.filter(([en, es]) => en === es)).toEqual([]);
    expect(own.filter(([, es]) => /\b(tú|tu|tus|te|ti|contigo)\b/i.test(es))).toEqual([]);
  });
});

describe('the key of a sentence', () => {
  it('is told where two have the same, so that nobody reads one for the other', () => {
    // A known pair of texts with one sum.
    expect(() => keyed({ costarring: 'a', liquid: 'b' })).toThrow('same key');
    expect(Object.keys(keyed(jobSentences))).toHaveLength(translated.length);
  });
});

describe('a sentence of a job', () => {
  afterAll(() => setLanguage('en'));

  it('is as it is written in English, and marked as English where nobody has translated it', async () => {
    addJobSentences('es-US', keyed(jobSentences));
    expect(jobSentence('Ready by Friday')).toEqual({ words: 'Ready by Friday', lang: undefined });
    await setLanguage('es-US');
    expect(jobSentence('Ready by Friday')).toEqual({ words: 'Listo para el viernes', lang: undefined });
    expect(jobSentence('A job of your own.')).toEqual({ words: 'A job of your own.', lang: 'en' });
  });
});
