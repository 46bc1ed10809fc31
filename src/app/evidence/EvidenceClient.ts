import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { unreachable } from '../../base/assert.ts';
import { TICKS_PER_SECOND, type Tick } from '../../base/ticks.ts';
import { learnOutcomes } from '../../sim/world/driveCycle.ts';
import { say } from '../../text/translate.ts';
import { isJob } from '../../training/scenario/modes.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { CoachDepth, TimedAction } from '../../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { CoachState } from '../../ui/panels/Desk.ts';
import type { EvidenceLine, OpenLine, Said } from './EvidenceLine.ts';
import type { EvidenceFailure } from './messages.ts';

/** What the closed job was worth: not asked yet, being worked out, known, or not to be had. */
export type Worth =
  | { readonly kind: 'not-asked' | 'working' }
  | { readonly kind: 'known'; readonly facts: DebriefFacts }
  | { readonly kind: 'failed'; readonly failure: EvidenceFailure };

export interface EvidenceClientParts {
  readonly sealed: SealedScenario;
  readonly openLine: OpenLine;
  /** The evidence cannot be weighed for now; the bench goes on. Not called for a debrief, whose `worth` says it. */
  failed(failure: EvidenceFailure): void;
}

/** Time that passes is told at most so often, ticks of sitting time. */
const PASSED_TICKS = TICKS_PER_SECOND / 5;

/**
 * The page's end of the evidence: tells whoever weighs it what was done, and keeps the answers. When the line breaks, the next
 * question opens another and tells everything anew, from the record. For one that is gone without a word another is opened at once,
 * once.
 */
export class EvidenceClient {
  readonly coach: Signal<CoachState>;
  readonly worth: Signal<Worth> = signal<Worth>({ kind: 'not-asked' });
  readonly facts: ReadonlySignal<DebriefFacts | null> = computed(() =>
    this.worth.value.kind === 'known' ? this.worth.value.facts : null,
  );
  /** An introduction has nothing to be weighed: no line is ever opened for it. */
  private readonly weighed: boolean;
  private record: (() => SittingRecord) | null = null;
  private line: EvidenceLine | null = null;
  private ended = false;
  /** Whether one was gone without a word before. */
  private replaced = false;
  /** Whether the line knows the sitting. */
  private told = false;
  /** What waits for drives, by the number of the request. */
  private readonly drives = new Map<number, () => void>();
  private lastId = 0;
  private lastDrive = 0;
  /** Entries of the log when the coach was last asked. */
  private entries = 0;
  private passedAt: Tick = 0;
  private stands = false;

  constructor(private readonly parts: EvidenceClientParts) {
    const { mode } = parts.sealed.card;
    this.weighed = isJob(mode);
    this.coach = signal({ kind: this.weighed && mode !== 'assessment' ? 'silent' : 'off' });
  }

  /**
   * Has the drives of a sitting worked out off the page; when it settles, the page knows them and need not stand still for them.
   * `record` is null for a new sitting. Never rejects: where it fails, the page works them out itself.
   */
  async drive(seed: string, record: SittingRecord | null): Promise<void> {
    this.connect();
    if (this.line === null) return;
    const id = ++this.lastDrive;
    this.line.post({ kind: 'drive', id, sealed: this.parts.sealed, seed, record });
    return new Promise((resolve) => this.drives.set(id, resolve));
  }

  /** From now on this sitting is weighed; `record` gives it as it stands. */
  follow(record: () => SittingRecord): void {
    this.record = record;
    this.open();
  }

  /** Opens the line, if it is not open, and tells the sitting so far. */
  open(): void {
    this.connect();
    if (this.told || this.line === null || this.record === null) return;
    this.told = true;
    const record = this.record();
    this.passedAt = record.endTick;
    this.line.post({ kind: 'open', sealed: this.parts.sealed, record });
  }

