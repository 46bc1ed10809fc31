/** What one step of the history did, for its name. */
export interface DraftStep {
  readonly kind: 'typed' | 'changed' | 'added' | 'removed' | 'moved';
  /** The field it was done to, in the file's writing; empty for typing in the text. */
  readonly path: string;
}

interface Turn {
  readonly step: DraftStep;
  readonly before: string;
  after: string;
}

/** No author goes further back. */
const MOST_TURNS = 200;

/** The texts of a draft one after the other. Typing in one place is one step until somebody looks up (`pause`). */
export class DraftHistory {
  private readonly done: Turn[] = [];
  private undone: Turn[] = [];
  private open = false;

  constructor(private present: string) {}

  get text(): string {
    return this.present;
  }

  /** What would be put back next, and what done again; null where there is none. */
  get undoNext(): DraftStep | null {
    return this.done.at(-1)?.step ?? null;
  }
  get redoNext(): DraftStep | null {
    return this.undone.at(-1)?.step ?? null;
  }

  change(text: string, step: DraftStep): void {
    if (text === this.present) return;
    const last = this.done.at(-1);
    const joins =
      this.open && last !== undefined && last.step.kind === step.kind && last.step.path === step.path;
    if (joins) last.after = text;
    else this.done.push({ step, before: this.present, after: text });
    if (this.done.length > MOST_TURNS) this.done.shift();
    this.undone = [];
    this.present = text;
    this.open = step.kind === 'typed' || step.kind === 'changed';
  }

  /** The next change is a step of its own, wherever it is made. */
  pause(): void {
    this.open = false;
  }

  undo(): string {
    const turn = this.done.pop();
    if (turn !== undefined) {
      this.undone.push(turn);
      this.present = turn.before;
    }
    this.open = false;
    return this.present;
  }

  redo(): string {
    const turn = this.undone.pop();
    if (turn !== undefined) {
      this.done.push(turn);
      this.present = turn.after;
    }
    this.open = false;
    return this.present;
  }
}
