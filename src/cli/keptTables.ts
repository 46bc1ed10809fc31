import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { err, type Result } from '../base/Result.ts';
import type { RigId } from '../sim/devices/BenchSurface.ts';
import { FIRST_RIG } from '../sim/rigs/rigs.ts';
import { tablesProblemText } from '../text/cliTables.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import { openTables } from '../training/evidence/openTables.ts';

const inShop = (name: string): string =>
  fileURLToPath(new URL(`../../assets/evidence/${name}.json`, import.meta.url));

/** Where the tables of the shop are kept, for each rig. */
const KEPT_TABLES_FILES: Readonly<Record<RigId, string>> = {
  'leak-detection-pump': inShop('shop'),
  'flap-actuator': inShop('flap-actuator'),
};

/** Those of the leak detection pump. */
export const KEPT_TABLES_FILE = KEPT_TABLES_FILES[FIRST_RIG];

export function tablesFileOf(rig: RigId = FIRST_RIG): string {
  return KEPT_TABLES_FILES[rig];
}

const opened = new Map<RigId, Result<EvidenceTables, string>>();

/** The kept tables of a rig, read and opened once. Errors: a sentence. */
export function keptTables(rig: RigId = FIRST_RIG): Result<EvidenceTables, string> {
  let tables = opened.get(rig);
  if (tables === undefined) {
    tables = read(tablesFileOf(rig));
    opened.set(rig, tables);
  }
  return tables;
}

function read(file: string): Result<EvidenceTables, string> {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    return err(tablesProblemText(file, { code: 'tables-unreadable' }));
  }
  const tables = openTables(text);
  return tables.ok ? tables : err(tablesProblemText(file, tables.error));
}
