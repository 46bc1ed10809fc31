import type { Happening } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { happeningAt } from './happeningPlaces.ts';
import { windowKey } from './windowKey.ts';

const SHOWN_SECONDS = 1.2;
interface Shown {
  readonly of: Happening;
  readonly since: number;
}

/** What was heard or seen, as a word where it came from, for a little over a second. */
export function createCaptions(): Layer {
  let lastId: number | null = null;
  let shown: readonly Shown[] = [];
  const take = (happenings: readonly Happening[], seconds: number): void => {
    const newest = happenings.at(-1)?.id ?? 0;
    // The first frame plays nothing that happened before it; a smaller number means another world began.
    if (lastId !== null && newest >= lastId) {
      const fresh = happenings.filter(({ id }) => id > (lastId ?? 0));
      shown = [...shown, ...fresh.map((of) => ({ of, since: seconds }))];
    }
    lastId = newest;
    shown = shown.filter(({ since }) => seconds - since < SHOWN_SECONDS);
  };
  return {
    name: 'captions',
    key({ observation, view, seconds, window }: Frame) {
      take(observation.happenings, seconds);
      if (!view.captions || shown.length === 0) return '';
      return `${shown.map(({ of, since }) => `${of.id} ${since}`).join()} ${windowKey(window)}`;
    },
    paint(art, { observation, view, ends, window }) {
      if (!view.captions) return;
      const stacked = new Map<string, number>();
      for (const { of } of shown.slice(-6)) {
        const origin = happeningAt(of, observation, view.shelf, ends, window);
        const place = `${origin.x} ${origin.y}`;
        const level = stacked.get(place) ?? 0;
        if (level >= 3) continue;
        stacked.set(place, level + 1);
        const word = say(`happenings.${of.kind}`);
        const at = { x: origin.x, y: origin.y - level * 34 };
        const width = 34 + word.length * 9.5;
        art.box({ x: at.x - width / 2, y: at.y - 16, w: width, h: 32 }, 16, {
          fill: art.tokens.cream,
          line: 2,
        });
        art.print(word, at, { size: SIZE.heading, weight: '700', colour: art.tokens.live });
      }
    },
  };
}
