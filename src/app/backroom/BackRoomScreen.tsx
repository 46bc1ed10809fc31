import type { ReadonlySignal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import '../../ui/backroom/styles/backRoom.css';
import { FileDrop } from '../../ui/backroom/FileDrop.tsx';
import { ShelfScreen } from '../../ui/backroom/ShelfScreen.tsx';
import { TopBar } from '../../ui/panels/TopBar.tsx';
import type { Voices } from '../../ui/sound/Voices.ts';
import type { ThemeName } from '../../ui/theme/tokens.ts';
import type { AppShop } from '../createShop.ts';
import { DraftScreen } from './DraftScreen.tsx';
import { type DraftShelf, draftShelf } from './DraftShelf.ts';
import { useIncoming } from './useIncoming.ts';

export interface BackRoomProps {
  readonly shop: AppShop;
  /** The draft that is open, or the shelf. */
  readonly draft: string | null;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly renderer: Parameters<typeof DraftScreen>[0]['renderer'];
  readonly onSettings: () => void;
}

/** Where instructors write: the shelf of drafts, or one of them open. Files may be dropped on either. */
export function BackRoomScreen(props: BackRoomProps) {
  const [shelf, setShelf] = useState<DraftShelf | null>(null);
  useEffect(() => {
    let gone = false;
    void draftShelf().then(async (opened) => {
      await opened.refresh();
      if (!gone) setShelf(opened);
    });
    return () => {
      gone = true;
    };
  }, [props.draft]);
  if (shelf === null)
    return <TopBar shop={props.shop} title={say('backRoom.title')} onSettings={props.onSettings} />;
  return <Room {...props} shelf={shelf} />;
}

function Room(props: BackRoomProps & { readonly shelf: DraftShelf }) {
  const { shop, shelf, draft, onSettings } = props;
  const notice = useSignal<string | null>(null);
  const incoming = useIncoming(shelf, notice);
  const textBeside = useSignal<boolean | null>(null);
  return (
    <FileDrop onFiles={(files) => void incoming.open(files)}>
      {draft === null ? (
        <ShelfScreen
          shop={shop}
          drafts={shelf.drafts}
          trouble={shelf.trouble}
          notice={notice}
          onNew={() => void incoming.begin()}
          onFiles={(files) => void incoming.open(files)}
          onCopy={(key) => void incoming.copy(key)}
          onRemove={(key) => void shelf.remove(key)}
          onSettings={onSettings}
        />
      ) : (
        <DraftScreen
          key={draft}
          {...props}
          draft={draft}
          notice={notice}
          incoming={incoming}
          textBeside={textBeside}
        />
      )}
    </FileDrop>
  );
}
