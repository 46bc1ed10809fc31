import { fixed, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';

/** What the job has taken, beside each of its limits; null where it has none. */
export function spentWords({ card, spent }: Desk): string | null {
  const { minutes, dollars } = card.limits ?? {};
  const { bookMinutes, money: paid } = spent.value;
  const lines = [
    ...(minutes === undefined
      ? []
      : [
          say(bookMinutes > minutes ? 'terms.overMinutes' : 'terms.ofMinutes', {
            spent: fixed(bookMinutes, 0),
            limit: minutes,
          }),
        ]),
    ...(dollars === undefined
      ? []
      : [
          say(paid > dollars ? 'terms.overMoney' : 'terms.ofMoney', {
            spent: money(paid),
            limit: money(dollars),
          }),
        ]),
  ];
  return lines.length === 0 ? null : lines.join(' · ');
}
