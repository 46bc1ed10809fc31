import { say } from '../../../text/translate.ts';

interface ParBarProps {
  readonly name: string;
  readonly yours: number;
  readonly par: number;
  /** What the job may take, where it has a limit. */
  readonly limit: number | undefined;
  readonly words: (value: number) => string;
}

/** What was spent as a bar, with par, one and a half and three times par as marks across it. */
export function ParBar({ name, yours, par, limit, words }: ParBarProps) {
  const whole = Math.max(yours, 3 * par) * 1.06 || 1;
  const at = (value: number): string => `${(value / whole) * 100}%`;
  const full = 1.5 * par;
  const nothing = 3 * par;
  return (
    <div
      class="par"
      role="img"
      aria-label={[
        say('economy.bar', {
          name,
          yours: words(yours),
          par: words(par),
          full: words(full),
          nothing: words(nothing),
        }),
        ...(limit === undefined ? [] : [say('economy.barLimit', { limit: words(limit) })]),
      ].join(' ')}
    >
      <div class="par-head">
        <b>{name}</b>
        <span>
          {say('economy.yours')} <b>{words(yours)}</b> · {say('economy.par')} <b>{words(par)}</b>
          {limit !== undefined && (
            <>
              {' '}
              · {say('economy.limit')} <b>{words(limit)}</b>
            </>
          )}
        </span>
      </div>
      <div class="par-track">
        <i class="par-yours" style={{ width: at(yours) }} />
        {par > 0 &&
          [
            { value: par, name: say('economy.par'), kind: 'par-at' },
            { value: full, name: '1.5 ×', kind: 'par-full' },
            { value: nothing, name: '3 ×', kind: 'par-nothing' },
          ].map((mark) => (
            <span key={mark.kind} class={`par-mark ${mark.kind}`} style={{ left: at(mark.value) }}>
              <em>{mark.name}</em>
            </span>
          ))}
      </div>
    </div>
  );
}
