/**
 * A learner's hands on the page, by pointer or by keys. A job script written once is worked by either.
 * Names are the beginnings of the controls' accessible names, as a learner would read them.
 */
export interface Hands {
  /** Takes a lead, hose, cap, plug or pin and puts it on a place. */
  carry(thing: string, place: Place): Promise<void>;
  /** Takes a lead, hose, cap or plug off to the mat. */
  layDown(thing: string): Promise<void>;
  /** Presses a button on the bench or beside it. */
  press(button: string): Promise<void>;
  /** Chooses one of a group of radio buttons. */
  choose(group: string, option: string): Promise<void>;
  /** Opens a tab of the side column. */
  open(tab: string): Promise<void>;
  /** One full stroke of the hand pump. */
  stroke(): Promise<void>;
  log(): Promise<void>;
  /** Gives the verdict and locks it. `mode` is what is said to be wrong with the item. */
  verdict(item: string, mode: string, cites: readonly number[]): Promise<void>;
  /** Fits a part from the cupboard. */
  fit(item: string): Promise<void>;
  /** Closes the job, and says so once more when asked. */
  close(): Promise<void>;
}

/** A place by the name its control begins with, and by its name in the list of places where that differs. */
export interface Place {
  readonly control: string;
  readonly listed: string;
}

/** A place whose control and list entry have the same name. */
export function place(name: string): Place {
  return { control: name, listed: name };
}

/** A barb or hose end: its control also says what is on it. */
export function site(name: string): Place {
  return { control: `${name}, open`, listed: name };
}

export function startsWith(text: string): RegExp {
  return new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);
}
