import { describe, expect, it } from 'vitest';
import { EvidenceClient } from '../../src/app/evidence/EvidenceClient.ts';
import { openJob } from '../../src/app/openJob.ts';
import { SittingDesk } from '../../src/app/SittingDesk.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { sealScenario } from '../../src/training/scenario/seal.ts';
import { bench } from '../support/bench.ts';
import { FakeLines } from './support/fakeLine.ts';

const sealed = sealScenario(bench().fault('switch-stuck-open').scenario);

function atTheBench() {
  const opened = openJob(sealed, undefined, () => 'seed-of-the-day');
  if (!opened.ok) throw new Error(opened.error.code);
  const { sitting } = opened.value;
  const deskOf = () => {
    const evidence = new EvidenceClient({ sealed, openLine: new FakeLines().open, failed: () => {} });
    const events = { acted: () => {}, jumped: () => {}, exportRecord: () => {} };
    return new SittingDesk(sitting, evidence, events, false);
  };
  const desk = deskOf();
  desk.act({ kind: 'accept-job' });
  return { desk, sitting, deskOf, kinds: () => desk.record().actions.map(({ action }) => action.kind) };
}

describe('undo at a desk', () => {
  it('is an act of the hand: it stands in the record, later than what it puts back', () => {
    const { desk } = atTheBench();
    desk.act({ kind: 'place-lead', end: 'meter-red', point: 'fuse-in' });
    desk.pass(secondsToTicks(1));
    desk.undo();
    const [placed, lifted] = desk.record().actions.slice(-2);
    expect(placed?.action.kind).toBe('place-lead');
    expect(lifted?.action).toEqual({ kind: 'lift-lead', end: 'meter-red' });
    expect(lifted?.tick).toBeGreaterThan(placed?.tick ?? 0);
    expect(desk.caption.value).toMatchObject({ sentence: 'Put back: red lead off again.', tone: 'news' });
    expect(desk.undoNext.value).toBeNull();
  });

  it('says what stays done, and offers what lies under it', () => {
    const { desk } = atTheBench();
    desk.undo();
    expect(desk.caption.value).toMatchObject({ sentence: 'Nothing to undo.', tone: 'refusal' });
    desk.act({ kind: 'set-key', position: 'on' });
    desk.logReading();
    expect(desk.undoWhy.value).toBe('seen-already');
    expect(desk.undoNext.value).toEqual([{ kind: 'set-key', position: 'off' }]);
  });

  it('says nothing false once the page was opened again', () => {
    const { desk, deskOf } = atTheBench();
    desk.act({ kind: 'set-key', position: 'on' });
    const again = deskOf();
    expect(again.undoNext.value).toBeNull();
    again.undo();
    expect(again.caption.value.sentence).toBe(
      'What was done before this page was opened is put back by hand.',
    );
  });
});

describe('strokes asked for faster than a hand can pump', () => {
  it('are all made, one after the other, and none is refused', () => {
    const { desk, kinds } = atTheBench();
    for (let i = 0; i < 3; i++) expect(desk.act({ kind: 'stroke', depth: 1 })).toBeNull();
    expect(kinds().filter((kind) => kind === 'stroke')).toHaveLength(1);
    const depths: number[] = [];
    for (let i = 0; i < 120; i++) {
      desk.pass(secondsToTicks(1 / 60));
      depths.push(desk.now().handPump.handle);
    }
    expect(kinds().filter((kind) => kind === 'stroke')).toHaveLength(3);
    const peaks = depths.filter(
      (depth, i) => depth > 0.8 && depth > (depths[i - 1] ?? 0) && depth >= (depths[i + 1] ?? 0),
    );
    expect(peaks).toHaveLength(3);
  });

  it('are made before time runs ahead', () => {
    const { desk, kinds } = atTheBench();
    for (let i = 0; i < 3; i++) desk.act({ kind: 'stroke', depth: 0.5 });
    desk.wait(10);
    expect(kinds().slice(-4)).toEqual(['stroke', 'stroke', 'stroke', 'wait']);
  });

  it('are let be when the hand takes the handle, opens the release, or is asked to undo', () => {
    const { desk, kinds } = atTheBench();
    const ask = (): void => {
      for (let i = 0; i < 3; i++) desk.act({ kind: 'stroke', depth: 1 });
    };
    ask();
    desk.act({ kind: 'pump-handle', position: 0.5 });
    for (let i = 0; i < 60; i++) desk.pass(secondsToTicks(1 / 60));
    ask();
    desk.act({ kind: 'release', open: true });
    for (let i = 0; i < 60; i++) desk.pass(secondsToTicks(1 / 60));
    ask();
    desk.undo();
    for (let i = 0; i < 60; i++) desk.pass(secondsToTicks(1 / 60));
    expect(kinds().filter((kind) => kind === 'stroke')).toHaveLength(3);
    expect(desk.caption.value.sentence).toBe('Put back: strokes that were not made yet.');
  });
});
