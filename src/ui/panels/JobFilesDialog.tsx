import { useEffect, useRef } from 'preact/hooks';
import { describeAnswer, describeGivenFile } from '../../text/describeJobFile.ts';
import { shownCharacters } from '../../text/shownCharacters.ts';
import { say } from '../../text/translate.ts';
import { Dialog } from './Dialog.tsx';
import { JobFileAnswer } from './JobFileAnswer.tsx';
import type { FileState, GivenFile, JobFilesDesk } from './JobFilesDesk.ts';
import { JobWords } from './JobWords.tsx';
import './styles/jobFiles.css';

interface JobFilesDialogProps {
  readonly desk: JobFilesDesk;
  readonly toJob: (key: string) => void;
  readonly onClose: () => void;
}

/** What has become of the files that were chosen or dropped, and what they ask for. */
export function JobFilesDialog({ desk, toJob, onClose }: JobFilesDialogProps) {
  return (
    <Dialog title={say('jobFiles.title')} onClose={onClose}>
      <ul class="job-files">
        {desk.files.value.map((given) => (
          <li key={given.number}>
            <p class="job-file-name">{shownCharacters(given.name)}</p>
            <State given={given} desk={desk} toJob={toJob} />
          </li>
        ))}
      </ul>
    </Dialog>
  );
}

interface StateProps {
  readonly given: GivenFile;
  readonly desk: JobFilesDesk;
  readonly toJob: (key: string) => void;
}

function State({ given, desk, toJob }: StateProps) {
  const { state } = given;
  switch (state.kind) {
    case 'reading':
      return <p role="status">{say('jobFiles.reading')}</p>;
    case 'refused': {
      const lines = describeGivenFile(state.problem);
      return (
        <div role="alert">
          {state.problem.code === 'scenario' && <p>{say('jobFiles.notInOrder', { count: lines.length })}</p>}
          <ul class="job-file-problems">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      );
    }
    case 'asks':
      return (
        <JobFileAnswer
          title={state.title}
          seats={state.seats}
          problem={state.problem === null ? null : describeAnswer(state.problem)}
          busy={state.busy}
          about={state.problem?.code === 'seat-unfit' ? 'seat' : 'code'}
          onAnswer={(code, seat) => desk.answer(given.number, code, seat)}
        />
      );
    case 'on-board':
      return <OnBoard state={state} toJob={toJob} />;
  }
}

interface OnBoardProps {
  readonly state: Extract<FileState, { kind: 'on-board' }>;
  readonly toJob: (key: string) => void;
}

/** A job that may be opened now. */
function OnBoard({ state, toJob }: OnBoardProps) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // The field in which the class code was typed is gone; a focus that is elsewhere stays there.
    if (document.activeElement === null || document.activeElement === document.body) button.current?.focus();
  }, []);
  return (
    <div role="status">
      <p>
        <strong>
          <JobWords of={state.title} />
        </strong>
        {state.seat !== null && ` · ${say('board.seat', { seat: state.seat })}`}
        <br />
        {say(`jobFiles.${state.as}`)}
      </p>
      {state.namesake && <p>{say('jobFiles.namesake', { hash: state.contentHash.slice(0, 12) })}</p>}
      {!state.kept && <p>{say('jobFiles.notKept')}</p>}
      <button ref={button} type="button" class="act" onClick={() => toJob(state.key)}>
        {say('board.take')}
      </button>
    </div>
  );
}
