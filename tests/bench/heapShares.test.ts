import { expect, it } from 'vitest';
import { codeBytes } from './screen/heapShares.ts';

it('counts what of a heap is code, and nothing else', () => {
  const meta = {
    node_fields: ['type', 'name', 'id', 'self_size', 'edge_count'],
    node_types: [['hidden', 'array', 'string', 'object', 'code', 'closure'], 'string', 'number'],
  };
  const nodes = [
    [3, 0, 1, 100, 2],
    [4, 0, 3, 40, 0],
    [5, 0, 5, 32, 1],
    [4, 0, 7, 2, 0],
  ].flat();
  expect(codeBytes({ snapshot: { meta }, nodes })).toBe(42);
});
