import { type ReadonlySignal, type Signal, useSignal } from '@preact/signals';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { download } from '../../platform/browser/download.ts';
import { takeNote } from '../../platform/browser/lastNote.ts';
import type { StoredDraft } from '../../platform/browser/StoredDraft.ts';
import { say } from '../../text/translate.ts';
import { pathOf, rawText } from '../../training/draft/rawText.ts';
import { Columns } from '../../ui/backroom/Columns.tsx';
import { DraftBar } from '../../ui/backroom/DraftBar.tsx';
import type { Destination, Pane } from '../../ui/backroom/DraftBook.ts';
import { FormPane } from '../../ui/backroom/FormPane.tsx';
import { fieldId } from '../../ui/backroom/fieldWords.ts';
import { focusSoon } from '../../ui/backroom/focusSoon.ts';
import { type HandedOut, HandOutDialog, type HandOutWish } from '../../ui/backroom/HandOutDialog.tsx';
import { landAt, landAtProblems, paneOf } from '../../ui/backroom/landAt.ts';
import { ProblemFold } from '../../ui/backroom/ProblemFold.tsx';
import { ProofPanel } from '../../ui/backroom/proof/ProofPanel.tsx';
import { FaultReadings } from '../../ui/backroom/readings/FaultReadings.tsx';
import { TextPane } from '../../ui/backroom/TextPane.tsx';
import { useUndoKeys } from '../../ui/backroom/useUndoKeys.ts';
import { TopBar } from '../../ui/panels/TopBar.tsx';
import type { Voices } from '../../ui/sound/Voices.ts';
import type { ThemeName } from '../../ui/theme/tokens.ts';
import type { AppShop } from '../createShop.ts';
import { holdJob } from '../holdJob.ts';
import { BenchPane, useLiveBench } from './BenchPane.tsx';
import { DraftDesk, titleOf } from './DraftDesk.ts';
import type { DraftShelf } from './DraftShelf.ts';
import { drawnCode, handOut, tryAsLearner } from './handOut.ts';
import type { Incoming } from './useIncoming.ts';
import { useLeaving } from './useLeaving.ts';
import { useProof } from './useProof.ts';

interface DraftScreenProps {
  readonly shop: AppShop;
  readonly shelf: DraftShelf;
  readonly draft: string;
  readonly notice: Signal<string | null>;
  readonly incoming: Incoming;
  /** Whether the text was asked to stand beside the form; null leaves it to the room there is. */
  readonly textBeside: Signal<boolean | null>;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly renderer: Parameters<typeof BenchPane>[0]['renderer'];
  readonly onSettings: () => void;
}

type Opening = 'coming' | 'gone' | 'elsewhere' | StoredDraft;

/** One draft: claimed for this page, read from where it is kept, and open to be written. */
export function DraftScreen(props: DraftScreenProps) {
  const { shop, shelf, draft, onSettings } = props;
  const [opening, setOpening] = useState<Opening>('coming');
  useEffect(() => {
    let gone = false;
    let letGo: (() => void) | null = null;
    void (async () => {
      letGo = await holdJob(`draft-${draft}`);
      const stored = letGo === null ? 'elsewhere' : ((await lastOf(shelf, draft)) ?? 'gone');
      if (gone) letGo?.();
      else setOpening(stored);
    })();
    return () => {
      gone = true;
      letGo?.();
    };
  }, [draft, shelf]);
  if (typeof opening !== 'string') return <OpenDraft {...props} stored={opening} />;
  return (
    <>
      <TopBar shop={shop} title={say('backRoom.title')} onSettings={onSettings} />
      <main class="shelf">
        {opening !== 'coming' && (
          <>
            <h1>{say('backRoom.title')}</h1>
            <p class="shelf-notice" role="alert">
              {say(`backRoom.${opening}`)}
            </p>
            <div class="shelf-ways">
              <button
                type="button"
                class="act"
                onClick={() => {
                  location.hash = '#/back-room';
                }}
              >
                {say('backRoom.toShelf')}
              </button>
            </div>
          </>
        )}
      </main>
    </>
  );
}

