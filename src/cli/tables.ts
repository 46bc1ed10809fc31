import { fork } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { RigDefinition } from '../sim/rigs/RigDefinition.ts';
import { rigNamed } from '../sim/rigs/rigs.ts';
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
import { tablesFileOf } from './keptTables.ts';
import type { ExitCode, Output } from './Output.ts';
import { rigOption } from './rigOption.ts';
import { KEPT_DRIVES, type ShareMessage, shopOf } from './tablesShare.ts';

/** Processes at work side by side. */
const SHARES = 2;

type Done = Extract<ShareMessage, { kind: 'done' }>;

/** `tables`: works every standard test and the drives on every suspect, and keeps what comes of it. Minutes of work. */
export async function tables({ options }: CommandLine, output: Output): Promise<ExitCode> {
  const named = rigOption(options['--rig'], output);
  if (named === null) return 2;
  const rig = rigNamed(named);
  const file = options['--out'] ?? tablesFileOf(named);
  const shares = await Promise.all(Array.from({ length: SHARES }, (_, part) => shareDone(rig, part, output)));
  const done = shares.filter((share) => share !== null);
  if (done.length < SHARES) {
    output.err(tablesWords.broken);
    return 1;
  }
  output.err(tablesWords.groups);
  const table = joinedTable(done.map((one) => one.table));
  const text = keptText(keptTables(rig, table, joinedComplaints(rig, done)));
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
function shareDone(rig: RigDefinition, part: number, output: Output): Promise<Done | null> {
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
    child.send({ rig: rig.id, part, of: SHARES });
  });
}

function joinedComplaints(rig: RigDefinition, shares: readonly Done[]): readonly (readonly Complaint[])[] {
  return KEPT_DRIVES.map((_, d) =>
    suspects(rig).flatMap((_suspect, s) => shares.flatMap(({ complaints }) => complaints[d]?.[s] ?? [])),
  );
}

/** Groups are those of the kept numbers, so that the file says nothing that does not follow from it. */
function keptTables(
  rig: RigDefinition,
  table: OutcomeTable,
  complaints: readonly (readonly Complaint[])[],
): KeptTables {
  const all = suspects(rig);
  const environment = shopOf(rig);
  const kept = packOutcomes(table);
  const opened = { tests: table.tests, outcomes: kept.map((test) => unpackTest(test) ?? []) };
  return {
    format: KEPT_FORMAT,
    rig: rigMark(all, testsForTable(rig.tests), environment),
    environment,
    tests: kept,
    complaints: KEPT_DRIVES.map((drives, d) => packComplaints(drives, complaints[d] ?? [])),
    groups: itemGroups(new TestEvidence(all, opened)),
  };
}