  /** The bench stands and has time: what weighing needs is fetched, so that it is there with the first thing that is shown. */
  ahead(): void {
    this.stands = true;
    this.line?.post({ kind: 'ahead' });
  }

  acted(timed: TimedAction): void {
    if (this.told) this.line?.post({ kind: 'acted', timed });
  }

  passed(tick: Tick): void {
    if (!this.told || tick - this.passedAt < PASSED_TICKS) return;
    this.passedAt = tick;
    this.line?.post({ kind: 'passed', tick });
  }

  /** Asks the coach at this tick; there are so many entries in the log. */
  ask(depth: CoachDepth, tick: Tick, entries: number): void {
    if (this.coach.peek().kind === 'off') return;
    this.coach.value = { kind: 'thinking', depth };
    this.entries = entries;
    this.open();
    // A wait has no end of its own in what was told.
    this.line?.post({ kind: 'passed', tick });
    this.line?.post({ kind: 'advise', id: ++this.lastId });
  }

  /** What the job was worth is known already, from when it was read before; nothing will be asked. */
  recall(facts: DebriefFacts): void {
    this.hangUp();
    this.worth.value = { kind: 'known', facts };
  }

  /** The job is closed: asks what it was worth. */
  workOut(): void {
    if (!this.weighed) return;
    this.worth.value = { kind: 'working' };
    this.open();
    if (this.record !== null) this.line?.post({ kind: 'debrief', id: ++this.lastId, record: this.record() });
  }

  /** The job is left: ends the line for good. */
  end(): void {
    this.ended = true;
    this.hangUp();
  }

  private hangUp(): void {
    this.line?.hangUp();
    this.line = null;
    this.told = false;
    for (const resolve of this.drives.values()) resolve();
    this.drives.clear();
  }

  private connect(): void {
    if (this.line !== null || this.ended || !this.weighed) return;
    const line: EvidenceLine = this.parts.openLine((message) => {
      if (this.line === line) this.hear(message);
    });
    this.line = line;
    if (this.stands) line.post({ kind: 'ahead' });
  }

  private hear(message: Said): void {
    switch (message.kind) {
      case 'ready':
        return;
      case 'driven':
        learnOutcomes(message.outcomes);
        this.drives.get(message.id)?.();
        this.drives.delete(message.id);
        return;
      case 'advice': {
        const asked = this.coach.peek();
        if (message.id !== this.lastId || asked.kind !== 'thinking') return;
        const { depth } = asked;
        this.coach.value = { kind: 'says', depth, advice: message.advice, entries: this.entries };
        return;
      }
      case 'debriefed':
        if (message.id !== this.lastId) return;
        // Nothing more will be asked.
        this.hangUp();
        this.worth.value = message.result.ok
          ? { kind: 'known', facts: message.result.value }
          : { kind: 'failed', failure: { code: 'broke', detail: message.result.error.code } };
        return;
      case 'failed':
        return this.broke(message);
      case 'gone':
        return this.replace();
      default:
        return unreachable(message);
    }
  }

  /** Opens another line, and tells and asks on it what was told and asked before. */
  private replace(): void {
    if (this.replaced) return this.broke({ code: 'broke', detail: say('evidence.gone') });
    this.replaced = true;
    const { told } = this;
    this.hangUp();
    if (this.worth.peek().kind === 'working') return this.workOut();
    if (told) this.open();
    if (this.coach.peek().kind === 'thinking') this.line?.post({ kind: 'advise', id: ++this.lastId });
  }

  private broke({ code, detail }: EvidenceFailure): void {
    // A line that was opened for a drive alone has let nobody down: the page drives itself.
    const { told } = this;
    this.hangUp();
    if (this.coach.peek().kind === 'thinking') this.coach.value = { kind: 'silent' };
    if (this.worth.peek().kind === 'working')
      this.worth.value = { kind: 'failed', failure: { code, detail } };
    else if (told) this.parts.failed({ code, detail });
  }
}
