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
import { NotOpened } from '../ui/panels/NotOpened.tsx';
import { RoomName } from '../ui/panels/RoomName.ts';
import type { Trouble } from '../ui/panels/Shop.ts';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { TroubleBar } from '../ui/panels/TroubleBar.tsx';
import type { RendererKind } from '../ui/scene/renderer/RendererKind.ts';
import type { Voices } from '../ui/sound/Voices.ts';
import type { ThemeName } from '../ui/theme/tokens.ts';
import type { AppShop } from './createShop.ts';
import type { Sentences } from './followLanguage.ts';
import type { HandoutDialogsProps } from './handout/HandoutDialogs.tsx';
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
  const { shop } = props;
  const settings = useSignal(false);
  const openSettings = (): void => {
    settings.value = true;
  };
  const route = shop.route.value;
  const named = 'scenario' in route ? cardOf(route.scenario, props) : undefined;
  // An introduction has no debrief to be read again.
  const card = named !== undefined && route.screen === 'debrief' && !isJob(named.mode) ? undefined : named;
  return (
    <RoomName.Provider value="">
      <TroubleBar shop={shop} />
      <NewerVersionBar edition={props.edition} onBoard={route.screen === 'board'} />
      {route.screen === 'back-room' ? (
        <LazyBackRoom {...props} draft={route.draft} onSettings={openSettings} />
      ) : card === undefined || route.screen === 'board' ? (
        <>
          <TopBar shop={shop} windowName={say('board.title')} onSettings={openSettings} />
          {route.screen !== 'board' && shop.fileJobs.value !== null && (
            <p class="notice">{say(route.screen === 'unknown' ? 'app.unknownAddress' : 'app.unknownJob')}</p>
          )}
          <Board shop={shop} />
          <KeptLine edition={props.edition} />
        </>
      ) : route.screen === 'debrief' ? (
        <LazyDebrief key={route.kept} {...props} card={card} kept={route.kept} onSettings={openSettings} />
      ) : (
        <LazyJob key={card.id} {...props} card={card} onSettings={openSettings} />
      )}
      {shop.handout.value !== null && <LazyHandout {...props} />}
      {settings.value && (
        <SettingsDialog
          shop={shop}
          soundLost={props.voices.state === 'failed'}
          onClose={() => (settings.value = false)}
        />
      )}
    </RoomName.Provider>
  );
}

/** The card of a job that was shipped, or came from a file. */
function cardOf(id: string, { cards, shop }: AppProps): BoardCard | undefined {
  return cards.find((card) => card.id === id) ?? shop.fileJobs.value?.find(({ key }) => key === id)?.card;
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

interface BackRoomProps extends AppProps {
  readonly draft: string | null;
  readonly onSettings: () => void;
}

/** So is where instructors write. */
function LazyBackRoom(props: BackRoomProps) {
  const [Screen, setScreen] = useState<ComponentType<BackRoomProps> | null>(null);
  const [failed, setFailed] = useState(false);
  const { shop, sentences } = props;
  useEffect(() => {
    Promise.all([import('./backroom/BackRoomScreen.tsx'), sentences.backRoom()]).then(
      ([{ BackRoomScreen }]) => setScreen(() => BackRoomScreen),
      (error: unknown) => {
        setFailed(true);
        shop.trouble.value = missingPart(error) ?? unexpected(error);
      },
    );
  }, [shop, sentences]);
  if (Screen === null) {
    return (
      <>
        <TopBar shop={shop} onSettings={props.onSettings} />
        {failed && <NotOpened shop={shop} />}
      </>
    );
  }
  return (
    <RoomName.Provider value={say('backRoom.title')}>
      <Screen {...props} />
    </RoomName.Provider>
  );
}

function unexpected(error: unknown): Trouble {
  return { key: 'troubles.unexpected', detail: String(error), offers: [] };
}

const fetchJob = () => import('./JobScreen.tsx').then(({ JobScreen }) => JobScreen);
const fetchDebrief = () => import('./DebriefScreen.tsx').then(({ DebriefScreen }) => DebriefScreen);

/** A screen whose code, whose sentences and whose job are fetched when it is first shown. */
function Fetched<Props extends JobProps>(
  props: Props & {
    readonly fetch: () => Promise<ComponentType<Props & OfJob>>;
    /** The bench does with less than all that is said of a job. */
    readonly whole?: boolean;
    /** Under which the sitting is kept, where it is not the job's own. */
    readonly kept?: string;
  },
) {
  const [got, setGot] = useState<{ Screen: ComponentType<Props & OfJob>; sealed: SealedScenario } | null>(
    null,
  );
  const [failed, setFailed] = useState(false);
  const { shop, fetch, card, scenarioFetchers, sentences, whole = false, kept } = props;
  useEffect(() => {
    const fetchScenario = scenarioFetchers[card.id] ?? (() => ofFile(card.id, shop));
    Promise.all([
      fetch(),
      fetchScenario().then((found) => drawnFor(found, kept ?? card.id, shop)),
      sentences.job(card.id),
      whole && sentences.whole(),
    ]).then(
      ([Screen, sealed]) => setGot({ Screen, sealed }),
      (error: unknown) => {
        setFailed(true);
        shop.trouble.value = missingPart(error) ?? unexpected(error);
      },
    );
  }, [shop, fetch, card, scenarioFetchers, sentences, whole, kept]);
  if (got === null) {
    return (
      <>
        <TopBar shop={shop} title={card.title} onSettings={props.onSettings} />
        {failed && <NotOpened shop={shop} />}
      </>
    );
  }
  return <got.Screen {...props} sealed={got.sealed} />;
}

interface OfJob {
  readonly sealed: SealedScenario;
}

type Found = Awaited<ReturnType<FetchScenario>>;

async function ofFile(key: string, { jobs }: AppShop): Promise<Found> {
  const job = jobs.all.peek()?.find((each) => each.key === key);
  if (job === undefined) throw new Error(`no job of a file is kept as ${key}`);
  return { scenario: job.sealed };
}

/** Where a job's truth is drawn when it is taken, the one that its kept sitting has, or a new one. */
async function drawnFor({ scenario }: Found, kept: string, shop: AppShop): Promise<SealedScenario> {
  if (scenario.card.drawn !== true) return scenario;
  const [{ seated }, stored] = await Promise.all([import('./handout/seated.ts'), shop.store.get(kept)]);
  return seated(scenario, stored);
}

/** The dialogs of jobs that come from files, with all that they may have to say. */
function LazyHandout(props: AppProps) {
  const [Dialogs, setDialogs] = useState<ComponentType<HandoutDialogsProps> | null>(null);
  const { shop, sentences, scenarioFetchers } = props;
  useEffect(() => {
    Promise.all([import('./handout/HandoutDialogs.tsx'), sentences.backRoom()]).then(
      ([{ HandoutDialogs }]) => {
        setDialogs(() => HandoutDialogs);
        shop.readerFetched.value = true;
      },
      (error: unknown) => {
        shop.handout.value = null;
        shop.trouble.value = missingPart(error) ?? unexpected(error);
      },
    );
    return () => {
      shop.readerFetched.value = false;
    };
  }, [shop, sentences]);
  if (Dialogs === null) return null;
  const shippedHash = async (id: string): Promise<string | null> =>
    (await scenarioFetchers[id]?.())?.scenario.card.contentHash ?? null;
  return <Dialogs shop={shop} shippedHash={shippedHash} />;
}
