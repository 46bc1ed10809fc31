import { afterAll, describe, expect, it } from 'vitest';
import { addJobSentences, jobSentence } from '../../src/text/jobWords.ts';
import { keyed } from '../../src/text/sentenceKey.ts';
import { setLanguage } from '../../src/text/translate.ts';
import { unveil, veil } from '../../src/text/veil.ts';

const REMARK = 'The unit was good. The sense wire was open.';
const EN_ESPANOL = 'La unidad estaba buena. El cable de señal estaba abierto: ¿quién lo dijo? 5 Ω';

describe('a veiled sentence', () => {
  const veiled = veil([[REMARK, EN_ESPANOL]]);

  it('opens with the sentence it translates, and with no other', () => {
    expect(unveil(veiled, REMARK)).toBe(EN_ESPANOL);
    expect(unveil(veiled, 'The unit was good.')).toBeUndefined();
  });

  it('tells neither sentence to one who reads the file or decodes it', () => {
    const file = JSON.stringify(veiled);
    const decoded = Object.values(veiled).map((text) => atob(text));
    for (const words of ['unit', 'sense', 'unidad', 'abierto']) {
      expect(file).not.toContain(words);
      expect(decoded.join()).not.toContain(words);
    }
  });

  it('is read at the end of a job as any other sentence', async () => {
    addJobSentences('es-US', keyed({ Title: 'Título' }), veiled);
    await setLanguage('es-US');
    expect(jobSentence(REMARK)).toEqual({ words: EN_ESPANOL, lang: undefined });
    expect(jobSentence('Title').words).toBe('Título');
    expect(jobSentence('Nobody translated this.')).toEqual({ words: 'Nobody translated this.', lang: 'en' });
  });

  afterAll(() => setLanguage('en'));
});
