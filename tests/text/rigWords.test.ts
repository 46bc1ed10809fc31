import { describe, expect, it } from 'vitest';
import { catalogue as english } from '../../src/text/en/catalogue.ts';
import { flapActuator as flapInEnglish } from '../../src/text/en/rigs/flapActuator.ts';
import { flapActuator as flapInSpanish } from '../../src/text/es/rigs/flapActuator.ts';
import { addRigWords, say, speakOfRig } from '../../src/text/translate.ts';
import '../../src/text/wholeEnglish.ts';

/** Every sentence of a tree with its key. */
function sentences(tree: object, path = ''): readonly (readonly [string, string])[] {
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === 'string' ? [[`${path}${key}`, value] as const] : sentences(value, `${path}${key}.`),
  );
}
const gaps = (sentence: string): readonly string[] => (sentence.match(/\{\{\w+\}\}/g) ?? []).sort();

describe("a rig's own words", () => {
  it('stand in the place of sentences that there are, with no gap of their own, in both languages', () => {
    const common = new Map(sentences(english));
    for (const words of [flapInEnglish, flapInSpanish]) {
      for (const [key, sentence] of sentences(words)) {
        expect(common.has(key), key).toBe(true);
        expect(gaps(common.get(key) ?? ''), key).toEqual(expect.arrayContaining([...gaps(sentence)]));
      }
    }
    expect(sentences(flapInSpanish).map(([key]) => key)).toEqual(
      sentences(flapInEnglish).map(([key]) => key),
    );
  });

  it('are said while that rig is spoken of, and no longer; everything else is said as ever', () => {
    addRigWords('flap-actuator', 'en', flapInEnglish);
    const before = say('items.unit');
    speakOfRig('flap-actuator');
    expect(say('items.unit')).toBe(flapInEnglish.items?.unit);
    expect(say('items.fuse')).toBe(english.items.fuse);
    speakOfRig(undefined);
    expect(say('items.unit')).toBe(before);
  });

  it('say nothing of what the rig does not have', () => {
    const telling = /canister|vapou?r|purge|filler|capsule|leak detection|cánister|purga|tanque/i;
    for (const words of [flapInEnglish, flapInSpanish])
      expect(sentences(words).filter(([, sentence]) => telling.test(sentence))).toEqual([]);
  });
});
