import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { describeFinding, describePlan } from '../../src/text/describeProof.ts';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import { proveScenario } from '../../src/training/proof/proveScenario.ts';
import type { ProofFinding, ScenarioProof } from '../../src/training/proof/ScenarioProof.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const NOBODY = { learners: [], seeds: 0 } as const;

function tables(): EvidenceTables {
  const kept = keptTables();
  if (!kept.ok) throw new Error(kept.error);
  return kept.value;
}

function load(text: string): Scenario {
  const loaded = loadScenario(text, 'job.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

const shipped = (id: string): Scenario => load(readFileSync(`scenarios/${id}.yaml`, 'utf8'));
const prove = (scenario: Scenario): ScenarioProof => proveScenario(scenario, tables(), NOBODY);
const kinds = ({ findings }: ScenarioProof): readonly ProofFinding['kind'][] =>
  findings.map(({ kind }) => kind);

/** The short job, in the shop of the tables, driven until its code is stored. */
const DRIVEN = SCENARIO_TEXT.replace('altitude-metres: 0', 'altitude-metres: 200').replace(
  'cycles: 0',
  'cycles: 4',
);

describe('a job that is fit', () => {
  const proof = prove(shipped('nine-volts-and-still-a-code'));

  it('has a plan that proves it, what that needs, and no finding that forbids it', () => {
    expect(proof).toMatchObject({ proven: true, fit: true, learners: [] });
    expect(proof.tests[0]).toBe('codes-and-freeze-data');
    expect(proof.tools).toContain('meter');
    expect(proof.codes.held).toEqual(proof.codes.stated);
  });

  it('names what the complaint speaks for beside the truth, the likeliest first, and never the truth', () => {
    const chances = proof.rivals.map(({ chance }) => chance);
    expect(chances.length).toBeGreaterThan(1);
    expect([...chances].sort((a, b) => b - a)).toEqual(chances);
    expect(proof.rivals.map(({ item }) => item)).not.toContain('ground-wire');
    expect(chances.reduce((sum, one) => sum + one, proof.prior)).toBeLessThan(1.2);
  });

  it('is told in whole sentences', () => {
    const lines = describePlan(proof);
    expect(lines[0]).toContain('Meter on the battery');
    expect(lines.join(' ')).not.toMatch(/\{\{|proof\.|undefined/);
  });
});

describe('what stands against a job', () => {
  it('codes that the drives do not leave, named as they are held', () => {
    const proof = prove(load(DRIVEN.replace('code: P0456', 'code: P0442')));
    const found = proof.findings.find(({ kind }) => kind === 'codes-differ');
    expect(proof.fit).toBe(false);
    expect(found).toMatchObject({ stated: { stored: ['P0442'] }, held: { stored: ['P0456'] } });
    expect(found && describeFinding(found)).toContain('P0456 stored');
  });

  it('and none where the work order says what the controller holds, in whatever order', () => {
    expect(kinds(prove(load(DRIVEN)))).not.toContain('codes-differ');
  });

  it('a truth that the complaint all but rules out', () => {
    const proof = prove(load(DRIVEN.replace('fault: capsule-torn', 'fault: purge-valve-passing')));
    expect(proof.prior).toBeLessThan(0.02);
    const found = proof.findings.find(({ kind }) => kind === 'prior');
    expect(found && describeFinding(found)).toMatch(/nobody could think of it/);
  });

  it('the words of the fault in a text before the verdict', () => {
    const told = DRIVEN.replace(
      'complaint: The lamp is on.',
      'complaint: They say the Capsule is torn inside.',
    );
    expect(prove(load(told)).findings).toContainEqual({
      kind: 'answer-in-text',
      forbids: true,
      where: 'complaint',
      fault: 'capsule-torn',
    });
    // One of the words alone is no answer, and the author's remark comes after the verdict.
    const near = DRIVEN.replace('complaint: The lamp is on.', 'complaint: A torn receipt is in the cab.');
    const remark = DRIVEN.replace('remark: Nothing more', 'remark: The capsule was torn. Nothing more');
    expect(kinds(prove(load(near)))).not.toContain('answer-in-text');
    expect(kinds(prove(load(remark)))).not.toContain('answer-in-text');
  });

  it('another shop than that of the tables is worth a note, and forbids nothing by itself', () => {
    const cold = prove(load(DRIVEN.replace('ambient-celsius: 20', 'ambient-celsius: 10')));
    expect(cold.findings).toContainEqual(expect.objectContaining({ kind: 'other-shop', forbids: false }));
  });
});

describe('difficulty', () => {
  const levels = (id: string): ScenarioProof['difficulty'] => prove(shipped(id)).difficulty;

  it('rises with what makes a job hard', () => {
    expect(levels('silent-on-command')).toEqual({ level: 1, because: [] });
    expect(levels('another-code-this-time').because).toContain('two-things-wrong');
    expect(levels('third-unit-this-year').because).toContain('root-behind-it');
    expect(levels('the-unit-on-the-shelf').because).toEqual(
      expect.arrayContaining(['tool-is-bad', 'nothing-is-wrong']),
    );
  });

  it('a level far from the estimate is worth a note', () => {
    const high = load(
      DRIVEN.replace('fault: capsule-torn\n    severity: 0.5', 'fault: winding-open').replace(
        'level: 1',
        'level: 4',
      ),
    );
    const proof = prove(high);
    expect(proof.findings).toContainEqual(
      expect.objectContaining({ kind: 'level-differs', level: 4, estimate: proof.difficulty.level }),
    );
  });
});

describe('learners', () => {
  it('sit it where they are asked to, and what they miss is a finding', () => {
    const proof = proveScenario(shipped('silent-on-command'), tables(), {
      learners: ['careful', 'parts-changer'],
      seeds: 1,
    });
    expect(proof.learners.map(({ learner }) => learner)).toEqual(['careful', 'parts-changer']);
    expect(proof).toMatchObject({ fit: true });
    // Nobody but the hasty one is held against who goes by the book, and that one did not sit.
    expect(kinds(proof)).not.toContain('learners');
  });
});
