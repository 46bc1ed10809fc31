import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { sealedFileOf } from '../../src/training/handout/sealedFileOf.ts';
import { cardOf } from '../../src/training/scenario/cardOf.ts';
import { drawnVariant } from '../../src/training/scenario/drawVariant.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { sealScenario } from '../../src/training/scenario/seal.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { goldenNames, sitGolden } from '../support/goldenJobs.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const scenarios: readonly Scenario[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const loaded = loadScenario(readFileSync(new URL(name, folder), 'utf8'), name);
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
    return loaded.value;
  });

/** Ids of faults, and sentences of the author's remarks in any language, that stand in a text as they are. */
function told(text: string, scenario: Scenario): readonly string[] {
  const ids = FAULTS.map(({ id }) => id as string).filter((id) => text.includes(`"${id}"`));
  const sentences = remarksOf(scenario)
    .flatMap((remark) => remark.split(/(?<=\.)\s+/))
    .filter((sentence) => sentence.length > 20);
  return [...ids, ...sentences.filter((sentence) => text.includes(sentence))];
}

/** The author's last words on every truth, and what they are in other languages where the file says so. */
function remarksOf({ remark, variants = [], words = {} }: Scenario): readonly string[] {
  const own = [remark, ...variants.flatMap((variant) => variant.remark ?? [])];
  const others = Object.values(words).flatMap((pairs) =>
    pairs.flatMap(([sentence, other]) => (own.includes(sentence) ? [other] : [])),
  );
  return [...own, ...others];
}

/** What may be wrong with a scenario's truck, whichever truth is drawn. */
function allFaults({ faults, variants = [] }: Scenario): Scenario['faults'] {
  return [...faults, ...variants.flatMap((variant) => variant.faults)];
}

/** The fuse of the jumper is in a glass holder, so its element is seen by whoever looks at the bench. A tool is never the answer. */
const IN_PLAIN_SIGHT: ReadonlySet<string> = new Set(['jumper-fuse-blown']);

describe('the hidden fault of every shipped job', () => {
  for (const scenario of scenarios) {
    it(`${scenario.id}: is in nothing that is given out with the program or shown of the job`, () => {
      const sealed = sealScenario(scenario);
      const sitting = Sitting.begin(scenario);
      const given: Readonly<Record<string, unknown>> = {
        'the sealed scenario': sealed,
        'the card on the board': cardOf(scenario),
        'the sitting as it is shown': sitting.view(),
        'the record that is kept': sitting.record(),
      };
      for (const [what, it] of Object.entries(given))
        expect(told(JSON.stringify(it), scenario), what).toEqual([]);
      // Neither does the seal give way to plain decoding.
      expect(told(atob(sealed.sealed), scenario)).toEqual([]);
    });

    it(`${scenario.id}: leaves the bench as it would be found without it, before anybody looks`, () => {
      const shown = (faults: Scenario['faults']): unknown => Sitting.begin({ ...scenario, faults }).view();
      expect(shown(scenario.faults)).toEqual(
        shown(scenario.faults.filter(({ fault }) => IN_PLAIN_SIGHT.has(fault))),
      );
    });
  }

  for (const scenario of scenarios) {
    it(`${scenario.id}: is in no sealed file of it, nor in what that decodes to, nor in a truth that was drawn`, () => {
      const text = readFileSync(new URL(`${scenario.id}.yaml`, folder), 'utf8');
      for (const options of [{}, { classCode: 'Copper 17', seats: 12 }]) {
        const made = sealedFileOf(text, scenario.id, options);
        if (!made.ok) throw new Error(JSON.stringify(made.error));
        const { sealed } = JSON.parse(made.value) as { sealed: readonly string[] };
        for (const given of [made.value, atob(sealed.join(''))]) {
          expect(told(given, scenario)).toEqual([]);
          for (const { fault } of allFaults(scenario)) expect(given).not.toContain(fault);
        }
      }
      const truth = drawnVariant(scenario, { kind: 'free', word: 'by-chance' });
      const sitting = Sitting.begin(truth);
      const shown = [sealScenario(truth), sealScenario(scenario), sitting.view(), sitting.record()];
      for (const it of shown) expect(told(JSON.stringify(it), truth)).toEqual([]);
    });
  }

  for (const name of goldenNames) {
    it(`${name}: is in nothing that is shown or kept of the job up to its end`, () => {
      const { scenario, record, view } = sitGolden(name);
      expect(told(JSON.stringify(record), scenario), 'the record').toEqual([]);
      expect(told(JSON.stringify(view), scenario), 'the sitting').toEqual([]);
    });
  }

  it('would be found', () => {
    const scenario = scenarios.find(({ faults }) => faults.length > 0);
    if (scenario === undefined) throw new Error('no job has a fault');
    const [fault] = scenario.faults;
    expect(told(JSON.stringify(scenario), scenario)).toContain(fault?.fault);
    expect(told(JSON.stringify(scenario), scenario).length).toBeGreaterThan(1);
  });
});
