import { off, on, type StandardTest, smoke } from './parts.ts';

/** Standard tests with smoke. */
export const SMOKE_TESTS: readonly StandardTest[] = [
  {
    name: 'smoke into the unit through the air port',
    run: (bench) => {
      bench.do(off('air-hose'), { kind: 'fit', item: 'plug-a', site: 'air-hose-end' });
      bench.do(...on('smoke-hose', 'air-port'));
      return smoke(bench, 'air port', 240);
    },
  },
  {
    name: 'smoke into the canister hose',
    run: (bench) => {
      bench.do(off('canister-hose'), { kind: 'fit', item: 'smoke-hose', site: 'canister-hose-end' });
      return smoke(bench, 'canister hose', 240);
    },
  },
  {
    name: 'smoke into the air hose',
    run: (bench) => {
      bench.do(off('air-hose'), { kind: 'fit', item: 'smoke-hose', site: 'air-hose-end' });
      return smoke(bench, 'air hose', 20);
    },
  },
  {
    name: 'smoke into the engine hose',
    run: (bench) => {
      bench.do(off('engine-hose'), { kind: 'fit', item: 'smoke-hose', site: 'engine-hose-end' });
      return smoke(bench, 'engine hose', 30);
    },
  },
];
