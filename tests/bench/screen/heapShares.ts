/** A heap snapshot as the browser writes it, as far as it is used here: nodes as numbers in a row, so many a node. */
export interface HeapSnapshot {
  readonly snapshot: {
    readonly meta: { readonly node_fields: readonly string[]; readonly node_types: readonly unknown[] };
  };
  readonly nodes: readonly number[];
}

/**
 * What of a heap is code: bytecode and machine code that the browser made of the program, and what it notes beside them. It grows for
 * as long as some function is still found worth being compiled better, and is none of what the program keeps.
 */
export function codeBytes({ snapshot: { meta }, nodes }: HeapSnapshot): number {
  const width = meta.node_fields.length;
  const [type, size] = [meta.node_fields.indexOf('type'), meta.node_fields.indexOf('self_size')];
  const code = (meta.node_types[type] as readonly string[]).indexOf('code');
  let bytes = 0;
  for (let i = 0; i < nodes.length; i += width) {
    if (nodes[i + type] === code) bytes += nodes[i + size] ?? 0;
  }
  return bytes;
}
