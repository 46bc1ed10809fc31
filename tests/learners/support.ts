import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

let opened: EvidenceTables | null = null;

/** The kept tables, opened once. */
export function shopTables(): EvidenceTables {
  if (opened === null) {
    const tables = openTables(readFileSync(at('assets/evidence/shop.json'), 'utf8'));
    if (!tables.ok) throw new Error(tables.error.code);
    opened = tables.value;
  }
  return opened;
}

export function shipped(id: string): Scenario {
  const scenario = loadScenario(readFileSync(at(`scenarios/${id}.yaml`), 'utf8'), `${id}.yaml`);
  if (!scenario.ok) throw new Error(JSON.stringify(scenario.error));
  return scenario.value;
}
