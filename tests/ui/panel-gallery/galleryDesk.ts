import { signal } from '@preact/signals';
import type { Tick } from '../../../src/base/ticks.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { priceOf } from '../../../src/training/sitting/book.ts';
import type { LogEntry } from '../../../src/training/sitting/LogEntry.ts';
import type { MarkedItem, ScenarioCard } from '../../../src/training/sitting/SittingView.ts';
import type { CoachState, Desk } from '../../../src/ui/panels/Desk.ts';
import { startObservation } from '../layout/benchObservations.ts';

const tick = (seconds: number): Tick => (seconds * 20_000) as Tick;

/** The bench of the gallery: asleep, or awake with codes, in the middle of a job. */
export function galleryObservation(change: Partial<Observation> = {}): Observation {
  const start = startObservation();
  return {
    ...start,
    tick: tick(760),
    key: 'on',
    plug: { mated: true, pins: [false, false, true] },
    leads: { ...start.leads, 'meter-red': 'cavity-3-back', 'meter-black': 'battery-negative' },
    sites: {
      ...start.sites,
      'canister-port': 'pump-hose',
      'air-port': 'cap-a',
      'canister-hose-end': 'plug-a',
    },
    gauge: { needleKPa: 50.8, steady: true },
    meter: {
      ...start.meter,
      function: 'volts-dc',
      ranges: ['600 mV', '6 V', '60 V', '600 V'],
      display: { digits: '8.92', unit: 'V', value: 8.92, bar: 0.15, settled: true },
    },
    reader: AWAKE,
    dashLamp: true,
    ...change,
  };
}

const AWAKE: Observation['reader'] = {
  awake: true,
  senseVolts: 8.92,
  senseState: 'open',
  command: 'off',
  driver: 'off',
  codes: [
    { code: 'P0456', status: 'stored' },
    { code: 'P2404', status: 'pending' },
    { code: 'P0456', status: 'permanent' },
  ],
  freeze: [
    {
      code: 'P0456',
      miles: -212,
      fuelPercent: 62,
      ambientC: 17,
      barometerKPa: 97.3,
      batteryVolts: 14.1,
      senseVolts: 8.9,
      strokes: 59,
      holdSeconds: 21.4,
    },
    {
      code: 'P2404',
      miles: 0,
      fuelPercent: 60,
      ambientC: 18,
      barometerKPa: 97.3,
      batteryVolts: 12.5,
      senseVolts: 3.94,
      strokes: 0,
      holdSeconds: null,
    },
  ],
  monitor: { phase: 'hold', seconds: 12.4, limitSeconds: 45, complete: false },
  fuelPercent: 60,
};

export const ASLEEP: Observation['reader'] = startObservation().reader;

/** The bench with everything back on the truck, and a drive behind it. */
export function roadObservation(): Observation {
  const base = galleryObservation();
  const limits = { tripSeconds: 98, smallSeconds: 10, passSeconds: 37 };
  return {
    ...base,
    key: 'off',
    dashLamp: false,
    reader: ASLEEP,
    plug: { mated: true, pins: [false, false, false] },
    leads: { ...base.leads, 'meter-red': null, 'meter-black': null },
    sites: {
      ...base.sites,
      'canister-port': 'canister-hose',
      'air-port': 'air-hose',
      'canister-hose-end': null,
    },
    miles: 131,
    lastDrive: {
      id: 1,
      miles: 131,
      cycles: [
        {
          miles: 31,
          outcome: 'not-run',
          codes: [],
          strokes: 0,
          tripSeconds: null,
          holdSeconds: null,
          limits: null,
          lamp: true,
        },
        {
          miles: 34,
          outcome: 'failed',
          codes: ['P0456'],
          strokes: 52,
          tripSeconds: 26.1,
          holdSeconds: 21.4,
          limits,
          lamp: true,
        },
        {
          miles: 28,
          outcome: 'passed',
          codes: [],
          strokes: 51,
          tripSeconds: 25.6,
          holdSeconds: 82,
          limits,
          lamp: true,
        },
        {
          miles: 38,
          outcome: 'circuit-fault',
          codes: ['P2400', 'P2404'],
          strokes: 0,
          tripSeconds: null,
          holdSeconds: null,
          limits: null,
          lamp: true,
        },
      ],
    },
  };
}

