import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { err, type Result } from '../base/Result.ts';
import { tablesProblemText } from '../text/cliTables.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import { openTables } from '../training/evidence/openTables.ts';

/** Where the tables of the shop are kept. */
export const KEPT_TABLES_FILE = fileURLToPath(new URL('../../assets/evidence/shop.json', import.meta.url));

let opened: Result<EvidenceTables, string> | null = null;

/** The kept tables, read and opened once. Errors: a sentence. */
export function keptTables(): Result<EvidenceTables, string> {
  opened ??= read();
  return opened;
}

function read(): Result<EvidenceTables, string> {
  let text: string;
  try {
    text = readFileSync(KEPT_TABLES_FILE, 'utf8');
  } catch {
    return err(tablesProblemText(KEPT_TABLES_FILE, { code: 'tables-unreadable' }));
  }
  const tables = openTables(text);
  return tables.ok ? tables : err(tablesProblemText(KEPT_TABLES_FILE, tables.error));
}
