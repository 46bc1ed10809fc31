import { type Signal, useComputed, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { isAtHand } from '../../training/scenario/benchTools.ts';
import { isJob } from '../../training/scenario/modes.ts';
import type { Desk } from './Desk.ts';
import { Cautions, IntroductionEnd } from './Introduction.tsx';
import { LogDock } from './LogDock.tsx';
import { LogPanel } from './LogPanel.tsx';
import { CoachPanel, ReaderPanel, ServiceData, SuspectBoard } from './laterPanels.ts';
import type { ReaderPage } from './ReaderPanel.tsx';
import type { ServicePage } from './ServiceData.tsx';
import type { Shop } from './Shop.ts';
import { StepsPanel } from './StepsPanel.tsx';
import { WorkOrder } from './WorkOrder.tsx';

export type SideTab = 'steps' | 'order' | 'log' | 'suspects' | 'data' | 'reader' | 'coach';

interface SideColumnProps {
  readonly desk: Desk;
  readonly shop: Shop;
  readonly tab: SideTab;
  readonly onTab: (tab: SideTab) => void;
  /** The page the reader is opened on. */
  readonly readerPage: Signal<ReaderPage>;
  /** Whether single letters are shortcuts. */
  readonly letters: boolean;
}

/** The column of evidence beside the bench: tabs, and the one button that makes evidence. */
export function SideColumn({ desk, shop, tab, onTab, readerPage, letters }: SideColumnProps) {
  const job = isJob(desk.card.mode);
  const tabs: readonly SideTab[] = [
    ...(desk.card.steps.length > 0 ? (['steps'] as const) : []),
    'order',
    'log',
    ...(job ? (['suspects', 'data'] as const) : []),
    ...(job && isAtHand(desk.card.tools, 'reader') ? (['reader'] as const) : []),
    ...(desk.coach.value.kind === 'off' ? [] : (['coach'] as const)),
  ];
  // Kept here, so that a panel opens on the page where it was left.
  const pages: PageSignals = {
    reader: readerPage,
    service: useSignal<ServicePage>('circuit'),
    insideOpen: useSignal(false),
  };
  useEffect(() => {
    if (tab === 'data') desk.functionsKnown.value = true;
  }, [tab, desk]);
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    if (step === 0) return;
    const next = tabs[(tabs.indexOf(tab) + step + tabs.length) % tabs.length];
    if (next === undefined) return;
    onTab(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <aside class="side">
      <h2 class="visually-hidden">{say('bench.evidence')}</h2>
      <div
        class="tabs"
        role="tablist"
        style={{ '--tabs-in-row': job ? Math.ceil(tabs.length / 2) : tabs.length }}
        onKeyDown={onKeyDown}
      >
        {tabs.map((each) => (
          <button
            key={each}
            id={`tab-${each}`}
            type="button"
            role="tab"
            aria-selected={each === tab}
            aria-controls="side-panel"
            tabIndex={each === tab ? 0 : -1}
            onClick={() => onTab(each)}
          >
            {say(`bench.tabs.${each === 'order' && !job ? 'cautions' : each}`)}
            {each === 'log' && <LogCount desk={desk} />}
          </button>
        ))}
      </div>
      <div
        // Of its own for each tab, so that none opens scrolled to where another was left.
        key={tab}
        id="side-panel"
        class={`side-panel side-${tab}`}
        role="tabpanel"
        aria-labelledby={`tab-${tab}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling panel must be reachable by keys.
        tabIndex={0}
      >
        {panelOf(tab, desk, shop, pages)}
      </div>
      <LogDock desk={desk} letters={letters} />
    </aside>
  );
}

/** How many entries there are: what is logged while another tab is open is seen to have come to something. */
function LogCount({ desk }: { readonly desk: Desk }) {
  const count = useComputed(() => desk.log.value.length).value;
  if (count === 0) return null;
  return (
    <span class="tab-count" aria-hidden="true">
      {count}
    </span>
  );
}

interface PageSignals {
  readonly reader: Signal<ReaderPage>;
  readonly service: Signal<ServicePage>;
  readonly insideOpen: Signal<boolean>;
}

function panelOf(tab: SideTab, desk: Desk, shop: Shop, pages: PageSignals) {
  const job = isJob(desk.card.mode);
  switch (tab) {
    case 'steps':
      return (
        <StepsPanel
          desk={desk}
          insideOpen={pages.insideOpen}
          end={job ? null : <IntroductionEnd desk={desk} shop={shop} level="h3" />}
        />
      );
    case 'order':
      return job ? <WorkOrder card={desk.card} level="h3" /> : <Cautions card={desk.card} />;
    case 'log':
      return <LogPanel desk={desk} />;
    case 'suspects':
      return <SuspectBoard desk={desk} />;
    case 'data':
      return <ServiceData rig={desk.observation.peek().surface.rig} page={pages.service} />;
    case 'reader':
      return <ReaderPanel desk={desk} page={pages.reader} />;
    case 'coach':
      return <CoachPanel desk={desk} />;
  }
}
