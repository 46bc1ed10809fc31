import { afterAll, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/text/en/catalogue.ts';
import { addLanguage, type Catalogue, language, say, setLanguage } from '../../src/text/translate.ts';

describe('sentences by key', () => {
  afterAll(() => setLanguage('en'));

  it('fill their gaps, and keep a gap nobody filled', () => {
    expect(say('hand.on', { end: 'Red lead', point: 'cavity 3 wire side' })).toBe(
      'Red lead, on cavity 3 wire side',
    );
    expect(say('hand.held')).toContain('{{thing}}');
  });

  it('take a value as it is, markup and all', () => {
    expect(say('troubles.unexpected', { detail: '<b>&</b>' })).toContain('(<b>&</b>)');
  });

  it('choose the plural', () => {
    expect(say('log.clicks', { count: 1 })).toBe('click heard');
    expect(say('log.clicks', { count: 3 })).toBe('click ×3 heard');
  });

  it('come in another language when one is added, and in English where it is silent', async () => {
    expect(say('key.off')).toBe('off');
    const half = { key: { ...catalogue.key, off: 'aus' } };
    addLanguage('de', half as unknown as Catalogue);
    await setLanguage('de');
    expect(language()).toBe('de');
    expect(say('key.off')).toBe('aus');
    expect(say('refusals.site-taken')).toBe(catalogue.refusals['site-taken']);
    await setLanguage('en');
    expect(say('key.off')).toBe('off');
  });
});
