import type { ComponentChildren } from 'preact';
import { say } from '../../text/translate.ts';
import { JobWords } from './JobWords.tsx';
import type { Shop } from './Shop.ts';

interface TopBarProps {
  readonly shop: Shop;
  readonly title?: string;
  /** The title is the heading of the whole screen. */
  readonly heading?: boolean;
  readonly onSettings: () => void;
  readonly children?: ComponentChildren;
}

/** The same head on every screen: name and way home at the left, settings at the right. */
export function TopBar({ shop, title, heading, onSettings, children }: TopBarProps) {
  const words = title === undefined ? say('app.tagline') : <JobWords of={title} />;
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
      {heading ? <h1 class="top-title">{words}</h1> : <span class="top-title">{words}</span>}
      {children}
      <button type="button" class="plain settings-button" onClick={onSettings}>
        {say('bench.settings')}
      </button>
    </header>
  );
}
