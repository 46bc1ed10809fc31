import type { RefObject } from 'preact';
import type { DriveCycle, DriveReport } from '../../sim/world/Observation.ts';
import { describeCode } from '../../text/describeCode.ts';
import { capital, distance, fixed, shownDistance } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { DashLamp } from './DashLamp.tsx';
import { HoldBar } from './HoldBar.tsx';
import { keepUnits } from './keepUnits.ts';

const COLUMNS = ['cycle', 'miles', 'monitor', 'strokes', 'trip', 'hold', 'codes', 'lamp'] as const;
type Column = (typeof COLUMNS)[number];
/** Counts stand under one another by their last digit. */
const NUMBERS: readonly Column[] = ['miles', 'strokes'];
type Limits = NonNullable<DriveCycle['limits']>;

interface DriveReportProps {
  readonly report: DriveReport;
  readonly totalMiles: number;
  /** Level of its heading. */
  readonly level?: 'h2' | 'h3';
  /** Its heading takes the focus when a drive has just ended. */
  readonly heading?: RefObject<HTMLHeadingElement | null>;
}

/** The last drive, a row a cycle. On a narrow page each row becomes a block with its own labels. */
export function DriveReportView({ report, totalMiles, level, heading }: DriveReportProps) {
  const H = level ?? 'h3';
  const limits = commonLimits(report);
  return (
    <section class="drive-report" aria-labelledby="drive-report-title">
      <H
        id="drive-report-title"
        {...(heading === undefined ? {} : { ref: heading, tabIndex: -1, class: 'opening' })}
      >
        {say('roadTest.report')}
      </H>
      <p class="quiet" role="status">
        {say('roadTest.reportTotal', {
          cycles: say('roadTest.cycleCount', { count: report.cycles.length }),
          miles: distance(report.miles),
          total: distance(totalMiles),
        })}
      </p>
      <table class="ruled drive">
        <thead>
          <tr>
            {COLUMNS.map((column) => (
              <th key={column} scope="col" class={NUMBERS.includes(column) ? 'drive-number' : ''}>
                {say(`roadTest.columns.${column}`)}
                {limits !== null && column === 'trip' && <TripLimit limits={limits} />}
                {limits !== null && column === 'hold' && <HoldLimit limits={limits} />}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {report.cycles.map((cycle, index) => (
            <CycleRow key={index} cycle={cycle} number={index + 1} ownLimits={limits === null} />
          ))}
        </tbody>
      </table>
      <p class="quiet">
        {limits !== null && (
          <span class="narrow-only">
            {say('roadTest.limitsShort', {
              trip: fixed(limits.tripSeconds, 0),
              pass: fixed(limits.passSeconds, 0),
              small: fixed(limits.smallSeconds, 0),
            })}{' '}
          </span>
        )}
        {say('roadTest.limitsNote')}
      </p>
    </section>
  );
}

interface CycleRowProps {
  readonly cycle: DriveCycle;
  readonly number: number;
  /** The cycles had different limits, so each row names its own. */
  readonly ownLimits: boolean;
}

function CycleRow({ cycle, number, ownLimits }: CycleRowProps) {
  const ran = cycle.outcome === 'passed' || cycle.outcome === 'failed';
  const { limits } = cycle;
  const label = (column: Column): string => say(`roadTest.columns.${column}`);
  return (
    <tr class={`cycle cycle-${cycle.outcome}`}>
      <th scope="row" data-label={label('cycle')}>
        {number}
      </th>
      <td class="drive-number" data-label={label('miles')}>
        {fixed(shownDistance(cycle.miles), 0)}
      </td>
      <td data-label={label('monitor')}>
        <OutcomeMark outcome={cycle.outcome} /> {capital(say(`driveOutcomes.${cycle.outcome}`))}
      </td>
      <td class="drive-number" data-label={label('strokes')}>
        {ran ? fixed(cycle.strokes, 0) : say('roadTest.notReached')}
      </td>
      <td data-label={label('trip')}>
        {timeWords(cycle.tripSeconds, ran)}
        {ownLimits && limits !== null && <TripLimit limits={limits} />}
      </td>
      <td data-label={label('hold')}>
        <span class="hold">
          {cycle.holdSeconds === null
            ? say('roadTest.notReached')
            : say('roadTest.seconds', { seconds: fixed(cycle.holdSeconds, 0) })}
          {cycle.holdSeconds !== null && limits !== null && (
            <HoldBar seconds={cycle.holdSeconds} limits={limits} />
          )}
        </span>
        {ownLimits && limits !== null && <HoldLimit limits={limits} />}
      </td>
      <td data-label={label('codes')}>
        {cycle.codes.length === 0
          ? say('roadTest.noCodes')
          : cycle.codes.map((code) => (
              <b key={code} class="code" title={describeCode(code)}>
                {code}{' '}
              </b>
            ))}
      </td>
      <td data-label={label('lamp')}>
        <DashLamp lit={cycle.lamp} small /> {say(cycle.lamp ? 'roadTest.lampLit' : 'roadTest.lampDark')}
      </td>
    </tr>
  );
}

/** The limits of the drive when every cycle that ran had the same; else null. */
function commonLimits({ cycles }: DriveReport): Limits | null {
  const all = cycles.flatMap(({ limits }) => limits ?? []);
  const [first] = all;
  if (first === undefined) return null;
  const same = all.every(
    (each) => each.passSeconds === first.passSeconds && each.tripSeconds === first.tripSeconds,
  );
  return same ? first : null;
}

function TripLimit({ limits }: { readonly limits: Limits }) {
  return (
    <span class="line-hint">
      {keepUnits(say('roadTest.within', { limit: fixed(limits.tripSeconds, 0) }))}
    </span>
  );
}

function HoldLimit({ limits }: { readonly limits: Limits }) {
  return (
    <span class="line-hint">
      {keepUnits(
        say('roadTest.holdLimit', {
          pass: fixed(limits.passSeconds, 0),
          small: fixed(limits.smallSeconds, 0),
        }),
      )}
    </span>
  );
}

function timeWords(seconds: number | null, ran: boolean): string {
  if (seconds !== null) return say('roadTest.seconds', { seconds: fixed(seconds, 0) });
  return say(ran ? 'roadTest.never' : 'roadTest.notReached');
}

/** A sign beside the words: passed, failed, a fault in the circuit, or nothing to judge. */
function OutcomeMark({ outcome }: { readonly outcome: DriveCycle['outcome'] }) {
  const mark = { passed: '✓', failed: '✗', 'circuit-fault': '!', 'not-run': '○' }[outcome];
  return (
    <span class="outcome-mark" aria-hidden="true">
      {mark}
    </span>
  );
}
