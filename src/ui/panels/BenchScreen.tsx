import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { clock } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { isJob } from '../../training/scenario/modes.ts';
import { DashView } from './DashView.tsx';
import type { Desk } from './Desk.ts';
import { HandBar } from './HandBar.tsx';
import { leave } from './Introduction.tsx';
import { CloseJobDialog, CupboardDialog, RoadTestDialog, VerdictDialog } from './laterPanels.ts';
import type { ReaderPage } from './ReaderPanel.tsx';
import { repairBanner } from './repairBanner.ts';
import type { Shop } from './Shop.ts';
import { SideColumn, type SideTab } from './SideColumn.tsx';
import { StepStrip } from './StepStrip.tsx';
import { spentWords } from './spentWords.ts';
import { TopBar } from './TopBar.tsx';

type BenchDialog = 'verdict' | 'cupboard' | 'road' | 'close';

interface BenchScreenProps {
  readonly desk: Desk;
  readonly shop: Shop;
  /** The drawn bench with its mirror. */
  readonly stage: ComponentChildren;
  readonly held: string | null;
  readonly tab: SideTab;
  readonly onTab: (tab: SideTab) => void;
  /** The page the reader is opened on. */
  readonly readerPage: Signal<ReaderPage>;
  readonly onSettings: () => void;
  readonly onShortcuts: () => void;
  /** Puts back what is held, or what was done last. */
  readonly onUndo: () => void;
}

/** The bench with its head and its column of evidence: for the test and for the repair alike. */
export function BenchScreen(props: BenchScreenProps) {
  const { desk, shop, stage, held, tab, onTab, readerPage, onSettings, onShortcuts } = props;
  const letters = shop.settings.value.letterShortcuts;
  const open = useSignal<BenchDialog | null>(null);
  const close = (): void => {
    open.value = null;
  };
  const job = isJob(desk.card.mode);
  const repair = desk.phase.value === 'repair';
  const verdict = desk.verdict.value;
  return (
    <div class="bench-screen">
      <TopBar
        shop={shop}
        title={desk.card.title}
        heading
        under={[say(`modes.${desk.card.mode}`), spentWords(desk)].filter((each) => each !== null).join(' · ')}
        status={job && <Status desk={desk} />}
        onSettings={onSettings}
      >
        {job ? (
          <>
            <button type="button" onClick={() => (open.value = 'cupboard')}>
              {say('bench.cupboard')}
            </button>
            <button type="button" onClick={() => (open.value = 'road')}>
              {say('roadTest.open')}
            </button>
            <button type="button" class="act" onClick={() => (open.value = repair ? 'close' : 'verdict')}>
              {say(repair ? 'bench.closeJob' : 'bench.verdict')}
            </button>
          </>
        ) : desk.step.value < desk.card.steps.length ? (
          // It stays open: who pressed it unawares goes on from the board where they were.
          <button type="button" class="plain skip-rest" onClick={() => shop.toBoard()}>
            {say('introduction.skipRest')}
          </button>
        ) : (
          <button type="button" onClick={() => leave(desk, () => shop.toBoard())}>
            {say('introduction.done')}
          </button>
        )}
      </TopBar>
      {repair && verdict !== null && (
        <p class="repair-banner" role="status">
          {repairBanner(desk, verdict.item)}
        </p>
      )}
      <main class="bench-main">
        <section class="bench-area" aria-label={say('bench.region')}>
          <StepStrip desk={desk} />
          {stage}
          <HandBar
            desk={desk}
            held={held}
            letters={letters}
            onShortcuts={onShortcuts}
            onUndo={props.onUndo}
          />
        </section>
        <SideColumn
          desk={desk}
          shop={shop}
          tab={tab}
          onTab={onTab}
          readerPage={readerPage}
          letters={letters}
        />
      </main>
      {open.value === 'verdict' && <VerdictDialog desk={desk} onClose={close} />}
      {open.value === 'cupboard' && <CupboardDialog desk={desk} onClose={close} />}
      {open.value === 'road' && <RoadTestDialog desk={desk} onClose={close} />}
      {open.value === 'close' && <CloseJobDialog desk={desk} onClose={close} />}
    </div>
  );
}

/** What the truck shows of itself, and the time on the job. */
function Status({ desk }: { readonly desk: Desk }) {
  return (
    <>
      <DashView desk={desk} />
      <span class="elapsed" role="timer" aria-label={say('bench.elapsed')}>
        {clock(desk.tick.value)}
      </span>
    </>
  );
}
