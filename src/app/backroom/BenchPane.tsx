import { type ReadonlySignal, type Signal, useSignal } from '@preact/signals';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { unreadProblem } from '../../training/draft/Draft.ts';
import { truckOf } from '../../training/draft/standIn.ts';
import { heldSentence } from '../../ui/mirror/handWords.ts';
import { HandBar } from '../../ui/panels/HandBar.tsx';
import { InsideFold } from '../../ui/panels/InsideFold.tsx';
import { ReaderPanel, ShortcutsDialog } from '../../ui/panels/laterPanels.ts';
import type { ReaderPage } from '../../ui/panels/ReaderPanel.tsx';
import type { Voices } from '../../ui/sound/Voices.ts';
import type { ThemeName } from '../../ui/theme/tokens.ts';
import { BenchStage } from '../BenchStage.tsx';
import type { AppShop } from '../createShop.ts';
import { useLanguageTurn } from '../useLanguageTurn.ts';
import type { DraftDesk } from './DraftDesk.ts';
import { LiveBench } from './LiveBench.ts';

interface BenchPaneProps {
  readonly desk: DraftDesk;
  readonly live: OpenBench;
  readonly shop: AppShop;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly renderer: Parameters<typeof BenchStage>[0]['renderer'];
}

/** The bench of an open draft: it lives as long as the draft is open, whether or not it is looked at. */
export interface OpenBench {
  readonly live: LiveBench;
  readonly readerOpen: Signal<boolean>;
  readonly shortcutsOpen: Signal<boolean>;
}

export function useLiveBench(
  { shop, reducedMotion, voices }: Pick<BenchPaneProps, 'shop' | 'reducedMotion' | 'voices'>,
  desk: DraftDesk,
): OpenBench {
  const shortcutsOpen = useSignal(false);
  const readerOpen = useSignal(false);
  const live = useMemo(
    () =>
      new LiveBench({
        settings: shop.settings,
        reducedMotion,
        voices,
        openReader: () => {
          readerOpen.value = true;
        },
        openShortcuts: () => {
          shortcutsOpen.value = true;
        },
      }),
    [shop, reducedMotion, voices, readerOpen, shortcutsOpen],
  );
  useEffect(() => () => live.end(), [live]);
  // Whether or not it is looked at just now.
  useLanguageTurn(() => live.running.peek()?.desk.retell());
  const draft = desk.draft.value;
  const truck = useMemo(() => truckOf(draft), [draft]);
  useEffect(() => {
    if (truck !== null) live.follow(truck);
    else live.stale.value = true;
  }, [live, truck]);
  return { live, readerOpen, shortcutsOpen };
}

/** The bench beside what is written, with its faults in. */
export function BenchPane(props: BenchPaneProps) {
  const { desk, shop, live: open } = props;
  const { live, readerOpen: reader, shortcutsOpen: shortcuts } = open;
  useEffect(() => {
    live.look(true);
    return () => live.look(false);
  }, [live]);
  // The same function every time: a new one would have the bench drawn anew.
  const onTrouble = useCallback(
    (trouble: 'context-lost' | 'no-graphics') => {
      shop.trouble.value = { key: `troubles.${trouble}`, offers: [] };
    },
    [shop],
  );
  const running = live.running.value;
  const unread = unreadProblem(desk.draft.value) !== null;
  const letters = shop.settings.value.letterShortcuts;
  return (
    <div class="bench-pane">
      <p class="bench-pane-line" role="status">
        {live.failure.value !== null
          ? say('backRoom.bench.failed', { detail: live.failure.value })
          : live.stale.value
            ? say(`backRoom.bench.${running === null ? 'waiting' : 'stale'}${unread ? 'Unread' : ''}`)
            : say(live.driving.value ? 'backRoom.bench.setting' : 'backRoom.bench.follows')}
      </p>
      {running !== null && (
        <>
          <BenchStage
            bench={running.bench}
            theme={props.theme}
            letters={letters}
            renderer={props.renderer}
            beside
            onTrouble={onTrouble}
          />
          <Under
            live={running}
            letters={letters}
            reader={reader}
            onClear={() => live.clear()}
            onShortcuts={() => (shortcuts.value = true)}
          />
        </>
      )}
      {shortcuts.value && <ShortcutsDialog letters={letters} onClose={() => (shortcuts.value = false)} />}
    </div>
  );
}

interface UnderProps {
  readonly live: NonNullable<LiveBench['running']['value']>;
  readonly letters: boolean;
  readonly reader: { value: boolean };
  readonly onClear: () => void;
  readonly onShortcuts: () => void;
}

/** Under the stage: the hand's bar, and what can be opened. */
function Under({ live: { desk, bench }, letters, reader, onClear, onShortcuts }: UnderProps) {
  const inside = useSignal(false);
  const page = useSignal<ReaderPage>('codes');
  const held = bench.held.value;
  return (
    <>
      <HandBar
        desk={desk}
        held={held === null ? null : heldSentence(held)}
        letters={letters}
        onShortcuts={onShortcuts}
        onUndo={() => bench.undo()}
      />
      <div class="bench-pane-folds">
        <button type="button" onClick={onClear}>
          {say('backRoom.bench.anew')}
        </button>
        <InsideFold desk={desk} open={inside} />
        <details
          class="inside-fold"
          open={reader.value}
          onToggle={(event) => (reader.value = event.currentTarget.open)}
        >
          <summary>{say('backRoom.bench.reader')}</summary>
          {reader.value && <ReaderPanel desk={desk} page={page} />}
        </details>
      </div>
    </>
  );
}
