import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Tick } from '../../base/ticks.ts';
import { say } from '../../text/translate.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../training/sitting/LogEntry.ts';
import type { Desk } from './Desk.ts';
import { DriveReportView } from './DriveReportView.tsx';
import { AfterSheet } from './debrief/AfterSheet.tsx';
import { BoardReview } from './debrief/BoardReview.tsx';
import { ChancesChart } from './debrief/ChancesChart.tsx';
import { DEBRIEF_PARTS } from './debrief/debriefParts.ts';
import { EconomySheet } from './debrief/EconomySheet.tsx';
import { KnewSheet } from './debrief/KnewSheet.tsx';
import { OutcomeSheet } from './debrief/OutcomeSheet.tsx';
import { PartsList } from './debrief/PartsList.tsx';
import { ReflectSheet } from './debrief/ReflectSheet.tsx';
import { ReplaySheet } from './debrief/ReplaySheet.tsx';
import { RulesSheet } from './debrief/RulesSheet.tsx';
import { replayStops, stopOf } from './debrief/replayStops.ts';
import { SafetySheet } from './debrief/SafetySheet.tsx';
import { ScoreSheet } from './debrief/ScoreSheet.tsx';
import { SLIDER_ID } from './debrief/Scrubber.tsx';
import { Sheet } from './debrief/Sheet.tsx';
import { LogTable } from './LogTable.tsx';
import { OpeningHeading } from './OpeningHeading.tsx';
import type { ReplayDesk } from './ReplayDesk.ts';
import type { Shop } from './Shop.ts';
import './debriefSheets.css';

interface DebriefProps {
  readonly desk: Desk;
  readonly shop: Shop;
  readonly facts: DebriefFacts;
  /** Null until it is opened. */
  readonly replay: ReplayDesk | null;
}

/** The end of a job: the score with its reasons, what was known, the job seen again, and everything it rests on. */
export function Debrief({ desk, shop, facts, replay }: DebriefProps) {
  const log = desk.log.value;
  const moment = useSignal(useMemo(() => momentOfVerdict(facts, log), [facts, log]));
  const { lastDrive, miles } = desk.observation.value;
  return (
    <main class="debrief">
      <div class="debrief-frame">
        <header class="debrief-head">
          <OpeningHeading>{say('debrief.title')}</OpeningHeading>
          <div class="debrief-actions">
            <button type="button" class="act" onClick={() => shop.toBoard()}>
              {say('app.back')}
            </button>
            <button type="button" onClick={() => desk.exportRecord()}>
              {say('debrief.export')}
            </button>
          </div>
        </header>
        <PartsList parts={DEBRIEF_PARTS.filter((part) => part !== 'drive' || lastDrive !== null)} />
        <div class="debrief-sheets">
          <KnewSheet facts={facts} />
          <div class="debrief-column">
            <OutcomeSheet facts={facts} />
            <SafetySheet facts={facts} />
            <AfterSheet facts={facts} />
          </div>
          <div class="debrief-column">
            <ScoreSheet facts={facts} />
          </div>
          <Sheet part="chances" class="debrief-wide">
            <h2>{say('stacked.title')}</h2>
            <p class="quiet">{say('stacked.lead')}</p>
            <ChancesChart facts={facts} log={log} moment={moment} />
          </Sheet>
          <ReplaySheet replay={replay} facts={facts} log={log} moment={moment} />
          <RulesSheet facts={facts} />
          <BoardReview facts={facts} />
          <EconomySheet facts={facts} />
          {lastDrive !== null && (
            <Sheet part="drive" class="debrief-wide">
              <DriveReportView report={lastDrive} totalMiles={miles} level="h2" />
            </Sheet>
          )}
          <Sheet part="log" class="debrief-wide">
            <h2>{say('debrief.log')}</h2>
            {log.length === 0 && <p>{say('debrief.logEmpty')}</p>}
            <LogTable
              desk={desk}
              cites={facts.verdict.cites}
              onSee={({ tick }) => {
                moment.value = tick;
                const slider = document.getElementById(SLIDER_ID);
                slider?.focus({ preventScroll: true });
                slider?.scrollIntoView({ block: 'center' });
              }}
            />
          </Sheet>
          <ReflectSheet />
        </div>
      </div>
    </main>
  );
}

/** The replay begins where it was decided. */
function momentOfVerdict({ marks }: DebriefFacts, log: readonly LogEntry[]): Tick {
  const verdict = marks.find(({ action }) => action.kind === 'give-verdict')?.tick ?? 0;
  return stopOf(replayStops(marks, log, marks.at(-1)?.tick ?? 0), verdict);
}
