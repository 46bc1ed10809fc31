import { say } from '../../text/translate.ts';
import { Dialog } from './Dialog.tsx';
import { JobWords } from './JobWords.tsx';
import type { FileJob, Shop } from './Shop.ts';

interface RemoveJobDialogProps {
  readonly shop: Shop;
  readonly job: FileJob;
  readonly onClose: () => void;
}

/** Before a job of a file goes: what becomes of the sittings that were done on it. */
export function RemoveJobDialog({ shop, job, onClose }: RemoveJobDialogProps) {
  const count = shop.kept.value.filter(({ scenario }) => scenario === job.key).length;
  const remove = (records: 'kept' | 'exported'): void => {
    onClose();
    void shop.removeFileJob(job.key, records);
  };
  return (
    <Dialog title={say('jobFiles.removeTitle')} onClose={onClose}>
      <p>
        <strong>
          <JobWords of={job.card.title} />
        </strong>
      </p>
      <p>{count === 0 ? say('jobFiles.removePlain') : say('jobFiles.removeWithRecords', { count })}</p>
      <div class="dialog-foot">
        {count > 0 && (
          <button type="button" onClick={() => remove('exported')}>
            {say('jobFiles.removeExported')}
          </button>
        )}
        <button type="button" class="act" onClick={() => remove('kept')}>
          {say(count > 0 ? 'jobFiles.removeKept' : 'jobFiles.removeJob')}
        </button>
      </div>
    </Dialog>
  );
}
