import { fork } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { STANDARD_TESTS } from '../sim/rigs/standardTests/standardTests.ts';
import { tablesWords } from '../text/cliTables.ts';
import type { Complaint } from '../training/evidence/complaint.ts';
import { itemGroups } from '../training/evidence/equivalence.ts';
import { KEPT_FORMAT, type KeptTables, rigMark } from '../training/evidence/KeptTables.ts';
import { joinedTable, type OutcomeTable, testsForTable } from '../training/evidence/OutcomeTable.ts';
import { keptText, packComplaints, packOutcomes } from '../training/evidence/packTables.ts';
import { suspects } from '../training/evidence/suspects.ts';
import { TestEvidence } from '../training/evidence/TestEvidence.ts';
import { unpackTest } from '../training/evidence/unpackTables.ts';
import type { CommandLine } from './commandLine.ts';
import { KEPT_TABLES_FILE } from './keptTables.ts';
import type { ExitCode, Output } from './Output.ts';
import { KEPT_DRIVES, SHOP, type ShareMessage } from './tablesShare.ts';

/** Processes at work side by side. */
const SHARES = 2;

type Done = Extract<ShareMessage, { kind: 'done' }>;

/** `tables`: works every standard test and the drives on every suspect, and keeps what comes of it. Minutes of work. */
export async function tables({ options }: CommandLine, output: Output): Promise<ExitCode> {
  const file = options['--out'] ?? KEPT_TABLES_FILE;
  const shares = await Promise.all(Array.from({ length: SHARES }, (_, part) => shareDone(part, output)));
  const done = shares.filter((share) => share !== null);
  if (done.length < SHARES) {
    output.err(tablesWords.broken);
    return 1;
  }
  output.err(tablesWords.groups);
  const text = keptText(keptTables(joinedTable(done.map(({ table }) => table)), joinedComplaints(done)));
  try {
    writeFileSync(file, text);
  } catch {
    output.err(tablesWords.noSuchFolder(file));
    return 2;
  }
  output.out(tablesWords.written(file, text.length));
  return 0;
}

/** One share worked in a process of its own; null where it ended early. */
function shareDone(part: number, output: Output): Promise<Done | null> {
  return new Promise((resolve) => {
    const child = fork(fileURLToPath(new URL('./tablesShare.ts', import.meta.url)));
    let done: Done | null = null;
    child.on('message', (message: ShareMessage) => {
      if (message.kind === 'tests-left') output.err(tablesWords.left(part, message.left));
      else if (message.kind === 'drives-left')
        output.err(tablesWords.drives(part, message.cycles, message.left));
      else done = message;
    });
    child.on('error', () => resolve(null));
    child.on('close', () => resolve(done));
    child.send({ part, of: SHARES });
  });
}

function joinedComplaints(shares: readonly Done[]): readonly (readonly Complaint[])[] {
  return KEPT_DRIVES.map((_, d) =>
    suspects().flatMap((_suspect, s) => shares.flatMap(({ complaints }) => complaints[d]?.[s] ?? [])),
  );
}

/** Groups are those of the kept numbers, so that the file says nothing that does not follow from it. */
function keptTables(table: OutcomeTable, complaints: readonly (readonly Complaint[])[]): KeptTables {
  const all = suspects();
  const kept = packOutcomes(table);
  const opened = { tests: table.tests, outcomes: kept.map((test) => unpackTest(test) ?? []) };
  return {
    format: KEPT_FORMAT,
    rig: rigMark(all, testsForTable(STANDARD_TESTS), SHOP),
    environment: SHOP,
    tests: kept,
    complaints: KEPT_DRIVES.map((drives, d) => packComplaints(drives, complaints[d] ?? [])),
    groups: itemGroups(new TestEvidence(all, opened)),
  };
}
