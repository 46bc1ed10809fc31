import { signal } from '@preact/signals';
import { render } from 'preact';
import '../../../assets/fonts/fonts.css';
import '../../../src/ui/panels/base.css';
import '../../../src/ui/panels/board.css';
import '../../../src/ui/panels/bench.css';
import '../../../src/ui/panels/instruments.css';
import '../../../src/ui/panels/dialogs.css';
import '../../../src/ui/panels/debrief.css';
import '../../../src/ui/panels/suspects.css';
import { WorldReplay } from '../../../src/app/replay/WorldReplay.ts';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import type { DebriefFacts } from '../../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../../src/training/score/debrief.ts';
import { InsideView } from '../../../src/ui/inside/InsideView.tsx';
import { Debrief } from '../../../src/ui/panels/Debrief.tsx';
import type { ReplayDesk } from '../../../src/ui/panels/ReplayDesk.ts';
import type { Shop } from '../../../src/ui/panels/Shop.ts';
import { cssProperties } from '../../../src/ui/theme/cssProperties.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';
import { FABRICATED_PAR, fabricatedEvidence } from './fabricatedFacts.ts';
import { galleryDesk } from './galleryDesk.ts';
import { galleryJob } from './galleryJob.ts';

/** The debrief, or one part of it, of a job that was sat: `?view=inside&second=40&theme=paper`. */
const query = new URLSearchParams(location.search);
const theme = (query.get('theme') ?? 'paper') as ThemeName;
for (const [property, value] of Object.entries(cssProperties(theme))) {
  document.documentElement.style.setProperty(property, value);
}
document.documentElement.dataset['theme'] = theme;
document.documentElement.style.colorScheme = theme === 'shop-floor' ? 'dark' : 'light';

const { scenario, sitting } = galleryJob();
const replayed = new WorldReplay(scenario, sitting.record());

function Inside() {
  const moment = replayed.at(secondsToTicks(Number(query.get('second') ?? 30)));
  return (
    <div class="sheet">
      <InsideView inside={moment.inside} seen={moment.observation} />
    </div>
  );
}

function facts(): DebriefFacts {
  const { verdict, log } = sitting.view();
  const made = debrief(
    scenario,
    sitting.record(),
    fabricatedEvidence(log, verdict?.tick ?? 0),
    FABRICATED_PAR,
  );
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
}

const replay: ReplayDesk = {
  endTick: sitting.tick,
  at: (tick) => Promise.resolve(replayed.at(tick)),
};
const { log, observation } = sitting.view();
const desk = {
  ...galleryDesk(observation, 'repair', true),
  log: signal(log),
};
const shop = { toBoard: () => {} } as unknown as Shop;

const root = document.getElementById('app');
if (root !== null)
  render(
    query.get('view') === 'inside' ? (
      <Inside />
    ) : (
      <Debrief desk={desk} shop={shop} facts={facts()} replay={replay} />
    ),
    root,
  );
document.title = 'ready';
