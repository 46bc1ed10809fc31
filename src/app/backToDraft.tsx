import { triedDraft } from '../platform/browser/triedDraft.ts';
import { say } from '../text/translate.ts';

/** The way back for an author who tries a job as a learner would. For anybody else there is none. */
export function backToDraft(job: string) {
  const draft = triedDraft(job);
  return draft === null ? undefined : (
    <a class="back-to-draft" href={`#/back-room/${draft}`}>
      {say('app.backToDraft')}
    </a>
  );
}
