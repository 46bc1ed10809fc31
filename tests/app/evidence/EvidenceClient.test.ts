import { describe, expect, it } from 'vitest';
import { EvidenceClient } from '../../../src/app/evidence/EvidenceClient.ts';
import type { EvidenceFailure } from '../../../src/app/evidence/messages.ts';
import { SittingDesk } from '../../../src/app/SittingDesk.ts';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import type { DebriefFacts } from '../../../src/training/score/DebriefFacts.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import { bench } from '../../support/bench.ts';
import { FakeLines } from '../support/fakeLine.ts';

function onTheBench(mode: 'practice' | 'assessment' = 'practice') {
  const scenario = { ...bench().fault('switch-stuck-open').scenario, mode };
  const sitting = Sitting.begin(scenario);
  const lines = new FakeLines();
  const failures: EvidenceFailure[] = [];
  const evidence = new EvidenceClient({
    sealed: sealScenario(scenario),
    openLine: lines.open,
    failed: (failure) => failures.push(failure),
  });
  const events = { acted: () => {}, jumped: () => {}, exportRecord: () => {} };
  const desk = new SittingDesk(sitting, evidence, events, false);
  evidence.follow(() => sitting.record());
  desk.act({ kind: 'accept-job' });
  return { desk, evidence, sitting, lines, failures };
}

const ADVICE = { kind: 'decide' } as const;
const FACTS = { score: { total: 61 } } as DebriefFacts;
const BROKE = { kind: 'failed', code: 'broke', detail: 'out of memory' } as const;

describe('the page and whoever weighs its evidence', () => {
  it('tells each action at the tick it was done at, a wait at the tick it began', () => {
    const { desk, lines } = onTheBench();
    desk.wait(10);
    desk.logReading();
    expect(lines.newest.told).toMatchObject([
      { kind: 'open', record: { actions: [] } },
      { kind: 'acted', timed: { tick: 0, action: { kind: 'accept-job' } } },
      { kind: 'acted', timed: { tick: 0, action: { kind: 'wait' } } },
      { kind: 'acted', timed: { tick: secondsToTicks(10), action: { kind: 'log' } } },
    ]);
  });

  it('tells nothing of what was refused', () => {
    const { desk, lines } = onTheBench();
    expect(desk.act({ kind: 'close-job' })).toBe('verdict-needed-first');
    expect(lines.kinds).toEqual(['open', 'acted']);
  });

  it('tells of time that passes at most five times a second', () => {
    const { desk, lines } = onTheBench();
    for (let frame = 0; frame < 600; frame++) desk.pass(secondsToTicks(1 / 60));
    const told = lines.kinds.filter((kind) => kind === 'passed').length;
    expect(told).toBeGreaterThan(40);
    expect(told).toBeLessThanOrEqual(50);
  });

  it('tells that the bench stands, and tells it anew to whoever comes in place of one that is gone', () => {
    const { evidence, lines } = onTheBench();
    evidence.ahead();
    expect(lines.kinds).toEqual(['open', 'acted', 'ahead']);
    lines.newest.say({ kind: 'gone' });
    expect(lines.kinds).toEqual(['ahead', 'open']);
  });

  it('asks the coach, and knows to which log its answer belongs', () => {
    const { desk, lines } = onTheBench();
    desk.logReading();
    desk.askCoach('test');
    expect(lines.kinds.slice(-3)).toEqual(['acted', 'passed', 'advise']);
    expect(desk.coach.value).toEqual({ kind: 'thinking', depth: 'test' });
    desk.logReading();
    lines.newest.say({ kind: 'advice', id: lines.asked, advice: ADVICE });
    expect(desk.coach.value).toEqual({ kind: 'says', depth: 'test', advice: ADVICE, entries: 1 });
    expect(desk.log.value.length).toBe(2);
  });

  it('takes the answer to the last question only', () => {
    const { desk, lines } = onTheBench();
    desk.askCoach('question');
    const first = lines.asked;
    desk.askCoach('procedure');
    lines.newest.say({ kind: 'advice', id: first, advice: ADVICE });
    expect(desk.coach.value).toEqual({ kind: 'thinking', depth: 'procedure' });
    lines.newest.say({ kind: 'advice', id: lines.asked, advice: ADVICE });
    expect(desk.coach.value).toMatchObject({ kind: 'says', depth: 'procedure' });
  });

  it('has no coach in an assessment, and records no question to it', () => {
    const { desk, lines, sitting } = onTheBench('assessment');
    desk.askCoach('question');
    expect(desk.coach.value).toEqual({ kind: 'off' });
    expect(lines.kinds).toEqual(['open', 'acted']);
    expect(sitting.record().actions.length).toBe(1);
  });

  it('asks what the job was worth when it is closed; the record claims it once it is known', () => {
    const { desk, evidence, lines } = onTheBench();
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    expect(evidence.worth.value.kind).toBe('not-asked');
    desk.act({ kind: 'close-job' });
    expect(lines.newest.told.at(-1)).toMatchObject({ kind: 'debrief', record: { actions: { length: 3 } } });
    expect(desk.facts.value).toBeNull();
    expect(desk.record().claimedScore).toBeNull();
    lines.newest.say({ kind: 'debriefed', id: lines.asked, result: { ok: true, value: FACTS } });
    expect(desk.facts.value).toBe(FACTS);
    expect(desk.record().claimedScore).toBe(61);
    // The worker is let go with its last answer.
    expect(lines.newest.hung).toBe(true);
  });
});

