import { sha256Hex } from '../../base/hash.ts';
import type { KeptFacts } from '../../platform/browser/StoredSitting.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import { areFacts } from './factsSchema.ts';
import { applyCurtain, markOf } from './keptFacts.ts';

/** The facts that are kept, or null where they are damaged or of something else: then they are worked out anew. */
export function readFacts(kept: unknown, record: SittingRecord, weighing: string): DebriefFacts | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { mark, sum, bytes } = kept as Partial<Record<keyof KeptFacts, unknown>>;
  if (mark !== markOf(record, weighing) || !(bytes instanceof Uint8Array)) return null;
  const plain = bytes.slice();
  applyCurtain(plain, mark);
  const text = new TextDecoder().decode(plain);
  if (sha256Hex(text) !== sum) return null;
  const facts: unknown = JSON.parse(text);
  return areFacts(facts) ? facts : null;
}