/** A log with every kind of entry in it. */
function galleryLog(seen: Observation): readonly LogEntry[] {
  const heard = { clicksOn: 0, clicksOff: 0, by: null };
  const still = { lowKPa: 50.8, highKPa: 50.8 };
  const rest = { heard, headline: 'meter', gaugeSwing: still, note: '' } as const;
  const finding = (
    id: number,
    how: 'look' | 'listen' | 'drag',
    signs: LogEntry['seen']['findings'][number]['signs'],
  ) => ({ id, tick: tick(100 + id), how, at: 'plug', cavity: how === 'drag' ? 2 : null, signs }) as const;
  return [
    {
      id: 1,
      tick: tick(70),
      about: 'reading',
      seen: {
        ...seen,
        leads: { ...seen.leads, 'meter-red': 'battery-positive' },
        gauge: { needleKPa: 0, steady: true },
        meter: { ...seen.meter, display: { ...seen.meter.display, digits: '12.61', value: 12.61 } },
      },
      ...rest,
    },
    { id: 2, tick: tick(102), about: 'codes', seen: { ...seen, reader: AWAKE }, ...rest },
    {
      id: 3,
      tick: tick(130),
      about: 'finding',
      seen: { ...seen, findings: [finding(1, 'look', ['green-corrosion', 'moisture'])] },
      ...rest,
    },
    {
      id: 4,
      tick: tick(150),
      about: 'finding',
      seen: { ...seen, findings: [finding(2, 'drag', ['terminal-slack'])] },
      ...rest,
    },
    { id: 5, tick: tick(400), about: 'reading', seen, ...rest, note: 'held twenty seconds' },
    { id: 6, tick: tick(700), about: 'drive', seen: roadObservation(), ...rest },
  ];
}

const CARD: ScenarioCard = {
  id: 'gallery',
  contentHash: '',
  title: 'Every hose is new',
  summary: '',
  mode: 'practice',
  level: 2,
  minutes: 40,
  aims: [],
  workOrder: {
    number: 'HP-2231',
    vehicle: 'Truck 14, petrol utility truck, Harrow Point Water District (invented), 121 900 miles',
    complaint: 'Yellow lamp on, nothing else.',
    history: ['July, canister hose and air hose renewed. The lamp came back after some 310 miles.'],
    codes: [{ code: 'P0456', status: 'stored' }],
    cautions: ['Petrol vapour is about. No flame, no smoking.'],
  },
  steps: [],
};

const MARKS: readonly MarkedItem[] = [
  { item: 'fuse', mark: 'cleared', cites: [1], tick: tick(90) },
  { item: 'sense-wire', mark: 'convicted', cites: [1, 5], tick: tick(720) },
];

/** A desk that shows one moment and does nothing but show it. */
export function galleryDesk(
  seen: Observation,
  phase: 'bench' | 'repair',
  withLog: boolean,
  coach: CoachState = { kind: 'silent' },
): Desk {
  return {
    card: CARD,
    phase: signal(phase),
    observation: signal(seen),
    log: signal(withLog ? galleryLog(galleryObservation()) : []),
    strip: signal([]),
    tick: signal(seen.tick),
    step: signal(0),
    passedOver: signal([]),
    touch: signal(null),
    inside: signal(null),
    showInside: () => {},
    lastWords: null,
    event: signal(null),
    verdict: signal(
      phase === 'repair' ? { item: 'sense-wire', mode: null, cites: [1, 5], tick: tick(720) } : null,
    ),
    renewed: signal(phase === 'repair' ? [{ item: 'sense-wire', tick: tick(730) }] : []),
    spent: signal({ bookMinutes: 0, money: 0 }),
    marks: signal(MARKS),
    coach: signal<CoachState>(coach),
    facts: signal(null),
    functionsKnown: signal(true),
    caption: signal({ id: 1, sentence: 'Red lead placed on cavity 3 wire side.', tone: 'news' }),
    undoNext: signal([{ kind: 'lift-lead', end: 'meter-red' }]),
    undoWhy: signal(null),
    undo: () => {},
    act: () => null,
    roadTest: async () => null,
    wait: () => {},
    waitSteady: () => {},
    logReading: () => {},
    tell: () => {},
    priceOf,
    askCoach: () => {},
    exportRecord: () => {},
  };
}
