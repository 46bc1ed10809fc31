import { type Signal, signal } from '@preact/signals';
import type { KeptFileJob } from '../../platform/browser/KeptFileJob.ts';
import { type JobFile, MAX_JOB_FILE_BYTES, type SealedFile } from '../../training/handout/JobFile.ts';
import { openSealedFileSteps } from '../../training/handout/openSealedFile.ts';
import { readJobFile } from '../../training/handout/readJobFile.ts';
import { drawOfSeat, seatNumber } from '../../training/handout/seats.ts';
import { drawnVariant } from '../../training/scenario/drawVariant.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import type { AnswerProblem, FileState, GivenFile, JobFilesDesk } from '../../ui/panels/JobFilesDesk.ts';
import { inSlices } from '../inSlices.ts';
import { nextTask } from '../nextTask.ts';
import { fileJobOf } from './fileJobOf.ts';
import type { FileJobs } from './fileJobs.ts';

/** What of a browser's file is used. */
export type FileToRead = Pick<File, 'name' | 'size' | 'arrayBuffer'>;

interface FilesDeskParts {
  readonly jobs: Pick<FileJobs, 'all' | 'put'>;
  /** The content hash of the shipped job of this id; null where there is none. */
  shippedHash(id: string): Promise<string | null>;
  nowMs(): number;
}

/** Takes files that were chosen or dropped, one after the other, and puts their jobs on the board. */
export class FilesDesk implements JobFilesDesk {
  readonly files: Signal<readonly GivenFile[]> = signal([]);
  private readonly sealed = new Map<number, SealedFile>();
  private last = 0;

  constructor(private readonly parts: FilesDeskParts) {}

  /** Settles when every file is on the board, is refused, or asks for something. */
  async take(given: readonly FileToRead[]): Promise<void> {
    const files = given.map((file) => ({ file, number: ++this.last }));
    this.files.value = [
      ...this.files.peek(),
      ...files.map(({ file, number }) => ({ number, name: file.name, state: READING })),
    ];
    for (const { file, number } of files) {
      await nextTask();
      try {
        await this.takeOne(file, number);
      } catch {
        // The files after it have their turn all the same.
        this.set(number, { kind: 'refused', problem: { code: 'job-file-stopped' } });
      }
    }
  }

  async answer(number: number, classCode: string, typedSeat: string): Promise<void> {
    const file = this.sealed.get(number);
    const asked = this.files.peek().find((given) => given.number === number)?.state;
    if (file === undefined || asked?.kind !== 'asks' || asked.busy) return;
    const { seats } = file.asks;
    const ask = (problem: AnswerProblem): void => this.set(number, { ...asked, problem, busy: false });
    const seat = seats === 0 ? null : seatNumber(typedSeat, seats);
    if (seats > 0 && seat === null) return ask({ code: 'seat-unfit', seats });
    this.set(number, { ...asked, problem: null, busy: true });
    // So that it is drawn before the work begins.
    await nextTask();
    const opened = await inSlices(openSealedFileSteps(file, classCode));
    if (opened.ok) {
      const { scenario, key } = opened.value;
      const truth = seat === null || key === null ? scenario : drawnVariant(scenario, drawOfSeat(key, seat));
      return this.putOnBoard(number, truth, seat);
    }
    const { code } = opened.error;
    if (code === 'class-code-unfit' || code === 'class-code-wrong') return ask({ code });
    this.set(number, { kind: 'refused', problem: opened.error });
  }

  private async takeOne(file: FileToRead, number: number): Promise<void> {
    const refuse = (problem: Extract<FileState, { kind: 'refused' }>['problem']): void =>
      this.set(number, { kind: 'refused', problem });
    // A film is not read first to be refused.
    if (file.size > MAX_JOB_FILE_BYTES)
      return refuse({ code: 'job-file-too-large', bytes: file.size, limit: MAX_JOB_FILE_BYTES });
    let bytes: ArrayBuffer;
    try {
      bytes = await file.arrayBuffer();
    } catch {
      return refuse({ code: 'job-file-not-read' });
    }
    const text = utf8(bytes);
    if (text === null) return refuse({ code: 'job-file-not-text' });
    const read = readJobFile(text, file.name);
    if (!read.ok) return refuse(read.error);
    await this.open(number, read.value);
  }

  private async open(number: number, file: JobFile): Promise<void> {
    if (file.kind === 'readable') return this.putOnBoard(number, file.scenario, null);
    const { title, asks } = file.file;
    if (asks.classCode) {
      this.sealed.set(number, file.file);
      return this.set(number, { kind: 'asks', title, seats: asks.seats, problem: null, busy: false });
    }
    const opened = await inSlices(openSealedFileSteps(file.file, null));
    if (opened.ok) return this.putOnBoard(number, opened.value.scenario, null);
    this.set(number, { kind: 'refused', problem: opened.error });
  }

  private async putOnBoard(number: number, scenario: Scenario, seat: number | null): Promise<void> {
    const { id, title, contentHash } = scenario;
    const shipped = await this.parts.shippedHash(id);
    const onBoard = { kind: 'on-board', title, seat, contentHash } as const;
    if (shipped === contentHash && seat === null)
      return this.set(number, { ...onBoard, key: id, as: 'shipped', namesake: false, kept: true });
    const job = fileJobOf(scenario, seat, this.parts.nowMs());
    const kept = this.parts.jobs.all.peek() ?? [];
    const there = kept.find(({ key, putAway }) => key === job.key && !putAway);
    const namesake =
      (shipped !== null && shipped !== contentHash) || kept.some((other) => isNamesake(other, job));
    const stays = there === undefined ? await this.parts.jobs.put(job) : true;
    this.set(number, {
      ...onBoard,
      key: job.key,
      as: there === undefined ? 'new' : 'there-already',
      namesake,
      kept: stays,
    });
  }

  private set(number: number, state: FileState): void {
    if (state.kind !== 'asks') this.sealed.delete(number);
    this.files.value = this.files
      .peek()
      .map((given) => (given.number === number ? { ...given, state } : given));
  }
}

const READING: FileState = { kind: 'reading' };

/** Of the same id and other content. */
function isNamesake(one: KeptFileJob, other: KeptFileJob): boolean {
  return !one.putAway && one.sealed.card.id === other.sealed.card.id && one.contentHash !== other.contentHash;
}

/** The text of a file; null where its bytes are no UTF-8. A mark of byte order stays, for the reader to let it through. */
function utf8(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
