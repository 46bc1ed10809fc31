import { useEffect, useId, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { JobWords } from './JobWords.tsx';

interface JobFileAnswerProps {
  readonly title: string;
  readonly seats: number;
  readonly problem: string | null;
  readonly busy: boolean;
  /** Which of the two fields the problem speaks of. */
  readonly about: 'code' | 'seat';
  readonly onAnswer: (classCode: string, seat: string) => void;
}

/** Asks for the class code of a sealed file, and for the seat where each has a truck of its own. */
export function JobFileAnswer({ title, seats, problem, busy, about, onAnswer }: JobFileAnswerProps) {
  const id = useId();
  const code = useRef<HTMLInputElement>(null);
  const seat = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const field = problem !== null && about === 'seat' ? seat : code;
    // Of several that ask, the first has the word.
    const taken = document.activeElement instanceof HTMLInputElement && problem === null;
    if (!taken) field.current?.focus();
  }, [problem, about]);
  const faulty = (field: 'code' | 'seat') =>
    problem !== null && about === field ? { 'aria-invalid': true, 'aria-describedby': `${id}-problem` } : {};
  return (
    <form
      class="job-file-answer"
      onSubmit={(event) => {
        event.preventDefault();
        onAnswer(code.current?.value ?? '', seat.current?.value ?? '');
      }}
    >
      <p>
        <strong>
          <JobWords of={title} />
        </strong>
        <br />
        {say(seats > 0 ? 'jobFiles.asksSeat' : 'jobFiles.asksCode')}
      </p>
      <label for={`${id}-code`}>{say('jobFiles.classCode')}</label>
      <input
        ref={code}
        id={`${id}-code`}
        type="text"
        autocomplete="off"
        autocapitalize="characters"
        spellcheck={false}
        maxLength={200}
        {...faulty('code')}
      />
      {seats > 0 && (
        <>
          <label for={`${id}-seat`}>{say('jobFiles.seat', { seats })}</label>
          <input
            ref={seat}
            id={`${id}-seat`}
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={8}
            {...faulty('seat')}
          />
        </>
      )}
      {problem !== null && (
        <p id={`${id}-problem`} class="job-file-problem" role="alert">
          {problem}
        </p>
      )}
      <button type="submit" class="act" aria-disabled={busy}>
        {say(busy ? 'jobFiles.opening' : 'jobFiles.open')}
      </button>
    </form>
  );
}
