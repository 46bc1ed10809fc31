import { describe, expect, it } from 'vitest';
import { readKept, sourceFiles } from './support/repoFiles.ts';

/** Ways in which a text can become markup or program. What a scenario or a record says must stay text. */
const WAYS: readonly (readonly [string, RegExp])[] = [
  [
    'markup from a text',
    /dangerouslySetInnerHTML|\b(?:inner|outer)HTML\b|\binsertAdjacentHTML\b|\bsetHTML\w*\b/,
  ],
  [
    'markup from a text',
    /\bdocument\s*\.\s*write(?:ln)?\b|\bcreateContextualFragment\b|\bDOMParser\b|\bsrcdoc\b/i,
  ],
  ['a program from a text', /\beval\s*\(|\bnew\s+Function\s*\(|(?<![\w.])Function\s*\(/],
  ['a program from a text', /\bset(?:Timeout|Interval)\s*\(\s*['"`]|['"`]javascript:/],
];

function breaches(path: string, text: string): string[] {
  return WAYS.filter(([, pattern]) => pattern.test(text)).map(([what]) => `${path}: ${what}`);
}

describe('text stays text', () => {
  it('in every source that reaches a page', () => {
    const files = [...sourceFiles('src', 'assets'), 'index.html', 'vite.config.ts'];
    expect(files.length).toBeGreaterThan(300);
    expect(files.flatMap((path) => breaches(path, readKept(path)))).toEqual([]);
  });

  it.each([
    '<p dangerouslySetInnerHTML={{ __html: words }} />',
    'element.innerHTML = words;',
    "element.insertAdjacentHTML('beforeend', words);",
    'document.write(words)',
    'eval(words)',
    "new Function('a', words)",
    "setTimeout('go()', 10)",
    '<a href="javascript:go()">',
  ])('and the law sees %s', (code) => {
    expect(breaches('a.tsx', code)).toHaveLength(1);
  });
});
