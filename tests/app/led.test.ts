import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { EvidenceClient } from '../../src/app/evidence/EvidenceClient.ts';
import { openJob } from '../../src/app/openJob.ts';
import { SittingDesk } from '../../src/app/SittingDesk.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { SittingMode } from '../../src/training/scenario/modes.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { sealScenario } from '../../src/training/scenario/seal.ts';
import type { Sitting } from '../../src/training/sitting/Sitting.ts';
import { FakeLines } from './support/fakeLine.ts';

const NOTHING = { acted: () => {}, jumped: () => {}, exportRecord: () => {} };
const loaded = loadScenario(readFileSync('scenarios/first-minutes.yaml', 'utf8'), 'first-minutes.yaml');
if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
const introduction = loaded.value;

/** The same truck sat in another way. */
function inMode(mode: SittingMode): Scenario {
  const { contentHash: _, ...content } = { ...introduction, mode };
  return { ...content, contentHash: hashOfContent(content) };
}

function opened(mode: SittingMode): { desk: SittingDesk; sitting: Sitting; lines: FakeLines } {
  const sealed = sealScenario(inMode(mode));
  const job = openJob(sealed, undefined, () => 'seed-of-the-day');
  if (!job.ok) throw new Error(job.error.code);
  const { sitting } = job.value;
  const lines = new FakeLines();
  const evidence = new EvidenceClient({ sealed, openLine: lines.open, failed: () => {} });
  evidence.follow(() => sitting.record());
  return { desk: new SittingDesk(sitting, evidence, NOTHING, false), sitting, lines };
}

describe('the inside of the unit', () => {
  test.each(['practice', 'assessment'] as const)(
    'is not to be had in a %s, before or after the verdict',
    (mode) => {
      const { desk, sitting } = opened(mode);
      const look = (): void => {
        desk.showInside(true);
        expect(desk.inside.value).toBeNull();
        expect(sitting.inside()).toBeNull();
        desk.pass(secondsToTicks(1));
        expect(desk.inside.value).toBeNull();
      };
      look();
      desk.act({ kind: 'accept-job' });
      look();
      desk.act({ kind: 'stroke', depth: 1 });
      look();
      expect(JSON.stringify(sitting.view())).not.toMatch(/canisterKPa|diaphragmTravel|coilAmps/);
      desk.act({ kind: 'give-verdict', item: 'nothing-wrong', mode: null, cites: [] });
      look();
      desk.act({ kind: 'close-job' });
      // The debrief may show it: nothing is left to be found out.
      expect(sitting.inside()).not.toBeNull();
    },
  );

  test.each(['walkthrough', 'introduction'] as const)('is seen in a %s, and goes with the unit', (mode) => {
    const { desk } = opened(mode);
    desk.act({ kind: 'accept-job' });
    desk.showInside(true);
    expect(desk.inside.value).toMatchObject({ vacuumSwitch: 'open', plunger: 'rest' });
    for (const action of [
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'fit', item: 'cap-a', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'stroke', depth: 1 },
    ] as const)
      expect(desk.act(action), action.kind).toBeNull();
    for (let n = 0; n < 60; n++) desk.pass(secondsToTicks(1 / 60));
    expect(desk.inside.value).toMatchObject({ vacuumSwitch: 'closed' });
    expect(desk.inside.value?.canisterKPa).toBeGreaterThan(2);
  });

  test('is worked out ten times a second at most, and not at all while nobody sees it', () => {
    const { desk, sitting } = opened('walkthrough');
    desk.act({ kind: 'accept-job' });
    const asked = vi.spyOn(sitting, 'inside');
    const second = (): void => {
      for (let frame = 0; frame < 60; frame++) {
        desk.act({ kind: 'pump-handle', position: (frame % 10) / 10 });
        desk.pass(secondsToTicks(1 / 60));
      }
    };
    second();
    expect(asked).not.toHaveBeenCalled();
    desk.showInside(true);
    asked.mockClear();
    second();
    expect(asked.mock.calls.length).toBeGreaterThanOrEqual(8);
    expect(asked.mock.calls.length).toBeLessThanOrEqual(10);
    desk.showInside(false);
    expect(desk.inside.value).toBeNull();
    asked.mockClear();
    second();
    expect(asked).not.toHaveBeenCalled();
  });

  test('is asked past its gate only by what judges a closed record', () => {
    const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => name.replaceAll('\\', '/'));
    const asking = (what: RegExp): string[] =>
      files.filter((name) => what.test(readFileSync(join('src', name), 'utf8'))).sort();
    expect(asking(/insideForJudging/)).toEqual(['training/score/Timeline.ts', 'training/sitting/Sitting.ts']);
    // A bare world shows its inside: only the sitting, and the replay of a closed one, have it.
    const bare = asking(/world\.inside\(/).filter((name) => !name.startsWith('sim/'));
    expect(bare).toEqual(['app/replay/WorldReplay.ts', 'training/sitting/Sitting.ts']);
  });
});

describe('an introduction on the desk', () => {
  test('is weighed by nobody: no line is opened, the coach is off, and closing it works out no score', () => {
    const { desk, lines } = opened('introduction');
    desk.act({ kind: 'accept-job' });
    desk.askCoach('question');
    desk.pass(secondsToTicks(2));
    desk.act({ kind: 'close-job' });
    expect(desk.phase.value).toBe('closed');
    expect(lines.opened).toEqual([]);
    expect(desk.coach.value).toEqual({ kind: 'off' });
    expect(desk.facts.value).toBeNull();
    expect(desk.evidence.worth.value).toEqual({ kind: 'not-asked' });
    expect(desk.record().claimedScore).toBeNull();
    // The lines would have been seen: a job opens one at once.
    expect(opened('walkthrough').lines.opened.length).toBe(1);
  });

  test('has the numbers that its steps speak of, whoever sits it', () => {
    expect(opened('introduction').desk.record().seed).toBe('first-minutes');
    expect(opened('practice').desk.record().seed).toBe('seed-of-the-day');
  });

  test('has last words; a job keeps its own to itself until it is closed', () => {
    const words = introduction.remark.slice(0, 40);
    expect(opened('introduction').desk.lastWords).toContain(words);
    for (const mode of ['walkthrough', 'practice', 'assessment'] as const) {
      expect(opened(mode).desk.lastWords).toBeNull();
    }
  });
});
