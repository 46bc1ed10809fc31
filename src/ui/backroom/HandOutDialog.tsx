import { type ReadonlySignal, useSignal } from '@preact/signals';
import { say } from '../../text/translate.ts';
import {
  LEAST_CODE_CHARACTERS,
  MOST_CODE_CHARACTERS,
  plainClassCode,
  STRONG_CODE_CHARACTERS,
} from '../../training/handout/classCode.ts';
import { MOST_SEATS } from '../../training/handout/JobFile.ts';
import { USUAL_SEATS } from '../../training/handout/sealedFileOf.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import { Choice } from '../panels/Choice.tsx';
import { Dialog } from '../panels/Dialog.tsx';
import type { ProofState } from './proof/ProofState.ts';

/** How a job is to be handed out. */
export type HandOutWish =
  | { readonly kind: 'readable' }
  | { readonly kind: 'sealed'; readonly code: string | null; readonly seats: number | null };

/** What was saved. */
export interface HandedOut {
  readonly file: string;
  readonly contentHash: string;
  readonly code: string | null;
}

interface HandOutDialogProps {
  /** Null while the file is not in order. */
  readonly scenario: Scenario | null;
  readonly proof: ReadonlySignal<ProofState>;
  readonly drawCode: () => string;
  readonly onHandOut: (wish: HandOutWish) => Promise<HandedOut | null>;
  readonly onTry: () => void;
  /** Closes, and goes to what is still to be mended. */
  readonly onProblems: () => void;
  /** Closes, and goes to the proof. */
  readonly onProof: () => void;
  readonly onClose: () => void;
}

/** Gives a job out: readable for practice, sealed for an assessment. */
export function HandOutDialog(props: HandOutDialogProps) {
  const { scenario, onClose } = props;
  return (
    <Dialog title={say('handOut.title')} onClose={onClose}>
      {scenario === null ? (
        <>
          <p>{say('handOut.notYet')}</p>
          <div class="dialog-foot">
            <button type="button" class="act" onClick={props.onProblems}>
              {say('handOut.toProblems')}
            </button>
          </div>
        </>
      ) : (
        <Ways {...props} scenario={scenario} />
      )}
    </Dialog>
  );
}

type Kind = HandOutWish['kind'];

function Ways(props: HandOutDialogProps & { readonly scenario: Scenario }) {
  const { scenario, proof, drawCode, onHandOut, onTry, onProof } = props;
  const kind = useSignal<Kind>(scenario.mode === 'assessment' ? 'sealed' : 'readable');
  const code = useSignal('');
  const seats = useSignal(String(USUAL_SEATS));
  const busy = useSignal(false);
  const outcome = useSignal<HandedOut | 'failed' | null>(null);
  const wish = wishOf(kind.value, code.value, seats.value, scenario);
  const give = async (): Promise<void> => {
    if (wish === null || busy.value) return;
    busy.value = true;
    outcome.value = (await onHandOut(wish)) ?? 'failed';
    busy.value = false;
  };
  return (
    <form
      class="hand-out"
      onSubmit={(event) => {
        event.preventDefault();
        void give();
      }}
    >
      <p>
        {proofLine(proof.value)}{' '}
        {hasFindings(proof.value) && (
          <button type="button" class="plain" onClick={onProof}>
            {say('handOut.toProof')}
          </button>
        )}
      </p>
      <Choice
        label={say('handOut.how')}
        value={kind.value}
        options={(['readable', 'sealed'] as const).map((value) => ({
          value,
          label: say(`handOut.${value}`),
        }))}
        onChoose={(value) => {
          kind.value = value;
          outcome.value = null;
        }}
      />
      <p>{say(`handOut.${kind.value}Line`)}</p>
      {kind.value === 'sealed' && (
        <>
          {scenario.mode !== 'assessment' && <p>{say(`handOut.sealedMode.${scenario.mode}`)}</p>}
          <details>
            <summary>{say('handOut.more')}</summary>
            <p class="quiet">
              {say('handOut.moreSealed')} {say('handOut.honest', { strong: STRONG_CODE_CHARACTERS })}
            </p>
          </details>
          <Code
            code={code}
            drawCode={drawCode}
            onChange={() => {
              outcome.value = null;
            }}
          />
          {scenario.variants !== undefined && (
            <Seats code={code.value} seats={seats} onChange={() => (outcome.value = null)} />
          )}
        </>
      )}
      <div role="status">{outcome.value !== null && <Outcome outcome={outcome.value} />}</div>
      <div class="dialog-foot">
        <button type="button" onClick={onTry} title={say('handOut.tryLine')}>
          {say('handOut.tryIt')}
        </button>
        <button type="submit" class="act" aria-disabled={wish === null || busy.value}>
          {say(busy.value ? 'handOut.working' : 'handOut.save')}
        </button>
      </div>
    </form>
  );
}

