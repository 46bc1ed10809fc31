import { type ReadonlySignal, useSignal } from '@preact/signals';
import { date } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { Dialog } from '../panels/Dialog.tsx';
import type { Shop } from '../panels/Shop.ts';
import { TopBar } from '../panels/TopBar.tsx';
import { OpenFileButton } from './OpenFileButton.tsx';

/** Why a browser keeps nothing, as the store tells it. */
export type ShelfTrouble = 'store-blocked' | 'store-full' | 'store-failed' | 'store-newer';

interface ShelvedDraft {
  readonly key: string;
  readonly title: string;
  readonly savedAtMs: number;
}

interface ShelfScreenProps {
  readonly shop: Shop;
  readonly drafts: ReadonlySignal<readonly ShelvedDraft[]>;
  readonly trouble: ReadonlySignal<ShelfTrouble | null>;
  /** What was just said of a file. */
  readonly notice: ReadonlySignal<string | null>;
  readonly onNew: () => void;
  readonly onFiles: (files: readonly File[]) => void;
  readonly onCopy: (key: string) => void;
  readonly onRemove: (key: string) => void;
  readonly onSettings: () => void;
}

/** The drafts that this browser keeps, and the ways to begin one. */
export function ShelfScreen(props: ShelfScreenProps) {
  const { shop, notice, trouble, onNew, onFiles, onSettings } = props;
  const drafts = props.drafts.value;
  return (
    <>
      <TopBar shop={shop} title={say('backRoom.title')} onSettings={onSettings} />
      <main class="shelf">
        <h1>{say('backRoom.title')}</h1>
        <p class="lead">{say('backRoom.lead')}</p>
        <p class="quiet">
          {say('backRoom.spoils')} <a href="#/">{say('backRoom.toBoard')}</a>
        </p>
        <div class="shelf-ways">
          <button type="button" class="act" onClick={onNew}>
            {say('backRoom.newDraft')}
          </button>
          <OpenFileButton onFiles={onFiles} />
          <span class="quiet">{say('backRoom.dropHere')}</span>
        </div>
        <p class="shelf-notice" role="alert">
          {notice.value}
        </p>
        {trouble.value !== null && (
          <p class="shelf-notice">{say(`backRoom.storeTrouble.${trouble.value}`)}</p>
        )}
        <h2>{say('backRoom.shelf')}</h2>
        {drafts.length === 0 ? <p class="quiet">{say('backRoom.nothingKept')}</p> : <Drafts {...props} />}
      </main>
    </>
  );
}

function Drafts({ drafts, onCopy, onRemove }: ShelfScreenProps) {
  const asked = useSignal<ShelvedDraft | null>(null);
  return (
    <>
      <ul class="shelf-drafts">
        {drafts.value.map((draft) => {
          const title = draft.title.trim() === '' ? say('backRoom.untitled') : draft.title;
          return (
            <li key={draft.key}>
              <div class="shelf-draft">
                <a href={`#/back-room/${draft.key}`} aria-label={say('backRoom.openDraft', { title })}>
                  {title}
                </a>
                <span class="quiet">{say('backRoom.savedOn', { date: date(draft.savedAtMs) })}</span>
              </div>
              <div class="shelf-keys">
                <button
                  type="button"
                  aria-label={say('backRoom.copyDraft', { title })}
                  onClick={() => onCopy(draft.key)}
                >
                  {say('backRoom.copy')}
                </button>
                <button
                  type="button"
                  aria-label={say('backRoom.removeDraft', { title })}
                  onClick={() => (asked.value = draft)}
                >
                  {say('backRoom.remove')}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
      {asked.value !== null && (
        <RemoveDialog
          draft={asked.value}
          onClose={() => (asked.value = null)}
          onRemove={(key) => {
            asked.value = null;
            onRemove(key);
          }}
        />
      )}
    </>
  );
}

interface RemoveDialogProps {
  readonly draft: ShelvedDraft;
  readonly onClose: () => void;
  readonly onRemove: (key: string) => void;
}

function RemoveDialog({ draft, onClose, onRemove }: RemoveDialogProps) {
  const title = draft.title.trim() === '' ? say('backRoom.untitled') : draft.title;
  return (
    <Dialog title={say('backRoom.removeTitle')} onClose={onClose}>
      <p>{say('backRoom.removeLine', { title })}</p>
      <div class="dialog-foot">
        <button type="button" onClick={onClose}>
          {say('backRoom.keepIt')}
        </button>
        <button type="button" class="act" onClick={() => onRemove(draft.key)}>
          {say('backRoom.removeNow')}
        </button>
      </div>
    </Dialog>
  );
}
