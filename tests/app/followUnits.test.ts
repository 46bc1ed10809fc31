import { computed, signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followUnits } from '../../src/app/followUnits.ts';
import { parseSettings, type Settings } from '../../src/platform/browser/settings.ts';
import { describeEntry } from '../../src/text/describeEntry.ts';
import { jobSentence } from '../../src/text/jobWords.ts';
import { heedUnits, setDisplayUnits } from '../../src/text/units.ts';
import { bench } from '../support/bench.ts';

const page = { documentElement: { dataset: {} as Record<string, string> } };

beforeEach(() => vi.stubGlobal('document', page));
afterEach(() => {
  heedUnits(() => {});
  setDisplayUnits('us');
  vi.unstubAllGlobals();
});

describe('the page follows the units of the settings', () => {
  it('and an entry that is already in the log is told anew', () => {
    const worked = bench().does(
      'accept\nfit plug-a on pump-hose-end\nstroke full x1\nwait 1 s\nstroke full x1\nwait 2 s\nlog',
    );
    const entry = worked.sitting.view().log.at(-1);
    if (entry === undefined) throw new Error('nothing logged');
    const settings = signal<Settings>(parseSettings(null));
    followUnits(settings);
    const line = computed(() => describeEntry(entry, true).value);
    const step = computed(() => jobSentence('Draw on to [15 inHg|51 kPa].').words);
    const seen: string[] = [];
    const stop = line.subscribe((words) => seen.push(words));
    settings.value = { ...settings.value, units: 'metric' };
    expect(step.value).toBe('Draw on to 51 kPa.');
    expect(page.documentElement.dataset['units']).toBe('metric');
    settings.value = { ...settings.value, units: 'us' };
    stop();
    expect(step.value).toBe('Draw on to 15 inHg.');
    expect(seen).toEqual([
      expect.stringMatching(/^\d+(\.5)? inHg$/),
      expect.stringMatching(/^\d+ kPa$/),
      seen[0],
    ]);
    const [us = 0, metric = 0] = seen.map(Number.parseFloat);
    expect(us).toBeGreaterThan(3);
    // To half an inch of mercury, 3.386 389 kPa each (NIST SP 811), and to a whole kilopascal.
    expect(Math.abs(us * 3.386389 - metric)).toBeLessThanOrEqual(0.85 + 0.5);
  });
});
