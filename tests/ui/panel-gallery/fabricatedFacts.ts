import { secondsToTicks, type Tick } from '../../../src/base/ticks.ts';
import { ITEMS } from '../../../src/sim/devices/items.ts';
import type { EvidenceFacts, EvidenceStep } from '../../../src/training/evidence/EvidenceFacts.ts';
import type { JobPar } from '../../../src/training/evidence/JobPar.ts';
import type { LogEntry } from '../../../src/training/sitting/LogEntry.ts';
import type { VerdictItem } from '../../../src/training/sitting/SittingAction.ts';

/** Evidence and par for looking at the debrief alone: invented numbers on a real sitting's log. Not for judging anything. */
const TOOLS: readonly VerdictItem[] = [
  'hand-pump',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
];
const START: Readonly<Partial<Record<VerdictItem, number>>> = {
  unit: 0.24,
  'canister-hose': 0.17,
  'filler-cap': 0.16,
  canister: 0.12,
  'tank-seal': 0.11,
  'purge-valve': 0.1,
  'air-hose': 0.05,
};
/** How an entry in the middle of the job moves each item: by the number of entries gone by. */
const FALLS: Readonly<Partial<Record<VerdictItem, number>>> = {
  'canister-hose': 0.62,
  'filler-cap': 0.7,
  canister: 0.66,
  'tank-seal': 0.74,
  'purge-valve': 0.78,
  'air-hose': 0.8,
};

export function fabricatedSteps(log: readonly LogEntry[], until: Tick): readonly EvidenceStep[] {
  const truck: readonly VerdictItem[] = [...ITEMS.filter((item) => !TOOLS.includes(item)), 'nothing-wrong'];
  const entries = log.filter(({ tick }) => tick <= until);
  return [{ id: 0, tick: 0 }, ...entries].map(({ id, tick }, index) => {
    const weights = truck.map((item) => (START[item] ?? 0.004) * (FALLS[item] ?? 0.8) ** index);
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    return {
      entry: id,
      tick,
      items: truck.map((item, i) => ({ item, chance: (weights[i] ?? 0) / whole })),
      tools: TOOLS.map((item) => ({ item, chance: item === 'hand-pump' ? 0.03 * 0.8 ** index : 0.004 })),
    };
  });
}

export function fabricatedEvidence(log: readonly LogEntry[], until: Tick): EvidenceFacts {
  const steps = fabricatedSteps(log, until);
  const mark = (item: VerdictItem, seconds: number, cites: readonly number[]) => ({
    item,
    tick: secondsToTicks(seconds),
    cites,
  });
  return {
    steps,
    verdict: {
      named: 'unit',
      mode: null,
      group: ['unit'],
      prior: 0.24,
      cited: 0.91,
      shown: steps.at(-1)?.items.find(({ item }) => item === 'unit')?.chance ?? 0,
      leads: true,
      weight: 0.86,
    },
    marks: [
      {
        ...mark('canister-hose', 150, [4]),
        mark: 'cleared',
        prior: 0.17,
        cited: 0.01,
        shown: 0.01,
        judgement: 'carried',
      },
      {
        ...mark('filler-cap', 200, []),
        mark: 'cleared',
        prior: 0.16,
        cited: 0.16,
        shown: 0.12,
        judgement: 'too-early',
      },
      {
        ...mark('purge-valve', 260, [2]),
        mark: 'cleared',
        prior: 0.1,
        cited: 0.11,
        shown: 0.008,
        judgement: 'wrong-test',
      },
      {
        ...mark('unit', 340, [9, 11, 12, 14]),
        mark: 'convicted',
        prior: 0.24,
        cited: 0.91,
        shown: 0.97,
        judgement: 'carried',
      },
    ],
    settling: { test: 'trip-and-reset', bits: 0.3, minutes: 12 },
  };
}

export const FABRICATED_PAR: JobPar = {
  tests: [
    'meter-on-battery',
    'meter-leads-together',
    'hand-pump-dead-end',
    'codes-and-freeze-data',
    'vacuum-and-sense',
    'smoke-vessel-alone',
    'hold-capped',
    'trip-and-reset',
  ],
  minutes: 74,
  money: 189,
  proven: true,
};
