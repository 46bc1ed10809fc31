import type { Plugin } from 'vite';

const STYLE_SHEET = /[ \t]*<link rel="stylesheet"[^>]*>\n?/g;

/**
 * Puts the page's style sheets last in its body. In its head they hold back all drawing until they have come, and a slow network
 * shows bare white instead of the ground and the line that the page brings along. The program waits for them all the same: a
 * module runs only when no sheet before the end of the page is outstanding (HTML, "style sheet that is blocking scripts").
 * Sheets of parts that are fetched later come behind them, so that a part's rule follows the page's own as it does in the sources.
 */
export function stylesLast(): Plugin {
  return {
    name: 'styles-last',
    apply: 'build',
    transformIndexHtml: { order: 'post', handler: sheetsLast },
    transform: (code, id) => (id.includes('preload-helper') ? laterSheetsBehind(code) : null),
    generateBundle(_, bundle) {
      const inHead = Object.values(bundle).filter(
        (each) =>
          each.type === 'chunk' && each.code.includes(PRELOADS_SHEETS) && each.code.includes(INTO_HEAD),
      );
      if (inHead.length > 0) this.error('sheets of later parts would come before those of the page');
    },
  };
}

/** What fetches the parts of a page puts their sheets into its head. */
const INTO_HEAD = 'document.head.appendChild(';
const PRELOADS_SHEETS = 'Unable to preload CSS';

export function laterSheetsBehind(code: string): string {
  return code.replaceAll(INTO_HEAD, 'document.body.appendChild(');
}

export function sheetsLast(html: string): string {
  const sheets = html.match(STYLE_SHEET) ?? [];
  if (!html.includes('</body>')) throw new Error('the page has no end of its body');
  return html.replaceAll(STYLE_SHEET, '').replace('</body>', () => `${sheets.join('')}  </body>`);
}
