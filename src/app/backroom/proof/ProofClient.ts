import { workerUrl } from 'virtual:worker/src/app/backroom/proof/proofWorker.ts';
import { type Signal, signal } from '@preact/signals';
import { unreachable } from '../../../base/assert.ts';
import { say } from '../../../text/translate.ts';
import type { ProofSoFar } from '../../../training/proof/ScenarioProof.ts';
import type { ProofState } from '../../../ui/backroom/proof/ProofState.ts';
import { openWorker } from '../../workers/livingWorker.ts';
import { NewestClient, type OpenNewestLine } from './NewestClient.ts';
import type { NewestAsked, NewestSaid } from './newest.ts';
import type { DraftText, ProofNews } from './proofSteps.ts';

/** Whoever types pauses between words; a proof of half a word is of no use. */
const REST_MS = 500;
/** A learner's sitting cannot be laid down half-way. */
const PATIENCE_MS = 100;

/** Has the newest draft proved beside the editor, and keeps what is known of it. */
export class ProofClient {
  readonly state: Signal<ProofState> = signal<ProofState>({ kind: 'nothing' });
  private readonly client: NewestClient<DraftText, ProofNews>;
  private text: string | null = null;

  constructor(openLine: OpenNewestLine<DraftText, ProofNews> = workerLine, restMs: number = REST_MS) {
    this.client = new NewestClient<DraftText, ProofNews>({
      openLine,
      restMs,
      patienceMs: PATIENCE_MS,
      news: (news) => this.hear(news),
      done: () => {},
      failed: (failure) => {
        this.state.value = { kind: 'failed', failure };
      },
      gone: () => say('evidence.gone'),
    });
  }

  /** The draft as it is now, as the text of its file. The same text again is no news. */
  prove(text: string, file: string): void {
    if (text === this.text && this.state.peek().kind !== 'failed') return;
    this.text = text;
    this.state.value = { kind: 'proving', soFar: null, before: knownOf(this.state.peek()) };
    this.client.ask({ text, file });
  }

  /** After a failure. */
  again(): void {
    this.state.value = { kind: 'proving', soFar: null, before: null };
    this.client.again();
  }

  /** There is no draft any more. */
  forget(): void {
    this.client.forget();
    this.text = null;
    this.state.value = { kind: 'nothing' };
  }

  end(): void {
    this.client.end();
  }

  private hear(news: ProofNews): void {
    switch (news.kind) {
      case 'broken':
        this.state.value = { kind: 'broken', problems: news.problems };
        return;
      case 'nothing-to-prove':
        this.state.value = { kind: 'nothing-to-prove' };
        return;
      case 'so-far': {
        const state = this.state.peek();
        const before = state.kind === 'proving' ? state.before : null;
        this.state.value = { kind: 'proving', soFar: news.soFar, before };
        return;
      }
      case 'proved':
        this.state.value = { kind: 'proved', proof: news.proof };
        return;
      default:
        return unreachable(news);
    }
  }
}

/** What a state knows of its draft, to be shown until the next one's is there. */
function knownOf(state: ProofState): ProofSoFar | null {
  switch (state.kind) {
    case 'proved': {
      const { scenario, codes, learners, findings, ...plan } = state.proof;
      return { scenario, codes, plan, learners, findings };
    }
    case 'proving':
      return state.soFar?.plan == null ? (state.before ?? state.soFar) : state.soFar;
    default:
      return null;
  }
}

const workerLine: OpenNewestLine<DraftText, ProofNews> = (hear) =>
  openWorker<NewestAsked<DraftText>, NewestSaid<ProofNews>>(workerUrl, 'proof', hear);
