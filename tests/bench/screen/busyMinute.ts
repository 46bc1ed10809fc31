import type { BenchPage } from './BenchPage.ts';

/** So often a hand's movement is told to the page, milliseconds. */
const MOVE_MS = 16;

/**
 * Works the bench with a mouse without a pause, for at least so long: strokes of the pump, leads carried from place to place, the
 * meter turned, readings logged. The evidence is weighed meanwhile, since every log entry gives it work.
 */
export async function busyMinute(bench: BenchPage, seconds: number): Promise<void> {
  const until = Date.now() + seconds * 1000;
  const places = ['Battery positive', 'Battery negative', 'Chassis'];
  for (let round = 0; Date.now() < until; round++) {
    await stroke(bench);
    await carry(bench, 'Red lead', places[round % places.length] ?? '');
    await turnMeter(bench, round % 2 === 0 ? 'DC volts' : 'Ohms');
    await stroke(bench);
    await carry(bench, 'Black lead', places[(round + 1) % places.length] ?? '');
    await bench.button('Log this reading').click();
    if (round % 3 === 2) await bench.button('Release lever').click();
  }
}

export async function stroke(bench: BenchPage): Promise<void> {
  const handle = await bench.middle(bench.page.getByRole('slider', { name: 'Pump handle' }));
  await bench.page.mouse.move(handle.x, handle.y);
  await bench.page.mouse.down();
  await glide(bench, handle, { x: handle.x + 180, y: handle.y }, 500);
  await glide(bench, { x: handle.x + 180, y: handle.y }, { x: handle.x - 30, y: handle.y }, 400);
  await bench.page.mouse.up();
}

export async function carry(bench: BenchPage, thing: string, place: string): Promise<void> {
  const from = await bench.middle(bench.button(thing));
  const to = await bench.middle(bench.button(place));
  await bench.page.mouse.move(from.x, from.y);
  await bench.page.mouse.down();
  await glide(bench, from, to, 700);
  await bench.page.mouse.up();
}

export async function turnMeter(bench: BenchPage, to: string): Promise<void> {
  await bench.page
    .getByRole('radiogroup', { name: 'Meter selector', exact: true })
    .getByRole('radio', { name: to, exact: true })
    .click();
}

interface At {
  readonly x: number;
  readonly y: number;
}

async function glide(bench: BenchPage, from: At, to: At, ms: number): Promise<void> {
  const begun = Date.now();
  for (;;) {
    const share = Math.min(1, (Date.now() - begun) / ms);
    await bench.page.mouse.move(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    if (share === 1) return;
    await bench.page.waitForTimeout(MOVE_MS);
  }
}
