import type { ReadonlySignal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/translate.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import { Board } from '../ui/panels/Board.tsx';
import { SettingsDialog } from '../ui/panels/SettingsDialog.tsx';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { TroubleBar } from '../ui/panels/TroubleBar.tsx';
import type { Voices } from '../ui/sound/Voices.ts';
import type { ThemeName } from '../ui/theme/tokens.ts';
import type { AppShop } from './createShop.ts';

interface AppProps {
  readonly scenarios: readonly SealedScenario[];
  readonly shop: AppShop;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  readonly forceCanvas: boolean;
}

/** The page: a table from route to screen. */
export function App(props: AppProps) {
  const { shop, scenarios } = props;
  const settings = useSignal(false);
  const openSettings = (): void => {
    settings.value = true;
  };
  const route = shop.route.value;
  const sealed =
    route.screen === 'board' ? undefined : scenarios.find(({ card }) => card.id === route.scenario);
  return (
    <>
      <TroubleBar shop={shop} />
      {sealed === undefined ? (
        <>
          <TopBar shop={shop} onSettings={openSettings} />
          {route.screen !== 'board' && <p class="notice">{say('app.unknownJob')}</p>}
          <Board shop={shop} />
        </>
      ) : route.screen === 'debrief' ? (
        <LazyDebrief
          key={route.kept}
          {...props}
          sealed={sealed}
          kept={route.kept}
          onSettings={openSettings}
        />
      ) : (
        <LazyJob key={sealed.card.id} {...props} sealed={sealed} onSettings={openSettings} />
      )}
      {settings.value && <SettingsDialog shop={shop} onClose={() => (settings.value = false)} />}
    </>
  );
}

type JobProps = AppProps & { readonly sealed: SealedScenario; readonly onSettings: () => void };

/** The bench's code is fetched when the first job is opened, not with the job board. */
function LazyJob(props: JobProps) {
  return <Fetched {...props} fetch={fetchJob} />;
}

/** So is the code that sits a finished job again. */
function LazyDebrief(props: JobProps & { readonly kept: string }) {
  return <Fetched {...props} fetch={fetchDebrief} />;
}

const fetchJob = () => import('./JobScreen.tsx').then(({ JobScreen }) => JobScreen);
const fetchDebrief = () => import('./DebriefScreen.tsx').then(({ DebriefScreen }) => DebriefScreen);

/** A screen whose code is fetched when it is first shown. */
function Fetched<Props extends JobProps>(
  props: Props & { readonly fetch: () => Promise<ComponentType<Props>> },
) {
  const [Screen, setScreen] = useState<ComponentType<Props> | null>(null);
  const { shop, fetch } = props;
  useEffect(() => {
    fetch().then(
      (screen) => setScreen(() => screen),
      (error: unknown) => {
        shop.trouble.value = { key: 'troubles.unexpected', detail: String(error), offers: [] };
      },
    );
  }, [shop, fetch]);
  if (Screen === null)
    return <TopBar shop={shop} title={props.sealed.card.title} onSettings={props.onSettings} />;
  return <Screen {...props} />;
}
