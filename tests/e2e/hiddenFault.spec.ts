import { readFileSync } from 'node:fs';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { keptInBrowser } from './support/keptInBrowser.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

// A law of its own says the same of everything that the page is built from, for every job. Here it is looked for where a learner would.

const JOBS = [
  { id: 'all-hoses-new', title: /Every hose is new/ },
  { id: 'silent-on-command', title: /Silent on command/ },
  { id: 'ready-by-friday', title: /Ready by Friday/ },
  // Its fault is drawn when it is taken.
  { id: 'the-new-steps', title: /The new steps/ },
] as const;

/** What would give a job away: the ids of its faults, and the sentences of the author's remark. */
function answersOf(id: string): { readonly faults: readonly string[]; readonly remark: readonly string[] } {
  const text = readFileSync(new URL(`../../scenarios/${id}.yaml`, import.meta.url), 'utf8');
  const loaded = loadScenario(text, `${id}.yaml`);
  if (!loaded.ok) throw new Error(`${id} cannot be read`);
  const { variants = [], ...own } = loaded.value;
  const faults = [...own.faults, ...variants.flatMap((variant) => variant.faults)];
  const remark = [own.remark, ...variants.flatMap((variant) => variant.remark ?? [])].join(' ');
  return {
    faults: faults.map(({ fault }) => fault),
    remark: remark.split(/(?<=\.)\s+/).filter((sentence) => sentence.length > 20),
  };
}

for (const { id, title } of JOBS) {
  test(`${id}: the fault is nowhere a learner could look`, async ({ page }) => {
    const fetched: string[] = [];
    const printed: string[] = [];
    page.on('console', (message) => printed.push(message.text()));
    page.on('response', async (response) => {
      if (/\.(js|json|html)$/.test(new URL(response.url()).pathname)) {
        fetched.push(await response.text().catch(() => ''));
      }
    });
    await page.goto('./?render=canvas');
    await page.getByRole('button', { name: title }).click();
    const hands = new PointerHands(page);
    await takeTheJob(page, hands);
    await hands.choose('Key', 'On');
    await hands.open('Coach');
    await hands.press('How to do it');
    await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible();
    await hands.log();
    // The record is written a little after what was done.
    await expect.poll(() => keptInBrowser(page)).toContain('"set-key"');
    const { faults, remark } = answersOf(id);
    expect(faults.length).toBeGreaterThan(0);
    const places = {
      page: await page.content(),
      address: page.url(),
      storage: await keptInBrowser(page),
      console: printed.join('\n'),
    };
    for (const [where, text] of Object.entries(places)) {
      for (const answer of [...faults, ...remark]) expect(text, where).not.toContain(answer);
    }
    // The catalogue of all faults is in the program. Which of them it is, and what the author says of it, is not.
    const program = fetched.join('\n');
    expect(program).toContain(faults[0] ?? '');
    for (const sentence of remark) expect(program).not.toContain(sentence);
  });
}
