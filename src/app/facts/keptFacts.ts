import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import { Random } from '../../base/Random.ts';
import type { KeptFacts } from '../../platform/browser/StoredSitting.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';

/**
 * What facts were worked out from: the record, whose scenario it names with its content's hash, and the program with its
 * tables. The claim is left out, since it is taken from the facts.
 */
export function markOf(record: SittingRecord, weighing: string): string {
  return sha256Hex(`${weighing}\n${canonicalJson({ ...record, claimedScore: null })}`);
}

/**
 * Facts as they are kept beside their record. They tell what was wrong, so they lie behind a curtain like the scenario's own:
 * out of sight of whoever looks through what the browser keeps, not out of reach of the program.
 */
export function keepFacts(facts: DebriefFacts, record: SittingRecord, weighing: string): KeptFacts {
  const text = JSON.stringify(facts);
  const mark = markOf(record, weighing);
  const bytes = new TextEncoder().encode(text);
  applyCurtain(bytes, mark);
  return { mark, sum: sha256Hex(text), bytes };
}

/** Adds a stream of seeded words to the bytes, in place; doing it twice undoes it. */
export function applyCurtain(bytes: Uint8Array, key: string): void {
  const stream = Random.of(key, 'curtain');
  for (let i = 0; i < bytes.length; i += 4) {
    const word = stream.word();
    for (let k = 0; k < 4 && i + k < bytes.length; k++)
      bytes[i + k] = (bytes[i + k] as number) ^ ((word >>> (8 * k)) & 0xff);
  }
}
