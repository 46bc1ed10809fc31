import { bench } from './bench.ts';
import { board } from './board.ts';
import { edition } from './edition.ts';
import { introduction } from './introduction.ts';
import { items } from './items.ts';
import { shell } from './shell.ts';
import { troubles } from './troubles.ts';

/**
 * The sentences of the job board, of the frame around every screen, of the settings, and of what may go wrong: all that is said
 * before a job is opened. They come with the page; the others come with the bench (`benchScreen.ts`) and after it.
 */
export const firstScreen = {
  ...bench,
  ...board,
  ...edition,
  ...introduction,
  ...items,
  ...shell,
  ...troubles,
} as const;
