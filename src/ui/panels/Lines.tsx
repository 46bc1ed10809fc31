import type { ComponentChildren } from 'preact';

/** One name with its value. */
export interface Line {
  readonly name: string;
  readonly value: ComponentChildren;
  /** A word under the name. */
  readonly hint?: string;
}

/** Names on the left, values on the right, ruled like a data sheet. */
export function Lines({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <dl class="lines">
      {lines.map(({ name, value, hint }) => (
        <div key={name}>
          <dt>
            {name}
            {hint !== undefined && <span class="line-hint">{hint}</span>}
          </dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