describe('a road test', () => {
  it('is driven off the page while the bench waits, and done when the page knows its outcome', async () => {
    const { desk, lines, sitting } = onTheBench();
    const back = desk.roadTest(2);
    const request = lines.newest.told.at(-1);
    if (request?.kind !== 'drive') throw new Error('nobody was asked to drive');
    expect(request.record).toMatchObject({ actions: [{}, { tick: 0, action: { kind: 'road-test' } }] });
    desk.pass(secondsToTicks(1));
    expect(sitting.tick).toBe(0);
    expect(desk.observation.value.lastDrive).toBeNull();
    lines.newest.say({ kind: 'driven', id: request.id, outcomes: [] });
    expect(await back).toBeNull();
    expect(desk.observation.value.lastDrive?.cycles.length).toBe(2);
    expect(desk.caption.value.sentence).toMatch(/^Back after 2 cycles, \d+ miles\.$/);
    desk.pass(secondsToTicks(1));
    expect(sitting.tick).toBe(secondsToTicks(1));
  });

  it('is driven on the page when the line breaks', async () => {
    const { desk, lines } = onTheBench();
    const back = desk.roadTest(1);
    lines.newest.say(BROKE);
    expect(await back).toBeNull();
    expect(desk.observation.value.lastDrive?.cycles.length).toBe(1);
  });

  it('asks for a worker again after one broke, and says no more of it than before', async () => {
    const { desk, lines, failures } = onTheBench();
    lines.newest.say(BROKE);
    expect(failures.length).toBe(1);
    const back = desk.roadTest(1);
    expect(lines.kinds).toEqual(['drive']);
    lines.newest.say(BROKE);
    expect(await back).toBeNull();
    expect(failures.length).toBe(1);
  });

  it('that is refused is not done', async () => {
    const { desk, lines, sitting } = onTheBench();
    desk.act({ kind: 'set-key', position: 'on' });
    const back = desk.roadTest(1);
    lines.newest.say({ kind: 'driven', id: 1, outcomes: [] });
    expect(await back).not.toBeNull();
    expect(desk.caption.value.tone).toBe('refusal');
    expect(sitting.record().actions.length).toBe(2);
  });
});

