import type { Signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { fixed } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { draftOf } from '../../training/draft/Draft.ts';
import { emptyScenarioText } from '../../training/draft/emptyScenario.ts';
import { MAX_SCENARIO_BYTES } from '../../training/scenario/readYaml.ts';
import { copyTitle } from './copyTitle.ts';
import { titleOf } from './DraftDesk.ts';
import type { DraftShelf } from './DraftShelf.ts';
import { openTextFile } from './openTextFile.ts';

/** The ways in which a draft comes to the shelf; each opens what came. */
export interface Incoming {
  begin(): Promise<void>;
  /** Opens files, the last of them to be worked on. What cannot be opened is told in a sentence. */
  open(files: readonly File[]): Promise<void>;
  copy(key: string): Promise<void>;
  /** Whether a draft was begun just now. It is so once. */
  isFresh(key: string): boolean;
}

export function useIncoming(shelf: DraftShelf, notice: Signal<string | null>): Incoming {
  return useMemo(() => incomingTo(shelf, notice), [shelf, notice]);
}

function incomingTo(shelf: DraftShelf, notice: Signal<string | null>): Incoming {
  const open = (key: string): void => {
    location.hash = `#/back-room/${key}`;
  };
  const add = async (text: string, title: string): Promise<void> => open(await shelf.add(text, title));
  let begun: string | null = null;
  return {
    begin: async () => {
      notice.value = null;
      begun = await shelf.add(emptyScenarioText(startingWords(), freshSeed()), '');
      open(begun);
    },
    open: async (files) => {
      notice.value = null;
      for (const file of files) {
        const text = await openTextFile(file);
        if (!text.ok) {
          notice.value = say(`backRoom.${text.error}`, {
            name: file.name,
            size: sizeOf(file.size),
            most: sizeOf(MAX_SCENARIO_BYTES),
          });
        } else if (isSealed(text.value)) notice.value = say('backRoom.fileSealed', { name: file.name });
        else await add(text.value, titleOf(draftOf(text.value)));
      }
    },
    isFresh: (key) => {
      const fresh = begun === key;
      if (fresh) begun = null;
      return fresh;
    },
    copy: async (key) => {
      notice.value = null;
      const draft = await shelf.store.get(key);
      if (draft === undefined) return;
      const taken = shelf.drafts.peek().map(({ title }) => title);
      await shelf.add(draft.text, copyTitle(draft.title || say('backRoom.untitled'), taken));
    },
  };
}

function startingWords() {
  return {
    vehicle: say('backRoom.starting.vehicle'),
    cautions: ([1, 2, 3, 4] as const).map((number) => say(`backRoom.starting.cautions.${number}`)),
  };
}

/** A truck of its own for each job. */
function freshSeed(): string {
  return `truck-${(crypto.getRandomValues(new Uint32Array(1))[0] ?? 0).toString(36)}`;
}

function isSealed(text: string): boolean {
  return /^\s*\{\s*"known-good"\s*:/.test(text);
}

function sizeOf(bytes: number): string {
  return bytes < 1024 * 1024
    ? say('backRoom.kibibytes', { size: fixed(bytes / 1024, 0) })
    : say('backRoom.mebibytes', { size: fixed(bytes / 1024 / 1024, 0) });
}
