import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import type { ScenarioContent } from './Scenario.ts';

/**
 * SHA-256 over the canonical JSON of the content: the same for equal content, however the file is laid out.
 * Apart from the loader, so that the browser can open a sealed scenario without carrying the YAML reader.
 */
export function hashOfContent(content: ScenarioContent): string {
  return sha256Hex(canonicalJson(content));
}
