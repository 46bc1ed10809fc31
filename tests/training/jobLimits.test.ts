import { describe, expect, it } from 'vitest';
import { describeReason } from '../../src/text/describeReason.ts';
import type { JobLimits } from '../../src/training/scenario/JobLimits.ts';
import { bench } from '../support/bench.ts';

/** A right verdict, carried all the way, and a unit of $385 fitted. */
const MENDED =
  'accept\nkey on\nlog\nkey off\nverdict unit vacuum-switch cites 1\npart plug\nrenew unit\nclose';
const work = (limits?: JobLimits) =>
  bench()
    .fault('switch-stuck-open')
    .evidence({ weight: 1 })
    .job(limits === undefined ? {} : { limits })
    .does(MENDED);
const economy = (limits?: JobLimits) => {
  const facts = work(limits).debrief();
  const part = facts.score.parts.find(({ part: name }) => name === 'economy');
  return (part?.because ?? []).map((line) => ({
    kind: line.kind,
    points: line.points,
    words: describeReason(line, facts.verdict),
  }));
};

describe('limits of a job', () => {
  it('cost nothing while they are kept', () => {
    expect(economy({ minutes: 100, dollars: 385 }).map(({ points }) => points)).toEqual([5, 5]);
    expect(economy().map(({ points }) => points)).toEqual([5, 5]);
  });

  it('take that half of the economy where they are not, and the line says by how much', () => {
    const [minutes, dollars] = economy({ minutes: 20, dollars: 384 });
    expect([minutes?.points, dollars?.points]).toEqual([0, 0]);
    // 0.2 + 0.2 + 0.2 + 1 + 1 + 30 book minutes, by hand.
    expect(minutes?.words).toContain('That is 12.6 over the limit of 20, so it is worth nothing.');
    expect(dollars?.words).toContain('That is $1 over the limit of $384');
    expect(economy({ dollars: 100 })[0]?.points).toBe(5);
  });

  it('close nothing: the job over its limit goes on to its end', () => {
    expect(work({ minutes: 10, dollars: 0 }).sitting.view().phase).toBe('closed');
  });
});

describe('what a sitting has taken so far', () => {
  it('is what the debrief counts in the end', () => {
    const done = work();
    const { money, bookMinutes } = done.debrief().cost;
    expect(done.sitting.view().spent).toEqual({ money, bookMinutes });
  });

  it('counts the known-good unit on the truck as a fitting, once, as the debrief does', () => {
    const bare = 'part plug\ntake canister-hose off\ntake air-hose off\ntake engine-hose off\n';
    const tried = bench().does(
      `accept\n${bare}swap known-good\nmate plug\npart plug\nmate plug\npart plug\nswap truck\nverdict unit\nclose`,
    );
    const { cost, trialFits } = tried.debrief();
    expect(trialFits).toHaveLength(1);
    expect(tried.sitting.view().spent.bookMinutes).toBe(cost.bookMinutes);
  });
});
