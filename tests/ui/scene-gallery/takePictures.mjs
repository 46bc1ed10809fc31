/**
 * Takes pictures of the gallery: `node tests/ui/scene-gallery/takePictures.mjs <folder> [picture …] [--sizes 850x610,…] [--canvas] [--time]`.
 * Starts its own server on port 5301 (or `PORT`) and stops it. `CHROMIUM` names the browser, else /usr/bin/chromium.
 */
import { mkdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { createServer } from 'vite';

const port = Number(process.env.PORT ?? 5301);
const args = process.argv.slice(2);
const sizesAt = args.indexOf('--sizes');
const sizes = (sizesAt < 0 ? '893x640,1418x928,684x624' : args.splice(sizesAt, 2)[1]).split(',');
const canvas = (args.includes('--canvas') ? '&canvas=1' : '') + (args.includes('--time') ? '&time=1' : '');
const [folder = 'test-results/gallery', ...wanted] = args.filter((each) => !each.startsWith('--'));
const all = (
  'start vacuum parted ohms tone crowd probes off swapped plugged holding carrying dark contrast ' +
  'air trip trip-shut trip-dark smoke-start smoke smoke-engine smoke-dark lamps lamps-contrast supply all eye marked careless wiggle-dark'
).split(' ');
mkdirSync(folder, { recursive: true });

const server = await createServer({
  configFile: false,
  server: { port, strictPort: true },
  logLevel: 'error',
});
await server.listen();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  chromiumSandbox: false,
  args: ['--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
try {
  for (const size of sizes) {
    const [width, height] = size.split('x').map(Number);
    const page = await browser.newPage({ viewport: { width, height } });
    page.on('pageerror', (error) => console.error(String(error)));
    page.on('console', (message) => message.type() === 'error' && console.error(message.text()));
    for (const picture of wanted.length > 0 ? wanted : all) {
      const address = `http://localhost:${port}/tests/ui/scene-gallery/index.html?picture=${picture}&w=${width}&h=${height}${canvas}`;
      await page.goto(address);
      await page.waitForFunction(() => document.title.startsWith('ready'), null, { timeout: 60_000 });
      console.log(size, picture, await page.title());
      await page.screenshot({ path: `${folder}/${picture}-${size}.png` });
    }
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
}
