import type { ReadonlySignal, Signal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/translate.ts';
import type { BoardCard } from '../training/scenario/BoardCard.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import { heldSentence } from '../ui/mirror/handWords.ts';
import { BenchScreen } from '../ui/panels/BenchScreen.tsx';
import { IntroductionClosed, IntroductionStart } from '../ui/panels/Introduction.tsx';
import { part, ShortcutsDialog } from '../ui/panels/laterPanels.ts';
import { NotOpened } from '../ui/panels/NotOpened.tsx';
import type { ReaderPage } from '../ui/panels/ReaderPanel.tsx';
import type { SideTab } from '../ui/panels/SideColumn.tsx';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { WorkOrderScreen } from '../ui/panels/WorkOrder.tsx';
import type { RendererKind } from '../ui/scene/renderer/RendererKind.ts';
import type { Voices } from '../ui/sound/Voices.ts';
import type { ThemeName } from '../ui/theme/tokens.ts';
import { BenchStage } from './BenchStage.tsx';
import { backToDraft } from './backToDraft.tsx';
import type { AppShop } from './createShop.ts';
import { type RunningJob, runJob } from './runJob.ts';
import { useLanguageTurn } from './useLanguageTurn.ts';

/** Debrief, replay and charts: fetched while the bench is in use. */
const ClosedJob = part(() => import('./ClosedJob.tsx').then((m) => m.ClosedJob));

interface JobScreenProps {
  readonly card: BoardCard;
  readonly sealed: SealedScenario;
  readonly shop: AppShop;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly renderer: RendererKind | null;
  readonly onSettings: () => void;
}

/** One job from its work order to its debrief. */
export function JobScreen(props: JobScreenProps) {
  const { card, sealed, shop, onSettings } = props;
  // Null when it cannot be opened.
  const [job, setJob] = useState<RunningJob | 'coming' | null>('coming');
  const tab = useSignal<SideTab>(sealed.card.steps.length > 0 ? 'steps' : 'log');
  const readerPage = useSignal<ReaderPage>('codes');
  const shortcuts = useSignal(false);
  const { voices, reducedMotion } = props;
  useEffect(() => {
    let running: RunningJob | null = null;
    let gone = false;
    void runJob({
      id: card.id,
      sealed,
      shop,
      voices,
      reducedMotion,
      openReader: (byKeys) => {
        // The card on the shelf shows what is commanded: pressing it leads to where that is changed.
        tab.value = 'reader';
        readerPage.value = 'command';
        if (byKeys) requestAnimationFrame(() => document.getElementById('tab-reader')?.focus());
      },
      openShortcuts: () => {
        shortcuts.value = true;
      },
    }).then((opened) => {
      if (gone) return opened?.end();
      running = opened;
      setJob(opened);
    });
    return () => {
      gone = true;
      running?.end();
      setJob('coming');
    };
  }, [card, sealed, shop, voices, reducedMotion, tab, readerPage, shortcuts]);
  if (job === null || job === 'coming') {
    return (
      <>
        <TopBar shop={shop} title={sealed.card.title} onSettings={onSettings} />
        {job === null ? (
          <NotOpened shop={shop} />
        ) : (
          <main class="order-page">
            <p role="status">{say('app.loading')}</p>
          </main>
        )}
      </>
    );
  }
  return (
    <>
      <JobPhase
        {...props}
        job={job}
        tab={tab}
        readerPage={readerPage}
        onShortcuts={() => (shortcuts.value = true)}
      />
      {shortcuts.value && (
        <ShortcutsDialog
          letters={shop.settings.value.letterShortcuts}
          onClose={() => (shortcuts.value = false)}
        />
      )}
    </>
  );
}

interface JobPhaseProps extends JobScreenProps {
  readonly job: RunningJob;
  readonly tab: { value: SideTab };
  readonly readerPage: Signal<ReaderPage>;
  readonly onShortcuts: () => void;
}

function JobPhase(props: JobPhaseProps) {
  const { job: running, shop, tab, onSettings, onShortcuts } = props;
  const { desk, bench } = running;
  const job = isJob(desk.card.mode);
  useLanguageTurn(() => desk.retell());
  const phase = desk.phase.value;
  const held = bench.held.value;
  switch (phase) {
    case 'work-order':
      return (
        <>
          <TopBar shop={shop} title={desk.card.title} onSettings={onSettings}>
            {backToDraft(props.card.id)}
          </TopBar>
          {job ? <WorkOrderScreen desk={desk} shop={shop} /> : <IntroductionStart desk={desk} shop={shop} />}
        </>
      );
    case 'bench':
    case 'repair':
      return (
        <BenchScreen
          desk={desk}
          shop={shop}
          held={held === null ? null : heldSentence(held)}
          tab={tab.value}
          readerPage={props.readerPage}
          onTab={(next) => (tab.value = next)}
          onSettings={onSettings}
          onShortcuts={onShortcuts}
          onUndo={() => bench.undo()}
          stage={
            <BenchStage
              bench={bench}
              theme={props.theme}
              letters={shop.settings.value.letterShortcuts}
              renderer={props.renderer}
              onTrouble={running.onTrouble}
            />
          }
        />
      );
    case 'closed':
      return (
        <>
          <TopBar shop={shop} title={desk.card.title} onSettings={onSettings}>
            {backToDraft(props.card.id)}
          </TopBar>
          {job ? (
            <ClosedJob sealed={props.sealed} desk={desk} shop={shop} />
          ) : (
            <IntroductionClosed id={props.card.id} desk={desk} shop={shop} />
          )}
        </>
      );
  }
}
