import type { ComponentChildren } from 'preact';

interface BoardSelectProps {
  readonly label: string;
  /** The choice that leaves everything. */
  readonly all: string;
  readonly value: string;
  readonly onChoose: (value: string) => void;
  readonly children: ComponentChildren;
}

/** One choice of the board's filters, or none. */
export function BoardSelect({ label, all, value, onChoose, children }: BoardSelectProps) {
  return (
    <label class="board-filter">
      <span>{label}</span>
      <select value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        <option value="">{all}</option>
        {children}
      </select>
    </label>
  );
}
