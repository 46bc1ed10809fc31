import type { Signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Tick } from '../../../base/ticks.ts';
import { describeAction } from '../../../text/describeAction.ts';
import { describeInstruments } from '../../../text/describeInstruments.ts';
import { capital, clock } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import { InsideView } from '../../inside/InsideView.tsx';
import type { ReplayDesk, ReplayMoment } from '../ReplayDesk.ts';
import { TraceChart } from '../TraceChart.tsx';
import { entrySentence } from './bandNames.ts';
import { ReplayControls } from './ReplayControls.tsx';
import { lastAt, replayStops } from './replayStops.ts';
import { Scrubber } from './Scrubber.tsx';
import { Sheet } from './Sheet.tsx';
import { usePlayer } from './usePlayer.ts';

interface ReplayProps {
  readonly facts: DebriefFacts;
  readonly log: readonly LogEntry[];
  readonly moment: Signal<Tick>;
}

/** The sitting seen again at any moment: slider, the unit cut open, the learner's own instruments, and the strip chart. */
export function ReplaySheet(props: ReplayProps & { readonly replay: ReplayDesk | null }) {
  const { replay, ...rest } = props;
  return (
    <Sheet part="replay" class="debrief-wide">
      <h2>{say('replay.title')}</h2>
      <p class="quiet">{say('replay.lead')}</p>
      {replay === null ? <p role="status">{say('replay.working')}</p> : <Replay replay={replay} {...rest} />}
      <h3>{say('debrief.trace')}</h3>
      <p class="quiet">{say('debrief.traceLead')}</p>
      <TraceChart facts={props.facts} moment={props.moment} />
    </Sheet>
  );
}

function Replay({ replay, facts, log, moment }: ReplayProps & { readonly replay: ReplayDesk }) {
  const player = usePlayer(replay, moment);
  const { endTick } = replay;
  const stops = useMemo(() => replayStops(facts.marks, log, endTick), [facts, log, endTick]);
  const shown = player.shown.value;
  const failure = player.failure.value;
  if (failure !== null) return <p class="warn">{say('replay.failed', { detail: failure })}</p>;
  return (
    <>
      <ReplayControls player={player} moment={moment} stops={stops} endTick={endTick} />
      <Scrubber endTick={endTick} moment={moment} marks={facts.marks} log={log} stops={stops} />
      <p id="replay-keys" class="quiet replay-keys">
        {say('replay.keys')}
      </p>
      {shown === null ? (
        <p role="status">{say('replay.working')}</p>
      ) : (
        <div class="replay-now">
          <Instruments shown={shown} facts={facts} log={log} />
          <InsideView inside={shown.inside} seen={shown.observation} />
        </div>
      )}
    </>
  );
}

/** What was last done and written, and what the instruments said. */
function Instruments(props: {
  readonly shown: ReplayMoment;
  readonly facts: DebriefFacts;
  readonly log: readonly LogEntry[];
}) {
  const { shown, facts, log } = props;
  const action = lastAt(facts.marks, shown.tick);
  const entry = lastAt(log, shown.tick);
  return (
    <div class="replay-beside">
      <div class="replay-last">
        <section>
          <h3>{say('replay.lastAction')}</h3>
          <p>
            {action === undefined ? (
              <span class="quiet">{say('replay.none')}</span>
            ) : (
              <>
                <span class="quiet">{clock(action.tick)}</span> {capital(describeAction(action.action))}
              </>
            )}
          </p>
        </section>
        <section>
          <h3>{say('replay.lastEntry')}</h3>
          <p>
            {entry === undefined ? (
              <span class="quiet">{say('replay.none')}</span>
            ) : (
              <>
                <b>{entry.id}</b> {entrySentence(entry)}
              </>
            )}
          </p>
        </section>
      </div>
      <section>
        <h3>{say('replay.instruments')}</h3>
        <dl class="replay-instruments">
          {describeInstruments(shown.observation).map(({ name, says }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{says}</dd>
            </div>
          ))}
        </dl>
      </section>
    </div>
  );
}
