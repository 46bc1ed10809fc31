/**
 * Who may import whom. This table is the authority; DEVELOPERS.md tells it in words.
 * `folders` may be imported for values and types, `types` with `import type` only. A folder may always import itself.
 * `sim/*` stands for every folder below sim. `bench words` are the files of sim/devices that hold nothing but the
 * names of places and items, and what of them a rig has; whoever may see the world may see them.
 */
export interface ImportRule {
  readonly folders: readonly string[];
  readonly types?: readonly string[];
  readonly packages?: readonly string[];
}

export const BENCH_WORDS = [
  'src/sim/devices/places.ts',
  'src/sim/devices/items.ts',
  'src/sim/devices/BenchSurface.ts',
];

const WORLD = ['base', 'sim/world', 'bench words'];
const SCREEN = [...WORLD, 'training/*', 'text', 'ui/interaction', 'ui/theme', 'assets'];
const SCREEN_PACKAGES = ['preact', '@preact/signals', 'uplot'];

export const IMPORT_TABLE: Readonly<Record<string, ImportRule>> = {
  base: { folders: [], packages: ['@noble/hashes'] },

  'sim/network': { folders: ['base'] },
  'sim/components': { folders: ['base', 'sim/network'] },
  'sim/devices': { folders: ['base', 'sim/components'], types: ['sim/network'], packages: ['xstate'] },
  'sim/faults': { folders: ['base', 'sim/components', 'sim/devices'] },
  'sim/rigs': { folders: ['base', 'sim/network', 'sim/components', 'sim/devices', 'sim/faults'] },
  'sim/world': { folders: ['base', 'sim/*'] },

  'training/scenario': {
    folders: ['base', 'sim/rigs', 'sim/faults', 'sim/world', 'bench words'],
    packages: ['zod', 'yaml'],
  },
  'training/draft': {
    folders: ['base', 'sim/rigs', 'sim/faults', 'training/scenario', 'bench words'],
    packages: ['yaml'],
  },
  'training/sitting': { folders: [...WORLD, 'training/scenario'], packages: ['xstate', 'zod'] },
  'training/evidence': {
    folders: [...WORLD, 'sim/rigs', 'sim/faults', 'training/scenario', 'training/sitting'],
  },
  'training/coach': {
    folders: [...WORLD, 'sim/rigs', 'training/scenario', 'training/sitting', 'training/evidence'],
  },
  'training/score': {
    folders: ['base', 'sim/*', 'training/scenario', 'training/sitting', 'training/evidence'],
  },
  // Learners are scored, and the register keeps their sittings: in that order, so that no circle closes.
  'training/learners': {
    folders: [
      ...WORLD,
      'sim/rigs',
      'training/scenario',
      'training/sitting',
      'training/evidence',
      'training/score',
    ],
  },
  'training/proof': {
    folders: [
      'base',
      'sim/*',
      'training/scenario',
      'training/sitting',
      'training/evidence',
      'training/score',
      'training/learners',
    ],
  },
  'training/handout': { folders: ['base', 'training/scenario'], packages: ['zod'] },
  'training/register': { folders: [...WORLD, 'training/*'] },

  text: { folders: ['base'], types: ['sim/*', 'training/*'], packages: ['i18next'] },

  'ui/theme': { folders: ['base'] },
  'ui/interaction': { folders: WORLD, packages: ['xstate'] },
  'ui/scene': { folders: [...WORLD, 'text', 'ui/interaction', 'ui/theme', 'assets'], packages: ['pixi.js'] },
  'ui/inside': { folders: [...WORLD, 'text', 'ui/theme'], packages: ['preact'] },
  'ui/mirror': { folders: SCREEN, packages: SCREEN_PACKAGES },
  'ui/panels': { folders: [...SCREEN, 'ui/inside'], packages: SCREEN_PACKAGES },
  'ui/backroom': { folders: [...SCREEN, 'sim/faults', 'ui/panels', 'ui/inside'], packages: SCREEN_PACKAGES },
  // A stroke is heard by the same ear for its sound and for the caption of that sound.
  'ui/sound': { folders: [...WORLD, 'ui/interaction', 'assets'], packages: ['howler'] },

  'platform/browser': { folders: ['base'], types: ['training/*'], packages: ['idb'] },
  'platform/node': { folders: ['base'], types: ['training/*'], packages: ['node:*', 'vite'] },

  app: {
    folders: ['base', 'sim/*', 'training/*', 'text', 'ui/*', 'platform/browser', 'assets', 'scenarios'],
    packages: ['*', 'virtual:*'],
  },
  cli: { folders: ['base', 'sim/*', 'training/*', 'text', 'platform/node'], packages: ['node:*'] },

  'vite.config': {
    // Of the tests, what says in which order they are begun.
    folders: ['text', 'training/scenario', 'training/evidence', 'platform/node', 'ui/theme', 'tests'],
    packages: ['*', 'node:*'],
  },
};
