import { describe, expect, it } from 'vitest';
import { applyEdit } from '../../../src/training/draft/applyEdit.ts';
import { DraftText } from '../../../src/training/draft/DraftText.ts';
import type { FormEdit } from '../../../src/training/draft/FormEdit.ts';

const edited = (text: string, ...edits: readonly FormEdit[]): string =>
  edits.reduce((now, edit) => {
    const done = applyEdit(new DraftText(now), edit);
    if (!done.ok) throw new Error(`${edit.kind} of ${edit.path.join('.')}: ${done.error}`);
    return done.value;
  }, text);
const refused = (text: string, edit: FormEdit): string => {
  const done = applyEdit(new DraftText(text), edit);
  return done.ok ? 'done' : done.error;
};

const TEXT = `# A job for Monday.
format: 1
title: Old   # keep it short

# What the customer said
work-order:
  number: HP-1
  # as on the form
  complaint: The lamp is on.
  history:
    - Cap renewed.   # by us
    - Hoses renewed.
mine: 12
`;

describe('a change from the form', () => {
  it('writes a value and leaves every other letter alone', () => {
    expect(edited(TEXT, { kind: 'set', path: ['title'], value: 'New' })).toBe(
      TEXT.replace('Old   # keep it short', 'New # keep it short'),
    );
  });

  it('keeps the comments of the group that it writes anew', () => {
    const text = edited(TEXT, { kind: 'set', path: ['work-order', 'number'], value: 'HP-2' });
    expect(text).toContain('number: HP-2\n  # as on the form\n  complaint: The lamp is on.');
    expect(text).toContain('- Cap renewed. # by us');
    expect(text).toContain('# What the customer said\nwork-order:');
    expect(text).toContain('mine: 12\n');
  });

  it('writes what a step waits for on one line, as it was', () => {
    const step = 'walkthrough:\n  - id: a\n    done: { key: on }\n';
    const value = { key: 'on', plug: 'parted' };
    expect(edited(step, { kind: 'set', path: ['walkthrough', 0, 'done'], value })).toBe(
      step.replace('{ key: on }', '{ key: on, plug: parted }'),
    );
  });

  it('puts a missing key where the format has it', () => {
    const text = edited(
      TEXT,
      { kind: 'set', path: ['summary'], value: 'In short.' },
      { kind: 'set', path: ['work-order', 'vehicle'], value: 'Truck 14' },
      { kind: 'set', path: ['remark'], value: 'The end.' },
      { kind: 'set', path: ['id'], value: 'job' },
    );
    const order = [...text.matchAll(/^\s*([a-z-]+):/gm)].map(([, key]) => key);
    const known = [
      'format',
      'id',
      'title',
      'summary',
      'work-order',
      'number',
      'vehicle',
      'complaint',
      'history',
    ];
    expect(order).toEqual([...known, 'mine', 'remark']);
  });

  it('makes the groups and lists that a value needs', () => {
    const text = edited(
      '',
      { kind: 'set', path: ['bench', 'fuel-percent'], value: 50 },
      { kind: 'insert', path: ['work-order', 'codes'], index: 0, value: { code: 'P0456', status: 'stored' } },
      { kind: 'insert', path: ['faults'], index: 9, value: { fault: 'sense-open' } },
    );
    expect(text).toBe(
      'work-order:\n  codes:\n    - { code: P0456, status: stored }\nbench:\n  fuel-percent: 50\n\nfaults:\n  - fault: sense-open\n',
    );
  });

  it('adds, moves and takes entries of a list with their comments', () => {
    const list = ['work-order', 'history'] as const;
    const added = edited(TEXT, { kind: 'insert', path: list, index: 1, value: 'Asked about.' });
    expect(added).toContain('- Cap renewed. # by us\n    - Asked about.\n    - Hoses renewed.');
    const moved = edited(added, { kind: 'move', path: list, from: 0, to: 2 });
    expect(moved).toContain('- Asked about.\n    - Hoses renewed.\n    - Cap renewed. # by us');
    expect(edited(moved, { kind: 'take', path: list, index: 2 })).not.toContain('by us');
  });

  it('takes a key away, and a whole section with what is in it', () => {
    expect(edited(TEXT, { kind: 'remove', path: ['work-order', 'number'] })).not.toContain('HP-1');
    const text = edited(TEXT, { kind: 'remove', path: ['work-order'] });
    expect(text).toContain('# What the customer said\nmine: 12');
    expect(edited(text, { kind: 'remove', path: ['remark'] })).toBe(text);
  });

  it('keeps the line ends of the file', () => {
    const text = edited(TEXT.replaceAll('\n', '\r\n'), {
      kind: 'insert',
      path: ['work-order', 'history'],
      index: 0,
      value: 'First.',
    });
    expect(text.match(/[^\r]\n/)).toBeNull();
  });

  it('writes into a file in brackets', () => {
    const text = edited('{ "format": 1, "title": "Old" }', { kind: 'set', path: ['title'], value: 'New' });
    expect(new DraftText(text).at(['title'])).toEqual({ kind: 'text', text: 'New' });
    expect(text.trim().startsWith('{')).toBe(true);
  });

  it('leaves alone what it cannot show', () => {
    expect(refused('title: "open\n', { kind: 'set', path: ['title'], value: 'x' })).toBe('unreadable');
    expect(refused('a: &x 1\ntitle: *x\n', { kind: 'set', path: ['title'], value: 'x' })).toBe('unreadable');
    expect(refused('bench: cold\n', { kind: 'set', path: ['bench', 'fuel-percent'], value: 1 })).toBe(
      'in-the-way',
    );
    expect(refused('aims: none\n', { kind: 'insert', path: ['aims'], index: 0, value: 'x' })).toBe(
      'in-the-way',
    );
    expect(refused('aims: [a]\n', { kind: 'take', path: ['aims'], index: 4 })).toBe('no-such-place');
    expect(refused('['.repeat(90), { kind: 'set', path: ['title'], value: 'x' })).toBe('unreadable');
  });

  it('works beside a part that is broken', () => {
    const broken = `title: "open\n${TEXT.slice(TEXT.indexOf('work-order'))}`;
    const text = edited(broken, { kind: 'set', path: ['work-order', 'number'], value: 'HP-9' });
    expect(text).toContain('title: "open\n');
    expect(new DraftText(text).at(['work-order', 'number'])).toEqual({ kind: 'text', text: 'HP-9' });
  });
});
