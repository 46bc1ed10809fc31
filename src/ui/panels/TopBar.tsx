import type { ComponentChildren } from 'preact';
import { useContext, useEffect } from 'preact/hooks';
import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import { JobWords } from './JobWords.tsx';
import { RoomName } from './RoomName.ts';
import type { Shop } from './Shop.ts';

interface TopBarProps {
  readonly shop: Shop;
  readonly title?: string;
  /** What the window is called where the screen has no title of its own. */
  readonly windowName?: string;
  /** The title is the heading of the whole screen. */
  readonly heading?: boolean;
  /** Below the title, small: the way the job is sat. */
  readonly under?: string;
  /** What the truck and the clock say. */
  readonly status?: ComponentChildren;
  readonly onSettings: () => void;
  /** What can be done from here, the weightiest last. */
  readonly children?: ComponentChildren;
}

/** The same head on every screen: where one is at the left, what can be done at the right. */
export function TopBar({
  shop,
  title,
  windowName,
  heading,
  under,
  status,
  onSettings,
  children,
}: TopBarProps) {
  const words = title === undefined ? say('app.tagline') : <JobWords of={title} />;
  useWindowTitle(title === undefined ? windowName : jobSentence(title).words);
  return (
    <header class="top-bar">
      <button
        type="button"
        class="brand"
        aria-label={title === undefined ? say('app.name') : `${say('app.name')}: ${say('app.back')}`}
        onClick={() => shop.toBoard()}
      >
        {say('app.name')}
      </button>
      <div class="top-where">
        {heading ? <h1 class="top-title">{words}</h1> : <span class="top-title">{words}</span>}
        {under !== undefined && <span class="mode">{under}</span>}
      </div>
      {status !== undefined && <div class="top-status">{status}</div>}
      <button type="button" class="plain settings-button" onClick={onSettings}>
        {say('bench.settings')}
      </button>
      {children !== undefined && <div class="top-actions">{children}</div>}
    </header>
  );
}

/** Names the window after its screen: tabs and their history are told apart, and a screen reader says where one has come. */
function useWindowTitle(screen: string | undefined): void {
  const room = useContext(RoomName);
  const names = [room, screen, say('app.name')].filter((name) => name);
  const words = [...new Set(names)].join(' – ');
  useEffect(() => {
    if (room !== null) document.title = words;
  }, [room, words]);
}
