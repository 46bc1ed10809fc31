import type { Plugin } from 'vite';

const STYLE_SHEET = /[ \t]*<link rel="stylesheet"[^>]*>\n?/g;

/**
 * Puts the page's style sheets last in its body. In its head they hold back all drawing until they have come, and a slow network
 * shows bare white instead of the ground and the line that the page brings along. The program waits for them all the same: a
 * module runs only when no sheet before the end of the page is outstanding (HTML, "style sheet that is blocking scripts").
 */
export function stylesLast(): Plugin {
  return {
    name: 'styles-last',
    apply: 'build',
    transformIndexHtml: { order: 'post', handler: sheetsLast },
  };
}

export function sheetsLast(html: string): string {
  const sheets = html.match(STYLE_SHEET) ?? [];
  if (!html.includes('</body>')) throw new Error('the page has no end of its body');
  return html.replaceAll(STYLE_SHEET, '').replace('</body>', () => `${sheets.join('')}  </body>`);
}
