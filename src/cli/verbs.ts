import { err, ok } from '../base/Result.ts';
import { ITEMS } from '../sim/devices/items.ts';
import {
  AIR_SITES,
  CAVITIES,
  CLAMP_SETTINGS,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
} from '../sim/devices/places.ts';
import { LEAST_WAIT_SECONDS, MAX_WAIT_SECONDS } from '../training/sitting/actionSchema.ts';
import { BOARD_MARKS, COACH_DEPTHS } from '../training/sitting/SittingAction.ts';
import { TOOL_VERBS } from './toolVerbs.ts';
import {
  act,
  bare,
  choice,
  fixed,
  numberIn,
  ON_OFF,
  oneOf,
  type Parsed,
  shape,
  type Verb,
  wholeIn,
} from './verbParts.ts';

function strokes(words: readonly string[]): Parsed {
  const usage = 'stroke full x3';
  const [depthWord, timesWord = 'x1', ...more] = words;
  if (depthWord === undefined || more.length > 0 || !timesWord.startsWith('x')) return shape('stroke', usage);
  return numberIn(0, 1, depthWord === 'full' ? '1' : depthWord, (depth) =>
    wholeIn(1, 50, timesWord.slice(1), (times) => ok({ kind: 'strokes', depth, times })),
  );
}

function wait(words: readonly string[]): Parsed {
  const [amount, unit = 's', ...more] = words;
  if (amount === 'steady' && words.length === 1) return act({ kind: 'wait-steady' }, 0);
  if (amount === undefined || more.length > 0) return shape('wait', 'wait 10 s');
  return oneOf(['s', 'min'], unit, (name) =>
    numberIn(LEAST_WAIT_SECONDS, MAX_WAIT_SECONDS / (name === 'min' ? 60 : 1), amount, (value) =>
      act({ kind: 'wait', seconds: name === 'min' ? value * 60 : value }, 0),
    ),
  );
}

function verdict(words: readonly string[]): Parsed {
  const [item, ...more] = words;
  const mode = more[0] === undefined || more[0] === 'cites' ? null : more[0];
  const [cites, ...entries] = mode === null ? more : more.slice(1);
  if (
    item === undefined ||
    (cites !== undefined && cites !== 'cites') ||
    (mode !== null && !/^[a-z0-9-]{1,40}$/.test(mode))
  )
    return shape('verdict', 'verdict unit vacuum-switch cites 3 4 5');
  return cited(entries, (ids) =>
    oneOf([...ITEMS, 'nothing-wrong'] as const, item, (named) =>
      act({ kind: 'give-verdict', item: named, mode, cites: ids }, 0),
    ),
  );
}

function mark(words: readonly string[]): Parsed {
  const usage = 'mark fuse cleared cites 2';
  const [item, as, cites, ...entries] = words;
  if (item === undefined || as === undefined || (cites !== undefined && cites !== 'cites'))
    return shape('mark', usage);
  return cited(entries, (ids) =>
    oneOf([...ITEMS, 'nothing-wrong'] as const, item, (named) =>
      oneOf(BOARD_MARKS, as, (of) => act({ kind: 'mark-item', item: named, mark: of, cites: ids }, 0)),
    ),
  );
}

/** The numbers of log entries at the end of a line. */
function cited(entries: readonly string[], then: (ids: readonly number[]) => Parsed): Parsed {
  const ids = entries.map((word) => (/^\d{1,6}$/.test(word) ? Number(word) : Number.NaN));
  const bad = ids.findIndex((id) => !(id >= 1));
  if (bad >= 0) return err({ code: 'bad-number', found: entries[bad] ?? '', allowed: '1, 2, 3 …' });
  return then(ids);
}

function renew(words: readonly string[]): Parsed {
  const [item, ...more] = words;
  if (item === undefined || more.length > 0) return shape('renew', 'renew unit');
  if (item === 'jumper-fuse') return act({ kind: 'renew-jumper-fuse' });
  return oneOf(ITEMS, item, (named) => act({ kind: 'renew', item: named }));
}

