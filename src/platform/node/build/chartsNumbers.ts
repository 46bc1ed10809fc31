import type { Plugin } from 'vite';

const IN_THE_DEVICES_LANGUAGE = "new Intl.NumberFormat(domEnv ? nav.language : 'en-US')";

/**
 * uPlot makes a format for numbers as it comes, in the language of the device. A device that names none (`C`, on a bare Linux)
 * stops it there, and the debrief with it. The charts write their numbers themselves, in the language of the page.
 */
export function chartsNumbers(): Plugin {
  return {
    name: 'charts-numbers',
    apply: 'build',
    transform: {
      filter: { id: /\/uplot\/dist\/uPlot\.esm\.js$/ },
      handler: (code) => ({ code: inNoLanguage(code), map: null }),
    },
  };
}

/** Errors: throws when uPlot's text has another way to it, so that a new version is looked at. */
export function inNoLanguage(code: string): string {
  if (code.split(IN_THE_DEVICES_LANGUAGE).length !== 2)
    throw new Error('uPlot formats its numbers in another way now: see chartsNumbers.ts');
  return code.replace(IN_THE_DEVICES_LANGUAGE, "new Intl.NumberFormat('en-US')");
}
