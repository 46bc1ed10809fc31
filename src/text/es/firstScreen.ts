import type { firstScreen as english } from '../en/firstScreen.ts';
import type { Catalogue } from '../translate.ts';
import { bench } from './bench.ts';
import { board } from './board.ts';
import { edition } from './edition.ts';
import { introduction } from './introduction.ts';
import { items } from './items.ts';
import { shell } from './shell.ts';
import { troubles } from './troubles.ts';

/** What is said before a job is opened, as in English: the board in Spanish waits for these alone. */
export const firstScreen = {
  ...bench,
  ...board,
  ...edition,
  ...introduction,
  ...items,
  ...shell,
  ...troubles,
} as const satisfies Pick<Catalogue, keyof typeof english>;
