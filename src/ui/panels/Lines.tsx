import { keepUnits } from './keepUnits.ts';

/** One name with its value. */
export interface Line {
  readonly name: string;
  readonly value: string;
  /** A word under both. */
  readonly hint?: string;
}

/** Names on the left, values on the right, ruled like a data sheet. */
export function Lines({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <dl class="lines">
      {lines.map(({ name, value, hint }) => (
        <div key={name}>
          <dt>{keepUnits(name)}</dt>
          <dd>{keepUnits(value)}</dd>
          {hint !== undefined && <dd class="line-hint">{keepUnits(hint)}</dd>}
        </div>
      ))}
    </dl>
  );
}
