import { createContext } from 'preact';

/**
 * The room that a screen is in, which comes first in the window's title; empty for the shop itself. Null where the screen
 * stands in no window of its own, and no title is written.
 */
export const RoomName = createContext<string | null>(null);
