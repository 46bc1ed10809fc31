import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../src/base/steps.ts';
import { classKey, classMark, plainClassCode } from '../../src/training/handout/classCode.ts';
import { drawOfSeat, seatList, seatNumber, seedOf } from '../../src/training/handout/seats.ts';
import { truthOfRecord } from '../../src/training/handout/truthOfRecord.ts';
import {
  type Draw,
  drawnVariant,
  drawText,
  FIRST,
  parseDraw,
} from '../../src/training/scenario/drawVariant.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { openSealed, sealScenario } from '../../src/training/scenario/seal.ts';
import { parseRecord } from '../../src/training/sitting/parseRecord.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const VARIED = `${SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.4\n    severity-to: 0.6')}variants:
  - faults: [{ fault: sense-resistance, severity: 0.3, severity-to: 0.5 }]
    complaint: The lamp came on in the rain.
    codes: [{ code: P1234, status: pending }]
  - faults: [{ fault: sense-open }]
    history: []
    drives: { cycles: 2, refuelled: true }
    remark: The wire was open.
`;
function load(text: string): Scenario {
  const loaded = loadScenario(text, 'varied.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}
const varied = load(VARIED);
const plain = load(SCENARIO_TEXT);
const KEY = atOnce(classKey('COPPER17', varied.contentHash));

describe('a scenario with variants', () => {
  it('holds its own truth first, and one without has nothing of the kind in its content', () => {
    expect(varied.variants?.map(({ faults }) => faults[0])).toEqual([
      { fault: 'capsule-torn', severity: 0.4, severityTo: 0.6 },
      { fault: 'sense-resistance', severity: 0.3, severityTo: 0.5 },
      { fault: 'sense-open', severity: 0 },
    ]);
    expect(varied.faults).toEqual([{ fault: 'capsule-torn', severity: 0.4 }]);
    expect(Object.keys(plain)).not.toContain('variants');
    expect(drawnVariant(plain, drawOfSeat(KEY, 3))).toBe(plain);
  });

  it('is drawn the same for the same class and seat, and is what its hash says', () => {
    const draw = drawOfSeat(KEY, 7);
    const truth = drawnVariant(varied, draw);
    expect(drawnVariant(load(VARIED), draw)).toEqual(truth);
    const { contentHash, variant, ...content } = truth;
    expect(contentHash).toBe(varied.contentHash);
    expect(variant).toEqual({ draw: drawText(draw), contentHash: hashOfContent(content) });
    expect(Object.keys(truth)).not.toContain('variants');
  });

  it('takes what a variant says, and the rest from the scenario', () => {
    const truths = seatList(varied, KEY, 30).map(({ truth }) => truth);
    const open = truths.find(({ faults }) => faults[0]?.fault === 'sense-open');
    expect(open).toMatchObject({ remark: 'The wire was open.', drives: { cycles: 2, refuelled: true } });
    expect(open?.workOrder).toMatchObject({ history: [], complaint: 'The lamp is on.' });
    const wet = truths.find(({ faults }) => faults[0]?.fault === 'sense-resistance');
    expect(wet?.workOrder).toMatchObject({
      complaint: 'The lamp came on in the rain.',
      codes: [{ code: 'P1234', status: 'pending' }],
    });
    expect(wet).toMatchObject({ remark: varied.remark, drives: varied.drives });
  });

  it('gives a class as many of each variant as it can, and severities all over their ranges', () => {
    const list = seatList(varied, KEY, 30).map(({ truth }) => truth.faults[0]);
    for (const fault of ['capsule-torn', 'sense-resistance', 'sense-open'])
      expect(list.filter((each) => each?.fault === fault)).toHaveLength(10);
    const torn = list.flatMap((each) => (each?.fault === 'capsule-torn' ? [each.severity] : []));
    expect(Math.min(...torn)).toBeGreaterThanOrEqual(0.4);
    expect(Math.max(...torn)).toBeLessThanOrEqual(0.6);
    expect(new Set(torn).size).toBeGreaterThan(5);
  });

  it('whatever the draw, gives one of its truths within its ranges, and opens from its seal as that', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.record({
            kind: fc.constant('seat' as const),
            mark: fc.stringMatching(/^[0-9a-f]{16}$/),
            seat: fc.integer({ min: 1, max: 200 }),
          }),
          fc.record({ kind: fc.constant('free' as const), word: fc.stringMatching(/^[a-z0-9-]{1,40}$/) }),
          fc.constant(FIRST),
        ) as fc.Arbitrary<Draw>,
        (draw) => {
          expect(parseDraw(drawText(draw))).toEqual(draw);
          const truth = drawnVariant(varied, draw);
          const fault = truth.faults[0];
          const range = varied.variants
            ?.flatMap(({ faults }) => faults)
            .find((each) => each.fault === fault?.fault);
          expect(fault?.severity).toBeGreaterThanOrEqual(range?.severity ?? 2);
          expect(fault?.severity).toBeLessThanOrEqual(range?.severityTo ?? range?.severity ?? -1);
          expect(openSealed(sealScenario(truth))).toEqual({ ok: true, value: truth });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is sealed whole as well, and its card says that it is drawn', () => {
    expect(openSealed(sealScenario(varied))).toEqual({ ok: true, value: varied });
    expect(sealScenario(varied).card.drawn).toBe(true);
    expect(sealScenario(plain).card).not.toHaveProperty('drawn');
  });

  it('is refused where steps speak of one truck, and where a range leads nowhere', () => {
    const wrong = (text: string) => {
      const loaded = loadScenario(text, 'x');
      return loaded.ok ? [] : loaded.error.map(({ code, path }) => `${code} ${path}`);
    };
    expect(wrong(VARIED.replace('severity-to: 0.6', 'severity-to: 0.4'))).toEqual([
      'range-not-upwards faults[0].severity-to',
    ]);
    expect(wrong(VARIED.replace('severity: 0.3, ', ''))).toEqual(['severity-missing variants[0].faults[0]']);
    expect(wrong(VARIED.replace('fault: sense-open', 'fault: sense-opne'))).toEqual([
      'unknown-fault variants[1].faults[0].fault',
    ]);
    const led = `${VARIED.replace('mode: practice', 'mode: walkthrough')}walkthrough:\n  - { id: a, say: Do., how: So., done: { phase: bench } }\n`;
    expect(wrong(led)).toEqual([
      'variants-not-allowed faults[0].severity-to',
      'variants-not-allowed variants',
      'variants-not-allowed variants[0].faults[0].severity-to',
    ]);
  });
});

describe('a record of a drawn truth', () => {
  const truth = drawnVariant(varied, drawOfSeat(KEY, 7));
  const sat = (scenario: Scenario) => {
    const sitting = Sitting.begin(scenario, seedOf(scenario));
    sitting.apply({ kind: 'accept-job' });
    return sitting.record();
  };
  const record = sat(truth);

  it('says both hashes and the draw, and is read back and sat again', () => {
    expect(record.scenario.contentHash).toBe(varied.contentHash);
    expect(record.variant).toEqual(truth.variant);
    expect(record.seed).toBe(record.variant?.draw);
    const read = parseRecord(JSON.stringify(record));
    expect(read).toEqual({ ok: true, value: record });
    expect(replay(truth, record).ok).toBe(true);
    expect(replay(drawnVariant(varied, drawOfSeat(KEY, 8)), record)).toMatchObject({
      ok: false,
      error: { code: 'wrong-scenario' },
    });
  });

  it('is held against the scenario and the class', () => {
    const mark = classMark(KEY);
    expect(truthOfRecord(varied, record, mark)).toEqual({ ok: true, value: { scenario: truth, seat: 7 } });
    expect(truthOfRecord(varied, record, null)).toEqual({ ok: true, value: { scenario: truth, seat: 7 } });
    expect(truthOfRecord(plain, record, mark)).toEqual({ ok: true, value: { scenario: plain, seat: null } });
    const free = sat(drawnVariant(varied, { kind: 'free', word: 'abc' }));
    expect(truthOfRecord(varied, free, null)).toMatchObject({ ok: true, value: { seat: null } });
    const { variant: _none, ...bare } = record;
    const lies = [
      [bare, null, 'variant-missing'],
      [{ ...record, variant: { ...truth.variant, draw: 'class-x' } }, null, 'variant-unknown'],
      [
        { ...record, variant: { ...truth.variant, draw: drawText(drawOfSeat(KEY, 8)) } },
        null,
        'variant-differs',
      ],
      [{ ...record, seed: 'a-truck-of-my-own' }, null, 'seat-seed-differs'],
      [record, '0'.repeat(16), 'other-class'],
      [free, mark, 'other-class'],
    ] as const;
    for (const [lie, of, error] of lies)
      expect(truthOfRecord(varied, lie as typeof record, of), error).toEqual({ ok: false, error });
  });
});

describe('class codes and seats', () => {
  it('count by their letters and digits', () => {
    expect(plainClassCode(' Copper-17 b')).toBe('COPPER17B');
    expect(plainClassCode('ｃｏｐｐｅｒ')).toBe('COPPER');
    expect(plainClassCode('a1-')).toBeNull();
    expect(plainClassCode('ñandú 4')).toBe('ÑANDÚ4');
  });

  it('tell classes and scenarios apart', () => {
    const marks = [
      KEY,
      atOnce(classKey('COPPER18', varied.contentHash)),
      atOnce(classKey('COPPER17', plain.contentHash)),
    ];
    expect(new Set(marks.map(classMark)).size).toBe(3);
  });

  it('a seat is a number of the class', () => {
    expect(seatNumber(' 7 ', 30)).toBe(7);
    for (const typed of ['0', '31', '-1', '1e1', '7.0', '', 'vii', '0x7', '9999'])
      expect(seatNumber(typed, 30)).toBeNull();
  });
});
