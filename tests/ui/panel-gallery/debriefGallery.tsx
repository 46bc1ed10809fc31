import { signal } from '@preact/signals';
import { render } from 'preact';
import '../../../assets/fonts/fonts.css';
import '../../../src/ui/panels/styles.css';
import { WorldReplay } from '../../../src/app/replay/WorldReplay.ts';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import { InsideView } from '../../../src/ui/inside/InsideView.tsx';
import { Debrief } from '../../../src/ui/panels/Debrief.tsx';
import type { ReplayDesk } from '../../../src/ui/panels/ReplayDesk.ts';
import type { Shop } from '../../../src/ui/panels/Shop.ts';
import { cssProperties } from '../../../src/ui/theme/cssProperties.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';
import { galleryDesk } from './galleryDesk.ts';
import { galleryJob, inventedFacts, weighedFacts } from './galleryJob.ts';

/**
 * The debrief, or the inside alone, of a job that was sat: `?job=ready-by-friday.full&facts=weighed&theme=shop-floor`,
 * `?view=inside&second=40`. Facts are invented unless they are asked to be weighed.
 */
const query = new URLSearchParams(location.search);
const theme = (query.get('theme') ?? 'paper') as ThemeName;
for (const [property, value] of Object.entries(cssProperties(theme))) {
  document.documentElement.style.setProperty(property, value);
}
document.documentElement.dataset['theme'] = theme;
document.documentElement.style.colorScheme = theme === 'shop-floor' ? 'dark' : 'light';

const job = galleryJob(query.get('job') ?? 'tight-as-a-drum.full');
const { scenario, sitting } = job;
const replayed = new WorldReplay(scenario, sitting.record());

function Inside() {
  const moment = replayed.at(secondsToTicks(Number(query.get('second') ?? 30)));
  return (
    <div class="sheet">
      <InsideView inside={moment.inside} seen={moment.observation} />
    </div>
  );
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
const facts = query.get('facts') === 'weighed' ? weighedFacts(job) : inventedFacts(job);
const shop = { toBoard: () => {} } as unknown as Shop;

const root = document.getElementById('app');
if (root !== null)
  render(
    query.get('view') === 'inside' ? (
      <Inside />
    ) : (
      <Debrief desk={desk} shop={shop} facts={facts} replay={replay} />
    ),
    root,
  );
document.title = 'ready';
