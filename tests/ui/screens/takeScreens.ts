/**
 * Pictures of every screen, to be looked at: `npx tsx tests/ui/screens/takeScreens.ts <folder> [--only board,log] [--dresses dark]
 * [--widths 360,1280] [--walks first-day,friday,back-room] [--address http://…]`. Works two jobs and writes one by pointer on the sources, with its own
 * server unless an address is given. A picture is named for its screen, its dress and its width.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { createServer } from 'vite';
import '../../../src/text/wholeEnglish.ts';
import { catalogue } from '../../../src/text/es/catalogue.ts';
import { addLanguage } from '../../../src/text/translate.ts';
import { launchOptions } from '../../e2e/support/launch.ts';
import { PointerHands } from '../../e2e/support/PointerHands.ts';
import { Camera, DRESSES, HOME, SIZES } from './Camera.ts';
import { walkFirstDay, walkReadyByFriday } from './walk.ts';
import { walkBackRoom } from './walkBackRoom.ts';

const PORT = 5302;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string', default: '' },
    dresses: { type: 'string', default: '' },
    widths: { type: 'string', default: '' },
    walks: { type: 'string', default: 'first-day,friday,back-room' },
    address: { type: 'string' },
  },
});
const listed = (text: string): readonly string[] => text.split(',').filter((each) => each !== '');
const asked = <T>(all: readonly T[], text: string, name: (one: T) => string): readonly T[] =>
  text === '' ? all : all.filter((one) => listed(text).includes(name(one)));

const folder = positionals[0] ?? 'test-results/screens';
const dresses = asked(DRESSES, values.dresses, ({ name }) => name);
const sizes = asked(SIZES, values.widths, ({ width }) => String(width));
const wanted = values.only === '' ? /./ : new RegExp(`^(${listed(values.only).join('|')})$`);

addLanguage('es-US', catalogue);
mkdirSync(folder, { recursive: true });
// The pages are not to start anew when a source is edited meanwhile.
const server =
  values.address === undefined
    ? await createServer({ server: { port: PORT, strictPort: true, hmr: false }, logLevel: 'error' })
    : null;
await server?.listen();
const browser = await chromium.launch(launchOptions());
try {
  for (const walk of listed(values.walks)) {
    const page = await browser.newPage({
      viewport: HOME,
      baseURL: values.address ?? `http://localhost:${PORT}/`,
      locale: 'en-US',
    });
    page.on('pageerror', (error) => console.error(String(error)));
    await page.emulateMedia(DRESSES[0]?.media ?? {});
    await page.goto('./?render=canvas');
    let taken = 0;
    const camera = new Camera(page, {
      dresses: dresses.map((dress) => ({ dress, sizes })),
      wanted,
      whole: true,
      keep: async (name, png) => {
        writeFileSync(`${folder}/${name}.png`, png);
        taken += 1;
      },
    });
    const hands = new PointerHands(page);
    if (walk === 'back-room') await walkBackRoom(page, camera);
    else await (walk === 'first-day' ? walkFirstDay : walkReadyByFriday)(page, hands, camera);
    console.log(`${walk}: ${taken} pictures in ${folder}`);
    await page.close();
  }
} finally {
  await browser.close();
  await server?.close();
}