function OpenDraft(props: DraftScreenProps & { readonly stored: StoredDraft }) {
  const { shop, shelf, stored, notice, incoming, onSettings } = props;
  const shown = useSignal<readonly Pane[]>(['form']);
  const show = (pane: Pane): void => {
    shown.value = [pane, ...shown.peek().filter((each) => each !== pane)];
  };
  const desk = useMemo(
    () =>
      new DraftDesk({
        stored,
        store: shelf.store,
        trouble: shelf.trouble,
        nowMs: () => Date.now(),
        goTo: (place: Destination) => {
          show(paneOf(place));
          landAt(place);
        },
        edited: () => {
          notice.value = null;
        },
        refused: (problem) => {
          notice.value = say(`backRoom.cannotChange.${problem}`);
        },
      }),
    [stored, shelf, notice],
  );
  useLeaving(desk);
  useUndoKeys(desk, notice);
  useEffect(() => {
    if (incoming.isFresh(stored.key)) focusSoon(`#${fieldId('title')}`);
  }, [incoming, stored.key]);
  const handing = useSignal(false);
  const live = useLiveBench(props, desk);
  const proof = useProof(desk);
  const title = titleOf(desk.draft.value);
  return (
    <div class="back-room">
      <TopBar
        shop={shop}
        title={title.trim() === '' ? say('backRoom.untitled') : title}
        heading
        under={say('backRoom.title')}
        onSettings={onSettings}
      />
      <main class="back-main">
        <DraftBar
          book={desk}
          notice={notice}
          onSave={() => download(fileNameOf(desk), desk.text.peek(), 'application/yaml')}
          onShelf={() => {
            location.hash = '#/back-room';
          }}
        >
          <button type="button" class="act" onClick={() => (handing.value = true)}>
            {say('handOut.open')}
          </button>
        </DraftBar>
        <ProblemFold book={desk} />
        <Columns
          shown={shown.value}
          onShow={show}
          textBeside={props.textBeside}
          render={(pane, isShown) => {
            switch (pane) {
              case 'form':
                return (
                  <FormPane
                    book={desk}
                    readings={
                      <FaultReadings state={proof.readings.state} again={() => proof.readings.again()} />
                    }
                  />
                );
              case 'text':
                return <TextPane book={desk} />;
              case 'bench':
                return isShown ? <BenchPane {...props} desk={desk} live={live} /> : null;
              case 'proof':
                return (
                  <ProofPanel
                    state={proof.proof.state}
                    again={() => proof.proof.again()}
                    goTo={(place) => desk.goTo(place)}
                    onMend={({ path, value }) =>
                      desk.edit([{ kind: 'set', path: pathOf(path), value }], { kind: 'changed', path })
                    }
                  />
                );
            }
          }}
        />
      </main>
      {handing.value && (
        <HandOutDialog
          scenario={desk.draft.value.scenario}
          proof={proof.proof.state}
          drawCode={drawnCode}
          onHandOut={(wish) => handOutNow(desk, wish)}
          onTry={() => {
            const { scenario } = desk.draft.peek();
            if (scenario !== null) void tryAsLearner(scenario, stored.key, shop);
          }}
          onProblems={() => {
            handing.value = false;
            landAtProblems();
          }}
          onProof={() => {
            handing.value = false;
            show('proof');
            focusSoon('#pane-proof-body');
          }}
          onClose={() => (handing.value = false)}
        />
      )}
    </div>
  );
}

/** A draft as it was last written, if only in the moment in which its page was closed. */
async function lastOf({ store }: DraftShelf, key: string): Promise<StoredDraft | undefined> {
  const stored = await store.get(key);
  const note = takeNote(key);
  if (stored === undefined || note === null || note.savedAtMs < stored.savedAtMs) return stored;
  const last = { ...stored, ...note };
  await store.put(last);
  return last;
}

/** What is handed out is the draft as it stands when the button is pressed. */
async function handOutNow(desk: DraftDesk, wish: HandOutWish): Promise<HandedOut | null> {
  const { form, scenario } = desk.draft.peek();
  return scenario === null ? null : handOut(form.text, scenario, wish);
}

/** As the scenario calls itself; what has no name yet is a scenario. */
function fileNameOf(desk: DraftDesk): string {
  const id = rawText(desk.draft.peek().form.at(['id']));
  return `${/^[a-z0-9-]{1,60}$/.test(id) ? id : 'scenario'}.yaml`;
}
