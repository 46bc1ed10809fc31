import { describe, expect, it } from 'vitest';
import { parseSettings } from '../../src/platform/browser/settings.ts';

describe('settings', () => {
  it('take the language of the device where the program speaks it, else English', () => {
    const spoken = (device: string) => parseSettings(null, device).language;
    expect(['es', 'es-MX', 'es-419', 'ES-us'].map(spoken)).toEqual(['es', 'es', 'es', 'es']);
    expect(['en', 'en-US', 'fr-CA', 'est', ''].map(spoken)).toEqual(['en', 'en', 'en', 'en', 'en']);
  });

  it('keep the language that was chosen, whatever the device speaks', () => {
    const kept = (language: string, device: string) =>
      parseSettings(JSON.stringify({ language }), device).language;
    expect(kept('en', 'es-MX')).toBe('en');
    expect(kept('es', 'en-US')).toBe('es');
    expect(kept('de', 'es-MX')).toBe('es');
  });

  it('take the units of the device by its region: US at home and where none is known, else metric', () => {
    const units = (device: string) => parseSettings(null, device).units;
    const us = ['en-US', 'es-US', 'en', 'es', 'es-PR', 'EN-us', '', 'not a tag!'];
    expect(us.map((device) => [device, units(device)])).toEqual(us.map((device) => [device, 'us']));
    // A language that is at home in one region speaks for it.
    const metric = ['en-CA', 'fr-CA', 'es-MX', 'es-419', 'en-GB', 'de', 'ja-JP', 'en-AU'];
    expect(metric.map((device) => [device, units(device)])).toEqual(
      metric.map((device) => [device, 'metric']),
    );
  });

  it('keep the units that were chosen, whatever the device speaks', () => {
    const kept = (units: unknown, device: string) => parseSettings(JSON.stringify({ units }), device).units;
    expect(kept('us', 'es-MX')).toBe('us');
    expect(kept('metric', 'en-US')).toBe('metric');
    expect(kept('imperial', 'es-MX')).toBe('metric');
    expect(kept(3, 'en-US')).toBe('us');
  });

  it('offer the first minutes until the learner said not now, and no other word puts them off', () => {
    const kept = (firstMinutes: unknown) => parseSettings(JSON.stringify({ firstMinutes })).firstMinutes;
    expect(parseSettings(null).firstMinutes).toBe('offered');
    expect([kept('put-off'), kept('offered'), kept('never'), kept(7)]).toEqual([
      'put-off',
      'offered',
      'offered',
      'offered',
    ]);
  });

  it('fall back one by one where a stored text is not valid', () => {
    const read = parseSettings(JSON.stringify({ volume: 7, theme: 'dark', announce: 3 }));
    expect(read).toMatchObject({ volume: 0.7, theme: 'dark', announce: 'settled', language: 'en' });
    expect(parseSettings('{broken', 'es')).toEqual(parseSettings(null, 'es'));
  });
});
