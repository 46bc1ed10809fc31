import { beforeAll, vi } from 'vitest';
import { language, setLanguage, speakOfRig } from '../../src/text/translate.ts';
import { setDisplayUnits } from '../../src/text/units.ts';

// Files that share a process each begin as they would in one of their own, whatever the one before them left behind: clock, globals,
// language, units and rig are the only things in a program that outlive a test.
beforeAll(async () => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  setDisplayUnits('us');
  speakOfRig(undefined);
  if (language() !== 'en') await setLanguage('en');
});