function proofLine(proof: ProofState): string {
  switch (proof.kind) {
    case 'proved': {
      const count = proof.proof.findings.filter(({ forbids }) => forbids).length;
      const noted = proof.proof.findings.length - count;
      const found = count === 0 ? say('handOut.fit') : say('handOut.unfit', { count });
      return noted === 0 ? found : `${found} ${say('handOut.noted', { count: noted })}`;
    }
    case 'failed':
      return say('handOut.failedProof');
    case 'nothing-to-prove':
      return say('handOut.nothingToProve');
    default:
      return say('handOut.proving');
  }
}

function hasFindings(proof: ProofState): boolean {
  return proof.kind === 'failed' || (proof.kind === 'proved' && proof.proof.findings.length > 0);
}

/** Null while something that was typed will not do. */
function wishOf(kind: Kind, code: string, seats: string, scenario: Scenario): HandOutWish | null {
  if (kind === 'readable') return { kind };
  const none = code.trim() === '';
  if (!none && plainClassCode(code) === null) return null;
  if (none || scenario.variants === undefined) return { kind, code: none ? null : code.trim(), seats: null };
  const number = seatsOf(seats);
  return number === null ? null : { kind, code: code.trim(), seats: number };
}

function seatsOf(typed: string): number | null {
  const number = Number(typed);
  return /^\d{1,4}$/.test(typed.trim()) && number >= 1 && number <= MOST_SEATS ? number : null;
}

interface CodeProps {
  readonly code: { value: string };
  readonly drawCode: () => string;
  readonly onChange: () => void;
}

function Code({ code, drawCode, onChange }: CodeProps) {
  const write = (now: string): void => {
    code.value = now;
    onChange();
  };
  const problem = codeProblem(code.value);
  return (
    <div class="field">
      <label for="hand-out-code">{say('handOut.code')}</label>
      <p class="field-hint quiet" id="hand-out-code-hint">
        {say('handOut.codeHint')}
      </p>
      <div class="hand-out-code">
        <input
          id="hand-out-code"
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={code.value}
          aria-describedby="hand-out-code-hint hand-out-code-problem"
          onInput={(event) => {
            write(event.currentTarget.value);
          }}
        />
        <button
          type="button"
          onClick={() => {
            write(drawCode());
          }}
        >
          {say('handOut.draw')}
        </button>
      </div>
      <p
        class={plainClassCode(code.value) === null ? 'field-problem' : 'field-problem field-to-write'}
        id="hand-out-code-problem"
        hidden={problem === null}
      >
        {problem}
      </p>
    </div>
  );
}

function codeProblem(code: string): string | null {
  if (code.trim() === '') return null;
  const plain = plainClassCode(code);
  if (plain === null)
    return say('handOut.codeUnfit', { least: LEAST_CODE_CHARACTERS, most: MOST_CODE_CHARACTERS });
  return [...plain].length < STRONG_CODE_CHARACTERS
    ? say('handOut.codeWeak', { strong: STRONG_CODE_CHARACTERS })
    : null;
}

interface SeatsProps {
  readonly code: string;
  readonly seats: { value: string };
  readonly onChange: () => void;
}

function Seats({ code, seats, onChange }: SeatsProps) {
  if (code.trim() === '') return <p>{say('handOut.variantsNeedCode')}</p>;
  return (
    <div class="field">
      <label for="hand-out-seats">{say('handOut.seats')}</label>
      <p class="field-hint quiet" id="hand-out-seats-hint">
        {say('handOut.seatsHint', { most: MOST_SEATS })}
      </p>
      <input
        id="hand-out-seats"
        type="text"
        inputMode="numeric"
        class="field-number"
        value={seats.value}
        aria-describedby="hand-out-seats-hint"
        onInput={(event) => {
          seats.value = event.currentTarget.value;
          onChange();
        }}
      />
      {seatsOf(seats.value) === null && (
        <p class="field-problem">{say('handOut.seatsUnfit', { most: MOST_SEATS })}</p>
      )}
    </div>
  );
}

/** In a low window the outcome comes below what is seen of the dialog. */
function inSight(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: 'nearest' });
}

function Outcome({ outcome }: { readonly outcome: HandedOut | 'failed' }) {
  if (outcome === 'failed') return <p class="field-problem">{say('handOut.failed')}</p>;
  return (
    <div class="hand-out-saved" ref={inSight}>
      <p>{say('handOut.saved', { file: outcome.file })}</p>
      {outcome.code !== null && (
        <p>
          <b>{say('handOut.savedCode', { code: outcome.code })}</b>
        </p>
      )}
      <p class="quiet">{say('handOut.hash', { hash: outcome.contentHash.slice(0, 12) })}</p>
    </div>
  );
}
