import { signal } from '@preact/signals';
import { render } from 'preact';
import '../../../assets/fonts/fonts.css';
import '../../../src/ui/panels/styles.css';
import { BenchScreen } from '../../../src/ui/panels/BenchScreen.tsx';
import type { ReaderPage } from '../../../src/ui/panels/ReaderPanel.tsx';
import type { Shop } from '../../../src/ui/panels/Shop.ts';
import type { SideTab } from '../../../src/ui/panels/SideColumn.tsx';
import { cssProperties } from '../../../src/ui/theme/cssProperties.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';
import { galleryCoach } from './galleryCoach.ts';
import { ASLEEP, galleryDesk, galleryObservation, roadObservation } from './galleryDesk.ts';

/**
 * The bench screen with one moment of a job on it, and no bench: `?state=codes&tab=reader&theme=paper`. Dialogs and pages are
 * opened by clicking, as a learner would.
 */
const query = new URLSearchParams(location.search);
const state = query.get('state') ?? 'work';
const theme = (query.get('theme') ?? 'paper') as ThemeName;
for (const [property, value] of Object.entries(cssProperties(theme))) {
  document.documentElement.style.setProperty(property, value);
}
document.documentElement.dataset['theme'] = theme;
document.documentElement.style.colorScheme = theme === 'shop-floor' ? 'dark' : 'light';

const seen =
  state === 'road'
    ? roadObservation()
    : state === 'asleep'
      ? galleryObservation({ key: 'off', reader: ASLEEP, dashLamp: false })
      : galleryObservation();
const coach = galleryCoach(query.get('coach'));
const desk = galleryDesk(seen, state === 'road' ? 'repair' : 'bench', state !== 'asleep', coach);
const tab = signal((query.get('tab') ?? 'log') as SideTab);
const shop = {
  trouble: signal(null),
  settings: signal({
    theme: 'auto',
    muted: false,
    volume: 1,
    announce: 'settled',
    letterShortcuts: true,
    language: 'en',
  }),
} as unknown as Shop;

const readerPage = signal<ReaderPage>('codes');

function Gallery() {
  return (
    <BenchScreen
      desk={desk}
      shop={shop}
      stage={<div class="stage" />}
      held={null}
      tab={tab.value}
      onTab={(next) => {
        tab.value = next;
      }}
      readerPage={readerPage}
      onSettings={() => {}}
      onUndo={() => {}}
      onShortcuts={() => {}}
    />
  );
}

const root = document.getElementById('app');
if (root !== null) render(<Gallery />, root);
document.title = 'ready';
