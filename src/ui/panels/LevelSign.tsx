const BARS = [1, 2, 3, 4] as const;

/** How hard a job is, as bars of growing height; the word stands beside it. */
export function LevelSign({ level }: { readonly level: number }) {
  return (
    <svg class="level-sign" viewBox="0 0 26 20" aria-hidden="true">
      {BARS.map((bar) => (
        <rect
          key={bar}
          class={bar <= level ? 'level-reached' : ''}
          x={(bar - 1) * 6.5 + 1}
          y={19 - bar * 4.5}
          width={4.5}
          height={bar * 4.5}
        />
      ))}
    </svg>
  );
}