describe('when the evidence cannot be weighed', () => {
  it('the bench goes on, and the next question tells everything anew to another', () => {
    const { desk, lines, failures, sitting } = onTheBench();
    lines.newest.say(BROKE);
    expect(failures).toEqual([{ code: 'broke', detail: 'out of memory' }]);
    expect(lines.newest.hung).toBe(true);
    expect(desk.act({ kind: 'set-key', position: 'on' })).toBeNull();
    desk.pass(secondsToTicks(1));
    expect(lines.opened.length).toBe(1);
    desk.askCoach('question');
    expect(lines.opened.length).toBe(2);
    expect(lines.kinds).toEqual(['open', 'passed', 'advise']);
    expect(lines.newest.told[0]).toMatchObject({ record: sitting.record() });
  });

  it('a question that was open is withdrawn, and what comes late from a broken line is not heard', () => {
    const { desk, lines, failures } = onTheBench();
    desk.askCoach('question');
    const { newest, asked } = lines;
    newest.say(BROKE);
    expect(desk.coach.value).toEqual({ kind: 'silent' });
    newest.say({ kind: 'advice', id: asked, advice: ADVICE });
    newest.say(BROKE);
    expect(desk.coach.value).toEqual({ kind: 'silent' });
    expect(failures.length).toBe(1);
  });

  it('the closed job says so and can be worked out again', () => {
    const { desk, evidence, lines, failures } = onTheBench();
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    desk.act({ kind: 'close-job' });
    lines.newest.say(BROKE);
    expect(evidence.worth.value).toEqual({
      kind: 'failed',
      failure: { code: 'broke', detail: 'out of memory' },
    });
    expect(failures).toEqual([]);
    evidence.workOut();
    expect(lines.kinds).toEqual(['open', 'debrief']);
    lines.newest.say({ kind: 'debriefed', id: lines.asked, result: { ok: true, value: FACTS } });
    expect(desk.facts.value).toBe(FACTS);
  });

  it('a record that does not replay is told as such', () => {
    const { desk, evidence, lines } = onTheBench();
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    desk.act({ kind: 'close-job' });
    lines.newest.say({
      kind: 'debriefed',
      id: lines.asked,
      result: { ok: false, error: { code: 'end-differs' } },
    });
    expect(evidence.worth.value).toEqual({
      kind: 'failed',
      failure: { code: 'broke', detail: 'end-differs' },
    });
  });

  it('lets its line go for good when the job is left', async () => {
    const { evidence, lines, desk } = onTheBench();
    evidence.end();
    expect(lines.newest.hung).toBe(true);
    desk.act({ kind: 'set-key', position: 'on' });
    // An old message's "try again" opens no other, and nobody is kept waiting.
    evidence.open();
    await evidence.drive('seed', null);
    desk.askCoach('test');
    expect(lines.opened.length).toBe(1);
  });
});

describe('when who weighs the evidence is gone without a word', () => {
  const GONE = { kind: 'gone' } as const;
  const SENTENCE = { code: 'broke', detail: 'it stopped without a word' };

  it('another is told the record as it stands, and nobody is bothered', () => {
    const { desk, lines, failures, sitting } = onTheBench();
    desk.logReading();
    lines.newest.say(GONE);
    expect(lines.opened.length).toBe(2);
    expect(lines.newest.told).toEqual([expect.objectContaining({ kind: 'open', record: sitting.record() })]);
    desk.logReading();
    expect(lines.kinds).toEqual(['open', 'acted']);
    expect(failures).toEqual([]);
  });

  it('the coach is asked once more what he was asked', () => {
    const { desk, lines } = onTheBench();
    desk.askCoach('test');
    const late = lines.asked;
    lines.newest.say(GONE);
    expect(lines.kinds).toEqual(['open', 'advise']);
    lines.newest.say({ kind: 'advice', id: late, advice: ADVICE });
    expect(desk.coach.value).toEqual({ kind: 'thinking', depth: 'test' });
    lines.newest.say({ kind: 'advice', id: lines.asked, advice: ADVICE });
    expect(desk.coach.value).toMatchObject({ kind: 'says', depth: 'test' });
  });

  it('so is what the closed job was worth', () => {
    const { desk, lines } = onTheBench();
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    desk.act({ kind: 'close-job' });
    lines.newest.say(GONE);
    expect(lines.kinds).toEqual(['open', 'debrief']);
    lines.newest.say({ kind: 'debriefed', id: lines.asked, result: { ok: true, value: FACTS } });
    expect(desk.facts.value).toBe(FACTS);
  });

  it('the second time it is said, and the next question opens another', () => {
    const { desk, lines, failures } = onTheBench();
    lines.newest.say(GONE);
    desk.askCoach('question');
    lines.newest.say(GONE);
    expect(failures).toEqual([SENTENCE]);
    expect(desk.coach.value).toEqual({ kind: 'silent' });
    expect(lines.opened.length).toBe(2);
    desk.askCoach('question');
    expect(lines.opened.length).toBe(3);
  });

  it('the second time the debrief says it', () => {
    const { desk, evidence, lines, failures } = onTheBench();
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    desk.act({ kind: 'close-job' });
    lines.newest.say(GONE);
    lines.newest.say(GONE);
    expect(evidence.worth.value).toEqual({ kind: 'failed', failure: SENTENCE });
    expect(failures).toEqual([]);
  });

  it('a drive that it was asked for is driven on the page', async () => {
    const { desk, lines } = onTheBench();
    const back = desk.roadTest(1);
    lines.newest.say(GONE);
    expect(await back).toBeNull();
    expect(desk.observation.value.lastDrive?.cycles.length).toBe(1);
  });
});
