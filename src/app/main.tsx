import { cards, scenarioFetchers } from 'virtual:scenarios';
import { effect, signal } from '@preact/signals';
import { render } from 'preact';
import '../../assets/fonts/fonts.css';
import '../ui/panels/styles.css';
import '../ui/panels/styles/edition.css';
import '../ui/mirror/mirror.css';
import { openIdbStore } from '../platform/browser/idbStore.ts';
import type { StoreTrouble } from '../platform/browser/StoredSitting.ts';
import { openSafeStore } from '../platform/browser/safeStore.ts';
import { loadSettings } from '../platform/browser/settings.ts';
import { fetchSentencesBy } from '../ui/panels/laterSentences.ts';
import type { Trouble } from '../ui/panels/Shop.ts';
import { rendererAsked } from '../ui/scene/renderer/RendererKind.ts';
import { createVoices } from '../ui/sound/createVoices.ts';
import { App } from './App.tsx';
import { createShop } from './createShop.ts';
import { firstFonts } from './firstFonts.ts';
import { followLanguage } from './followLanguage.ts';
import { followUnits } from './followUnits.ts';
import { createFileJobs } from './handout/fileJobs.ts';
import { keepSettings } from './keepSettings.ts';
import { createEdition } from './offline/createEdition.ts';
import { tellStoreTrouble } from './tellStoreTrouble.ts';
import { followTheme, media } from './theme.ts';
import { watchErrors } from './watchErrors.ts';
import { whenIdle } from './whenIdle.ts';

const letters = firstFonts();
const settings = signal(loadSettings());
const theme = followTheme(settings);
const reducedMotion = media('(prefers-reduced-motion: reduce)');

const voices = createVoices();
effect(() => {
  voices.setVolume(settings.value.volume);
  voices.setMuted(settings.value.muted);
});
for (const event of ['pointerdown', 'keydown'] as const) {
  window.addEventListener(event, () => voices.unlock(), { capture: true });
}

const trouble = signal<Trouble | null>(null);
keepSettings(settings, trouble);
followUnits(settings);
const sentences = followLanguage(settings, trouble);
fetchSentencesBy(sentences.whole);
const storeTrouble = signal<StoreTrouble | null>(null);
const store = await openSafeStore(openIdbStore, (found) => {
  storeTrouble.value = found;
});
const shop = createShop(cards, store, settings, trouble, createFileJobs());
await shop.refresh();
await sentences.board;
await letters;
watchErrors(shop);
tellStoreTrouble(shop, storeTrouble);

const edition = createEdition();
const root = document.getElementById('app');
if (root !== null) {
  render(
    <App
      cards={cards}
      scenarioFetchers={scenarioFetchers}
      shop={shop}
      sentences={sentences}
      edition={edition}
      theme={theme}
      reducedMotion={reducedMotion}
      voices={voices}
      renderer={rendererAsked(location.search)}
    />,
    root,
  );
}

// Whoever reads the board will take a job: its bench is fetched meanwhile.
if (shop.route.peek().screen === 'board') {
  whenIdle(() => {
    sentences.ahead();
    import('./JobScreen.tsx').catch(() => {});
  });
}

// The first screen comes first. A server of sources has no worker to keep anything.
if (import.meta.env.PROD) {
  whenIdle(() => {
    import('./offline/followProgram.ts').then(
      ({ followProgram }) => followProgram(edition, shop),
      // Without the network there is nothing new to keep.
      () => {},
    );
  });
}
