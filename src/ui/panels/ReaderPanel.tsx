import { type Signal, useSignal } from '@preact/signals';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Pages } from './Pages.tsx';
import { ReaderCodes } from './ReaderCodes.tsx';
import { ReaderCommand } from './ReaderCommand.tsx';
import { ReaderLive } from './ReaderLive.tsx';

const READER_PAGES = ['codes', 'live', 'command'] as const;
export type ReaderPage = (typeof READER_PAGES)[number];

interface ReaderPanelProps {
  readonly desk: Desk;
  /** Page to show; kept by the caller so that the reader opens where it was left. */
  readonly page?: Signal<ReaderPage>;
}

/** The reader tool: an instrument of its own, with a screen and three keys. */
export function ReaderPanel({ desk, page }: ReaderPanelProps) {
  const own = useSignal<ReaderPage>('codes');
  const shown = page ?? own;
  const { awake } = desk.observation.value.reader;
  return (
    <section class="reader" aria-label={say('reader.title')}>
      <h3 class="reader-name">{say('reader.title')}</h3>
      <Pages
        name="reader"
        label={say('reader.pagesLabel')}
        pages={READER_PAGES.map((id) => ({ id, label: say(`reader.pages.${id}`) }))}
        page={shown.value}
        onPage={(next) => {
          shown.value = next;
        }}
      >
        {!awake && <Asleep />}
        {pageOf(shown.value, desk)}
      </Pages>
    </section>
  );
}

function pageOf(page: ReaderPage, desk: Desk) {
  switch (page) {
    case 'codes':
      return <ReaderCodes desk={desk} />;
    case 'live':
      return <ReaderLive desk={desk} />;
    case 'command':
      return <ReaderCommand desk={desk} />;
  }
}

function Asleep() {
  return (
    <p class="reader-asleep">
      <b>{say('reader.asleep')}</b> {say('reader.asleepText')}
    </p>
  );
}
