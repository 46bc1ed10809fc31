import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import type { RigId } from '../../src/sim/devices/BenchSurface.ts';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import { parInLines, parOf } from '../../src/training/evidence/parOf.ts';
import { findingsOf } from '../../src/training/proof/findings.ts';
import { proofInSteps, proveScenario } from '../../src/training/proof/proveScenario.ts';
import type { ProofSoFar, ScenarioProof } from '../../src/training/proof/ScenarioProof.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { isJob } from '../../src/training/scenario/modes.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function tables(rig?: RigId): EvidenceTables {
  const kept = keptTables(rig);
  if (!kept.ok) throw new Error(kept.error);
  return kept.value;
}

function load(text: string): Scenario {
  const loaded = loadScenario(text, 'job.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

const shipped = (file: string): Scenario => load(readFileSync(`scenarios/${file}`, 'utf8'));

function worked(scenario: Scenario, learners: Parameters<typeof proofInSteps>[2]) {
  const seen: ProofSoFar[] = [];
  const steps = proofInSteps(scenario, tables(scenario.rig), learners);
  let step = steps.next();
  for (; !step.done; step = steps.next()) seen.push(step.value);
  const proof: ScenarioProof = step.value;
  return { seen, proof };
}

describe('a proof in steps', () => {
  const ASKED = { learners: ['guesser', 'reckless'], seeds: 1 } as const;
  const { seen, proof } = worked(shipped('silent-on-command.yaml'), ASKED);

  it('knows the codes before the plan, the plan before the learners, and one learner more at each step', () => {
    expect(seen.map(({ codes, plan, learners }) => [codes !== null, plan !== null, learners.length])).toEqual(
      [
        [false, false, 0],
        [true, false, 0],
        [true, true, 0],
        [true, true, 1],
        [true, true, 2],
      ],
    );
  });

  it('comes to what the proof at one go comes to', () => {
    expect(proof).toEqual(proveScenario(shipped('silent-on-command.yaml'), tables(), ASKED));
    expect(seen.at(-1)).toMatchObject({ codes: proof.codes, learners: proof.learners });
  });

  it('holds against learners what they have scored, and nothing against those who have not sat', () => {
    const scenario = shipped('silent-on-command.yaml');
    const plan = seen.at(-1)?.plan ?? null;
    const low = { learner: 'careful', median: 70, lower: 60, upper: 80, rightShare: 1 } as const;
    const against = (learners: ProofSoFar['learners']) =>
      findingsOf(scenario, { codes: null, plan, learners }, tables()).map(({ kind }) => kind);
    expect(against([low])).toEqual(['learners']);
    expect(against([])).toEqual([]);
    // Without a plan nobody knows whether the favourite is the truth, which moves a limit.
    expect(findingsOf(scenario, { codes: null, plan: null, learners: [low] }, tables())).toEqual([]);
  });

  it('tells a text that gives the answer away at once', () => {
    const told = load(SCENARIO_TEXT.replace('complaint: The lamp is on.', 'complaint: The capsule is torn.'));
    const first = proofInSteps(told, tables(), { learners: [], seeds: 0 }).next();
    expect(first.done).toBe(false);
    expect((first.value as ProofSoFar).findings).toContainEqual(
      expect.objectContaining({ kind: 'answer-in-text', where: 'complaint' }),
    );
  });
});

describe('par in lines', () => {
  const jobs = readdirSync('scenarios')
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name, shipped(name)] as const)
    .filter(([, { mode }]) => isJob(mode));

  it('adds up to par for every shipped job, test by test in the order of the plan', () => {
    for (const [name, scenario] of jobs) {
      const { lines, ...par } = parInLines(scenario, tables(scenario.rig));
      const sum = (of: 'minutes' | 'money') => lines.reduce((all, line) => all + line[of], 0);
      expect(sum('minutes'), name).toBeCloseTo(par.minutes, 9);
      expect(sum('money'), name).toBeCloseTo(par.money, 9);
      expect(
        lines.flatMap((line) => (line.kind === 'test' ? [line.test] : [])),
        name,
      ).toEqual(par.tests);
      expect(lines.filter(({ kind }) => kind === 'verdict').length, name).toBeGreaterThan(0);
    }
    const [first] = jobs;
    if (first !== undefined) expect(parOf(first[1], tables())).not.toHaveProperty('lines');
  });
});
