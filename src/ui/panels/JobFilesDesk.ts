import type { ReadonlySignal } from '@preact/signals';
import type { JobFileProblem } from '../../training/handout/JobFile.ts';

/** A file that was chosen or dropped, on its way to the board. */
export interface GivenFile {
  /** Counts up within one opening. */
  readonly number: number;
  readonly name: string;
  readonly state: FileState;
}

export type FileState =
  | { readonly kind: 'reading' }
  | { readonly kind: 'refused'; readonly problem: GivenFileProblem }
  | {
      readonly kind: 'asks';
      readonly title: string;
      /** How many seats the class has; 0 where none is asked for. */
      readonly seats: number;
      readonly problem: AnswerProblem | null;
      /** The answer is being tried: half a second, and more on a slow machine. */
      readonly busy: boolean;
    }
  | {
      readonly kind: 'on-board';
      readonly title: string;
      /** Of the job, to open it. */
      readonly key: string;
      readonly seat: number | null;
      readonly as: 'new' | 'there-already' | 'shipped';
      /** Other content under the same id is on the board as well. */
      readonly namesake: boolean;
      readonly contentHash: string;
      /** Whether it will be there after this visit. */
      readonly kept: boolean;
    };

export type GivenFileProblem =
  | JobFileProblem
  | { readonly code: 'job-file-not-read' }
  | { readonly code: 'job-file-stopped' };
export type AnswerProblem =
  | { readonly code: 'class-code-unfit' | 'class-code-wrong' }
  | { readonly code: 'seat-unfit'; readonly seats: number };

/** What the dialog of opened files sees and asks for. */
export interface JobFilesDesk {
  readonly files: ReadonlySignal<readonly GivenFile[]>;
  /** Gives a file what it asks for. */
  answer(number: number, classCode: string, seat: string): Promise<void>;
}
