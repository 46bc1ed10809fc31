import { unreachable } from '../../../base/assert.ts';
import { say } from '../../../text/translate.ts';
import { LEARNERS } from '../../../training/learners/Learner.ts';
import { SaidOnceSettled } from '../SaidOnceSettled.tsx';
import type { ProofState } from './ProofState.ts';

/** The proof in one line, and the line below it; whoever listens hears both once they stand. */
export function ProofHeadline({ state }: { readonly state: ProofState }) {
  const headline = headlineOf(state);
  const line = lineOf(state);
  return (
    <header class={`proof-head proof-head-${toneOf(state)}`}>
      <p class="visually-hidden" id="proof-title">
        {say('proofPanel.title')}
      </p>
      <h2>
        <span class="proof-sign" aria-hidden="true">
          {SIGNS[toneOf(state)]}
        </span>
        {headline}
      </h2>
      {line !== null && <p class="proof-line">{line}</p>}
      <SaidOnceSettled
        sentence={state.kind === 'proving' ? null : `${headline}. ${line ?? ''}`}
        afterMs={SAID_AFTER_MS}
      />
    </header>
  );
}

type Tone = 'quiet' | 'working' | 'good' | 'mend';

const SIGNS: Readonly<Record<Tone, string>> = { quiet: '·', working: '…', good: '✓', mend: '!' };

function toneOf(state: ProofState): Tone {
  switch (state.kind) {
    case 'nothing':
    case 'nothing-to-prove':
      return 'quiet';
    case 'proving':
      return 'working';
    case 'proved':
      return state.proof.fit ? 'good' : 'mend';
    case 'broken':
    case 'failed':
      return 'mend';
    default:
      return unreachable(state);
  }
}

function headlineOf(state: ProofState): string {
  switch (state.kind) {
    case 'broken':
      return say('proofPanel.headlines.broken', { count: state.problems.length });
    case 'proved': {
      const count = state.proof.findings.filter(({ forbids }) => forbids).length;
      return count === 0 ? say('proofPanel.headlines.fit') : say('proofPanel.headlines.unfit', { count });
    }
    default:
      return say(`proofPanel.headlines.${state.kind}`);
  }
}

function lineOf(state: ProofState): string | null {
  switch (state.kind) {
    case 'nothing':
    case 'broken':
    case 'nothing-to-prove':
      return say(`proofPanel.lines.${state.kind}`);
    case 'proving': {
      const { soFar } = state;
      if (soFar?.plan == null)
        return say(soFar?.codes == null ? 'proofPanel.lines.codes' : 'proofPanel.lines.plan');
      if (soFar.sitting !== undefined) return say('proofPanel.lines.variant', { variant: soFar.sitting });
      const sat = Math.min(soFar.learners.length + 1, LEARNERS.length);
      return say('proofPanel.lines.learners', { sat, all: LEARNERS.length });
    }
    case 'proved': {
      const notes = state.proof.findings.filter(({ forbids }) => !forbids).length;
      if (!state.proof.fit) return notes === 0 ? null : say('proofPanel.lines.fit', { count: notes });
      return notes === 0 ? say('proofPanel.lines.fitAll') : say('proofPanel.lines.fit', { count: notes });
    }
    case 'failed':
      return null;
    default:
      return unreachable(state);
  }
}

/** The one voice of the panel. It is silent while a proof is worked out, and while somebody types. */
const SAID_AFTER_MS = 600;
