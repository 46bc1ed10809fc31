import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { laterSheetsBehind, sheetsLast } from '../../../src/platform/node/build/stylesLast.ts';
import { tokensOf } from '../../../src/ui/theme/tokens.ts';

const PAGE = readFileSync(new URL('../../../index.html', import.meta.url), 'utf8');

describe('the page before its program has come', () => {
  it('has the ground and the ink of the themes, by day and by night', () => {
    const [day = '', night = ''] = PAGE.split('@media (prefers-color-scheme: dark)');
    for (const [part, theme] of [
      [day, 'paper'],
      [night, 'shop-floor'],
    ] as const) {
      expect(part).toContain(`html { background: var(--kg-paper, ${tokensOf(theme).paper}); }`);
      expect(part).toMatch(new RegExp(`#loading \\{[^}]*color: ${tokensOf(theme).ink};`));
    }
  });

  it('says in both languages that it is loading, until something is drawn', () => {
    expect(PAGE).toContain('Loading … · <span lang="es">Cargando …</span>');
    expect(PAGE).toMatch(/<div id="app"><\/div>\s*<p id="loading">/);
    expect(PAGE).toContain('#app:not(:empty) + #loading { display: none; }');
  });

  it('has its style sheets behind what it shows, and loses none', () => {
    const built = sheetsLast(
      '<head>\n  <link rel="stylesheet" crossorigin href="./a.css">\n  <link rel="icon" href="x">\n  <link rel="stylesheet" href="./b.css">\n</head>\n<body>\n<p id="loading"></p>\n</body>',
    );
    const at = ['rel="icon"', 'id="loading"', './a.css', './b.css', '</body>'].map((one) =>
      built.indexOf(one),
    );
    expect(at.every((place) => place > 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(built.match(/stylesheet/g)).toHaveLength(2);
    expect(() => sheetsLast('<p>')).toThrow();
  });

  it('has the sheets of later parts behind its own', () => {
    expect(laterSheetsBehind('document.head.appendChild(link);')).toBe('document.body.appendChild(link);');
  });
});
