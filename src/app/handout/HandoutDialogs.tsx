import { useEffect, useState } from 'preact/hooks';
import { JobFilesDialog } from '../../ui/panels/JobFilesDialog.tsx';
import { RemoveJobDialog } from '../../ui/panels/RemoveJobDialog.tsx';
import type { AppShop } from '../createShop.ts';
import { FilesDesk } from './FilesDesk.ts';

export interface HandoutDialogsProps {
  readonly shop: AppShop;
  /** The content hash of the shipped job of this id; null where there is none. */
  readonly shippedHash: (id: string) => Promise<string | null>;
}

/** The dialogs of jobs that come from files. Fetched, with the reader of scenario files, when a file is opened. */
export function HandoutDialogs({ shop, shippedHash }: HandoutDialogsProps) {
  const asked = shop.handout.value;
  const close = (): void => {
    shop.handout.value = null;
  };
  if (asked === null) return null;
  return asked.kind === 'remove' ? (
    <RemoveJobDialog shop={shop} job={asked.job} onClose={close} />
  ) : (
    <OpenedFiles shop={shop} shippedHash={shippedHash} files={asked.files} onClose={close} />
  );
}

interface OpenedFilesProps extends HandoutDialogsProps {
  readonly files: readonly File[];
  readonly onClose: () => void;
}

function OpenedFiles({ shop, shippedHash, files, onClose }: OpenedFilesProps) {
  const [desk] = useState(() => new FilesDesk({ jobs: shop.jobs, shippedHash, nowMs: () => Date.now() }));
  useEffect(() => {
    void desk.take(files);
  }, [desk, files]);
  const toJob = (key: string): void => {
    onClose();
    shop.toJob(key);
  };
  return <JobFilesDialog desk={desk} toJob={toJob} onClose={onClose} />;
}
