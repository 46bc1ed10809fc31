import type { ReadonlySignal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/translate.ts';
import type { BoardCard } from '../training/scenario/BoardCard.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import { Board } from '../ui/panels/Board.tsx';
import type { Edition } from '../ui/panels/Edition.ts';
import { KeptLine } from '../ui/panels/KeptLine.tsx';
import { later } from '../ui/panels/later.tsx';
import { NewerVersionBar } from '../ui/panels/NewerVersionBar.tsx';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { TroubleBar } from '../ui/panels/TroubleBar.tsx';
import type { RendererKind } from '../ui/scene/renderer/RendererKind.ts';
import type { Voices } from '../ui/sound/Voices.ts';
import type { ThemeName } from '../ui/theme/tokens.ts';
import type { AppShop } from './createShop.ts';
import type { Sentences } from './followLanguage.ts';
import { missingPart } from './missingPart.ts';

const SettingsDialog = later(() => import('../ui/panels/SettingsDialog.tsx').then((m) => m.SettingsDialog));

type FetchScenario = () => Promise<{ readonly scenario: SealedScenario }>;

interface AppProps {
  readonly cards: readonly BoardCard[];
  readonly scenarioFetchers: Readonly<Record<string, FetchScenario>>;
  readonly shop: AppShop;
  readonly sentences: Sentences;
  readonly edition: Edition;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly renderer: RendererKind | null;
}

/** The page: a table from route to screen. */
export function App(props: AppProps) {
  const { shop, cards } = props;
  const settings = useSignal(false);
  const openSettings = (): void => {
    settings.value = true;
  };
  const route = shop.route.value;
  const named = route.screen === 'board' ? undefined : cards.find(({ id }) => id === route.scenario);
  // An introduction has no debrief to be read again.
  const card = named !== undefined && route.screen === 'debrief' && !isJob(named.mode) ? undefined : named;
  return (
    <>
      <TroubleBar shop={shop} />
      <NewerVersionBar edition={props.edition} onBoard={route.screen === 'board'} />
      {card === undefined || route.screen === 'board' ? (
        <>
          <TopBar shop={shop} onSettings={openSettings} />
          {route.screen !== 'board' && <p class="notice">{say('app.unknownJob')}</p>}
          <Board shop={shop} />
          <KeptLine edition={props.edition} />
        </>
      ) : route.screen === 'debrief' ? (
        <LazyDebrief key={route.kept} {...props} card={card} kept={route.kept} onSettings={openSettings} />
      ) : (
        <LazyJob key={card.id} {...props} card={card} onSettings={openSettings} />
      )}
      {settings.value && (
        <SettingsDialog
          shop={shop}
          soundLost={props.voices.state === 'failed'}
          onClose={() => (settings.value = false)}
        />
      )}
    </>
  );
}

interface JobProps extends AppProps {
  readonly card: BoardCard;
  readonly onSettings: () => void;
}

/** The bench's code is fetched when the first job is opened, not with the job board. */
function LazyJob(props: JobProps) {
  return <Fetched {...props} fetch={fetchJob} />;
}

/** So is the code that sits a finished job again. */
function LazyDebrief(props: JobProps & { readonly kept: string }) {
  return <Fetched {...props} fetch={fetchDebrief} whole />;
}

const fetchJob = () => import('./JobScreen.tsx').then(({ JobScreen }) => JobScreen);
const fetchDebrief = () => import('./DebriefScreen.tsx').then(({ DebriefScreen }) => DebriefScreen);

/** A screen whose code, whose sentences and whose job are fetched when it is first shown. */
function Fetched<Props extends JobProps>(
  props: Props & {
    readonly fetch: () => Promise<ComponentType<Props & OfJob>>;
    /** The bench does with less than all that is said of a job. */
    readonly whole?: boolean;
  },
) {
  const [got, setGot] = useState<{ Screen: ComponentType<Props & OfJob>; sealed: SealedScenario } | null>(
    null,
  );
  const { shop, fetch, card, scenarioFetchers, sentences, whole = false } = props;
  useEffect(() => {
    const fetchScenario = scenarioFetchers[card.id];
    if (fetchScenario === undefined) return;
    Promise.all([fetch(), fetchScenario(), sentences.job(card.id), whole && sentences.whole()]).then(
      ([Screen, { scenario }]) => setGot({ Screen, sealed: scenario }),
      (error: unknown) => {
        shop.trouble.value = missingPart(error) ?? {
          key: 'troubles.unexpected',
          detail: String(error),
          offers: [],
        };
      },
    );
  }, [shop, fetch, card, scenarioFetchers, sentences, whole]);
  if (got === null) return <TopBar shop={shop} title={card.title} onSettings={props.onSettings} />;
  return <got.Screen {...props} sealed={got.sealed} />;
}

interface OfJob {
  readonly sealed: SealedScenario;
}