function fit(words: readonly string[]): Parsed {
  const [item, on, site, ...more] = words;
  if (item === 'fuse' && on === undefined) return act({ kind: 'fit-fuse' });
  if (item === undefined || on !== 'on' || site === undefined || more.length > 0)
    return shape('fit', 'fit cap-a on air-port');
  return oneOf(FITTINGS, item, (fitting) =>
    oneOf(AIR_SITES, site, (place) => act({ kind: 'fit', item: fitting, site: place })),
  );
}

function pin(words: readonly string[]): Parsed {
  const [way, number, ...more] = words;
  if (way === undefined || number === undefined || more.length > 0) return shape('pin', 'pin in 3');
  return oneOf(['in', 'out'], way, (direction) =>
    wholeIn(1, 3, number, (value) => {
      const cavity = CAVITIES[value - 1] ?? 1;
      return act(direction === 'in' ? { kind: 'insert-pin', cavity } : { kind: 'remove-pin', cavity });
    }),
  );
}

/** The words of an action file, by the first word of the line. */
export const VERBS: Readonly<Record<string, Verb>> = {
  accept: bare('accept', { kind: 'accept-job' }, 0),
  wait,
  key: choice('key on', KEY_POSITIONS, (position) => ({ kind: 'set-key', position })),
  lead: fixed('lead', 'lead meter-red to cavity-3-back', 3, ([end = '', to, point = '']) =>
    to !== 'to'
      ? shape('lead', 'lead meter-red to cavity-3-back')
      : oneOf(LEAD_ENDS, end, (tip) =>
          oneOf(LEAD_POINTS, point, (place) => act({ kind: 'place-lead', end: tip, point: place })),
        ),
  ),
  lift: choice('lift meter-red', LEAD_ENDS, (end) => ({ kind: 'lift-lead', end })),
  pin,
  part: choice('part plug', ['plug'], () => ({ kind: 'part-plug' })),
  mate: choice('mate plug', ['plug'], () => ({ kind: 'mate-plug' })),
  pull: choice('pull fuse', ['fuse'], () => ({ kind: 'pull-fuse' })),
  jumper: choice('jumper on', ON_OFF, (state) => ({ kind: 'switch-jumper', on: state === 'on' })),
  fit,
  take: fixed('take', 'take canister-hose off', 2, ([item = '', off]) =>
    off !== 'off'
      ? shape('take', 'take canister-hose off')
      : oneOf(FITTINGS, item, (fitting) => act({ kind: 'take-off', item: fitting })),
  ),
  clamp: fixed('clamp', 'clamp canister-port hand-tight', 2, ([port = '', setting = '']) =>
    oneOf(UNIT_PORTS, port, (place) =>
      oneOf(CLAMP_SETTINGS, setting, (name) => act({ kind: 'clamp', port: place, setting: name })),
    ),
  ),
  handle: fixed('handle', 'handle 0.5', 1, ([word = '']) =>
    numberIn(0, 1, word, (position) => act({ kind: 'pump-handle', position })),
  ),
  stroke: strokes,
  release: choice('release open', ['open', 'shut'], (state) => ({ kind: 'release', open: state === 'open' })),
  solenoid: choice('solenoid on', SOLENOID_COMMANDS, (command) => ({ kind: 'command-solenoid', command })),
  ...TOOL_VERBS,
  log: (words) =>
    words.length > 1 ? shape('log', 'log "Sense at rest"') : ok({ kind: 'log', note: words[0] ?? '' }),
  note: fixed('note', 'note 3 "Lead was loose"', 2, ([number = '', text = '']) =>
    wholeIn(1, 999_999, number, (entry) => act({ kind: 'annotate', entry, text }, 0)),
  ),
  skip: bare('skip', { kind: 'skip-step' }, 0),
  verdict,
  mark,
  coach: choice('coach question', COACH_DEPTHS, (depth) => ({ kind: 'ask-coach', depth })),
  renew,
  close: bare('close', { kind: 'close-job' }, 0),
};
