import { secondsToTicks } from '../../src/base/ticks.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import type { Observation } from '../../src/sim/world/Observation.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { JobPar } from '../../src/training/evidence/JobPar.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { RuleId } from '../../src/training/scenario/ruleIds.ts';
import type { Scenario, ScenarioContent } from '../../src/training/scenario/Scenario.ts';
import type { DebriefFacts, RuleOutcome } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { EASY_PAR, madeUpEvidence, type WantedEvidence } from './evidenceFacts.ts';
import { SCENARIO_TEXT } from './scenarioText.ts';

/** A job on the real bench, written as a technician's script in the words of action files. */
export class TestBench {
  private faults: FaultChoice[] = [];
  private rulesOff: RuleId[] = [];
  private terms: Partial<ScenarioContent> = {};
  private begun: Sitting | null = null;
  private wanted: WantedEvidence = {};
  private par: JobPar = EASY_PAR;

  /** Severity as a share of the catalogue's range. */
  fault(fault: string, severity = 0.5): this {
    this.faults.push({ fault, severity });
    return this;
  }

  /** What the evidence is to have been worth; it is made up, for no suspect's bench is asked here. */
  evidence(wanted: WantedEvidence): this {
    this.wanted = { ...this.wanted, ...wanted };
    return this;
  }

  /** Par of this job: made up as well. */
  withPar(par: Partial<JobPar>): this {
    this.par = { ...this.par, ...par };
    return this;
  }

  ruleOff(...rules: RuleId[]): this {
    this.rulesOff.push(...rules);
    return this;
  }

  /** What else the job's file says. */
  job(terms: Partial<ScenarioContent>): this {
    this.terms = { ...this.terms, ...terms };
    return this;
  }

  get scenario(): Scenario {
    const loaded = loadScenario(SCENARIO_TEXT, 'bench.yaml');
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
    const { contentHash: _, ...content } = {
      ...loaded.value,
      faults: this.faults,
      rulesOff: this.rulesOff,
      ...this.terms,
    };
    return { ...content, contentHash: hashOfContent(content) };
  }

  get sitting(): Sitting {
    this.begun ??= Sitting.begin(this.scenario);
    return this.begun;
  }

  /** Does the lines; a refused or unreadable line fails the test with its text. */
  does(script: string): this {
    const lines = parseActions(script);
    if (!lines.ok) throw new Error(JSON.stringify(lines.error));
    const run = runActions(this.sitting, lines.value);
    if (!run.ok) throw new Error(`"${run.error.text}" was refused: ${run.error.refusal}`);
    return this;
  }

  waits(seconds: number): this {
    this.sitting.advanceTo(this.sitting.tick + secondsToTicks(seconds));
    return this;
  }

  sees(): Observation {
    return this.sitting.observe();
  }

  /** The debrief of the closed job. */
  debrief(): DebriefFacts {
    const evidence = madeUpEvidence(this.sitting.view(), this.wanted);
    const facts = debrief(this.scenario, this.sitting.record(), evidence, this.par);
    if (!facts.ok) throw new Error(JSON.stringify(facts.error));
    return facts.value;
  }

  /** How one rule went; the job is ended first when it is still open. */
  rule(rule: RuleId): RuleOutcome['outcome'] {
    return this.ruleOutcome(rule).outcome;
  }

  /** The same with all its circumstances. */
  ruleOutcome(rule: RuleId): RuleOutcome {
    if (this.sitting.view().phase === 'work-order') this.does('accept');
    if (this.sitting.view().phase === 'bench') this.does('verdict unit');
    if (this.sitting.view().phase === 'repair') this.does('close');
    const outcome = this.debrief().rules.find((found) => found.rule === rule);
    if (outcome === undefined) throw new Error(`no outcome for ${rule}`);
    return outcome;
  }
}

export function bench(): TestBench {
  return new TestBench();
}
