import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Page } from '@playwright/test';
import { grade } from './support/grade.ts';
import { PointerHands } from './support/PointerHands.ts';
import { decideReadyByFriday, expectGoodDebrief } from './support/readyByFriday.ts';
import { expect, test } from './support/test.ts';

let folder = '';
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'known-good-'));
});
test.afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const file = (name: string, text: string | Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const saved = async (download: Promise<Download>): Promise<string> => {
  const done = await download;
  const path = join(folder, done.suggestedFilename());
  await done.saveAs(path);
  return path;
};
const text = (page: Page) => page.getByLabel('Text of the scenario file');
const told = (page: Page) => page.locator('#draft-problems');
const dialog = (page: Page) => page.locator('dialog[open]');

async function newJob(page: Page): Promise<void> {
  await page.goto('./?render=canvas#/back-room');
  await page.getByRole('button', { name: 'Write a new job' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Without a title' })).toBeVisible();
  await textBeside(page);
}

/** On a screen of this width the text lies behind the form until it is asked for. */
async function textBeside(page: Page): Promise<void> {
  await page.getByRole('checkbox', { name: 'Text beside the form' }).check();
}

test('an instructor writes a job in the form, has it proved, seals it; a learner sits it; the record is graded', async ({
  page,
  browser,
}) => {
  test.setTimeout(480_000);
  await page.goto('./?render=canvas');
  await page.getByRole('link', { name: 'Back room: write a job' }).click();
  await page.getByRole('button', { name: 'Write a new job' }).click();
  await expect(told(page)).toHaveText(/things still to write or mend/);

  // The form, from the top.
  await page.getByLabel('Title', { exact: true }).fill('Two pumps and a lamp');
  await expect(page.getByLabel('Name of the file')).toHaveValue('two-pumps-and-a-lamp');
  await page.getByLabel('Summary').fill('The pump was renewed and the code came back.');
  await page.getByLabel('How it is sat').selectOption('assessment');
  await page.getByLabel('Level').selectOption('2');
  await page
    .getByRole('group', { name: 'Aims' })
    .getByLabel('Entry 1')
    .fill('Judge the unit before its wiring.');

  // A fault by its item, and at once what the tests would read.
  await page.getByRole('button', { name: 'Add a fault' }).click();
  await dialog(page).getByRole('button', { name: 'The sense wire is open.' }).click();
  await expect(page.getByRole('listitem').filter({ hasText: 'The sense wire is open.' })).toBeVisible();
  const readings = page.getByRole('region', { name: 'What the tests would read' });
  await expect(readings).toContainText(/\d+ tests? gives? it away/, { timeout: 60_000 });

  await page.getByLabel('Number of the order').fill('HP-3001');
  await page.getByLabel('Complaint').fill('The lamp is on again. Nobody measured anything.');
  await page.getByRole('button', { name: 'Add to: History' }).click();
  await page.getByRole('group', { name: 'History' }).getByLabel('Entry 1').fill('Pump renewed, untested.');
  await page.getByLabel('Drives with the faults in').fill('8');
  await page.getByLabel('Remark').fill('The sense wire was open between controller and plug.');
  await expect(told(page)).toHaveText('The file is in order.');

  // The proof finds what the work order lacks, and leads there.
  await page.getByRole('tab', { name: 'Proof' }).click();
  const proof = page.getByRole('tabpanel', { name: 'Proof' });
  await proof.getByRole('button', { name: 'Go to the codes' }).click({ timeout: 90_000 });
  await expect(page.getByRole('group', { name: 'Codes on file' })).toBeFocused();
  await proof.getByRole('button', { name: 'Write P0455 stored into the order' }).click();
  await expect(text(page)).toHaveValue(/codes:\n {4}- \{ code: P0455, status: stored \}/);
  await expect(page.getByLabel('Code', { exact: true })).toHaveValue('P0455');
  await expect(proof.getByRole('heading', { level: 2 })).toHaveText(/fit to give out/i, { timeout: 240_000 });

  const own = await (async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the file' }).click();
    return saved(download);
  })();
  expect(own).toMatch(/two-pumps-and-a-lamp\.yaml$/);
  expect(readFileSync(own, 'utf8')).toContain('- fault: sense-open');

  // Sealed, under a code that is drawn.
  await page.getByRole('button', { name: 'Hand out' }).click();
  await expect(dialog(page)).toContainText('fit to give out');
  await expect(dialog(page).getByRole('radio', { name: 'A sealed file' })).toBeChecked();
  await dialog(page).getByRole('button', { name: 'Draw a code' }).click();
  const code = await dialog(page).getByLabel('Class code').inputValue();
  const sealing = page.waitForEvent('download');
  await dialog(page).getByRole('button', { name: 'Save for handing out' }).click();
  const sealed = await saved(sealing);
  await expect(dialog(page)).toContainText(`Note the class code: ${code}`);
  expect(sealed).toMatch(/two-pumps-and-a-lamp\.job\.json$/);
  for (const secret of ['sense-open', 'sense wire was open', code]) {
    expect(readFileSync(sealed, 'utf8')).not.toContain(secret);
  }

  // On a learner's device.
  const device = await browser.newContext({ viewport: { width: 1280, height: 800 }, locale: 'en-US' });
  const learner = await device.newPage();
  await learner.goto(`${new URL('./?render=canvas', page.url()).href}`);
  await learner.setInputFiles('input[type=file]', sealed);
  await dialog(learner).getByLabel('Class code').fill(code.toLowerCase());
  await learner.keyboard.press('Enter');
  await dialog(learner).getByRole('button', { name: 'Open the job' }).click();
  await decideReadyByFriday(learner, new PointerHands(learner));
  await expectGoodDebrief(learner);
  const exporting = learner.waitForEvent('download');
  await learner.getByRole('button', { name: 'Export the record' }).first().click();
  const record = await saved(exporting);
  await device.close();

  const held = await grade(record, '--scenario', own, '--class-code', code);
  expect(held.text).toMatch(/the claimed score of [\d.]+ holds/);
  expect(held.code).toBe(0);
});

test('form and text are in step, every change can be undone, and a closed page loses nothing', async ({
  page,
}) => {
  await newJob(page);
  // The sheet of the back room comes behind the page's own: else its keys stood as those of the bench.
  await expect(page.locator('.back-tabs').first()).toHaveCSS('display', 'flex');
  const title = page.getByLabel('Title', { exact: true });
  await title.fill('First');
  await expect(text(page)).toHaveValue(/^id: first\ntitle: First$/m);
  // By hand, with a comment that a form knows nothing of.
  const typed = (await text(page).inputValue()).replace('title: First', 'title: Second # mine');
  await text(page).fill(typed);
  await expect(title).toHaveValue('Second');
  await page.getByLabel('Summary').fill('In short.');
  await expect(text(page)).toHaveValue(/title: Second # mine\nsummary: In short\./);

  await page.keyboard.press('Control+z');
  await expect(page.getByLabel('Summary')).toHaveValue('');
  await expect(page.getByText('Undone: change of Summary')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(title).toHaveValue('First');
  await page.keyboard.press('Control+y');
  await page.keyboard.press('Control+Shift+Z');
  await expect(page.getByLabel('Summary')).toHaveValue('In short.');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByLabel('Summary')).toHaveValue('');

  // A part that is broken in the text leaves the others to the form.
  await text(page).fill((await text(page).inputValue()).replace('summary: ""', 'summary: "half'));
  await expect(page.getByText('The text cannot be read as it stands.')).toBeVisible();
  await expect(page.locator('.bench-pane-line')).toContainText('The text cannot be read just now');
  await title.fill('Third');
  await expect(text(page)).toHaveValue(/title: Third # mine\nsummary: "half/);

  // The very letter before the page goes.
  await text(page).press('Control+End');
  await page.keyboard.type('# last');
  await page.reload();
  await expect(text(page)).toHaveValue(/# last$/);
  await page.getByRole('button', { name: 'All drafts' }).click();
  await page.getByRole('button', { name: 'Copy Third' }).click();
  await expect(page.getByRole('link', { name: 'Open Third (copy)' })).toBeVisible();
  await page.getByRole('button', { name: 'Remove Third', exact: true }).click();
  await dialog(page).getByRole('button', { name: 'Remove it' }).click();
  await expect(page.getByRole('link', { name: 'Open Third', exact: true })).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Open Third (copy)' })).toBeVisible();
});

test('files are opened by button and by dropping, broken ones too; what is no scenario file is told why', async ({
  page,
}) => {
  await page.goto('./?render=canvas#/back-room');
  const choose = (path: string) => page.setInputFiles('.shelf input[type=file]', path);
  await choose(file('film.yaml', Buffer.alloc(300 * 1024, 'a')));
  await expect(page.getByRole('alert')).toContainText(
    '"film.yaml" has 300 KiB. A scenario file has 256 KiB at most',
  );
  await choose(file('old.yaml', Buffer.from('title: caf\u00e9\n', 'latin1')));
  await expect(page.getByRole('alert')).toContainText('"old.yaml" is not text in UTF-8');

  // Dropped, and broken in two places: it opens as it is, and leads to each place.
  const shipped = readFileSync(new URL('../../scenarios/ready-by-friday.yaml', import.meta.url), 'utf8');
  const broken = shipped.replace('level: 2', 'level: 7').replace('fault: sense-open', 'fault: sense-opened');
  const transfer = await page.evaluateHandle((content) => {
    const carried = new DataTransfer();
    carried.items.add(new File([content], 'friday.yaml'));
    return carried;
  }, broken);
  await page.dispatchEvent('main', 'dragover', { dataTransfer: transfer });
  await page.dispatchEvent('main', 'drop', { dataTransfer: transfer });
  await expect(told(page)).toHaveText('2 things still to write or mend');
  await expect(text(page)).toHaveValue(broken);
  await textBeside(page);
  await told(page).click();
  const list = page.locator('.problem-fold');
  await list.getByRole('button', { name: 'To the form' }).first().click();
  await expect(page.getByLabel('Level')).toBeFocused();
  await page.getByLabel('Level').selectOption('2');
  await expect(told(page)).toHaveText('1 thing still to write or mend');
  const line = shipped.split('\n').findIndex((each) => each.includes('sense-open')) + 1;
  await list.getByRole('button', { name: `Line ${line}` }).click();
  await expect(text(page)).toBeFocused();
  const at = await text(page).evaluate(
    (area: HTMLTextAreaElement) => area.value.slice(0, area.selectionStart).split('\n').length,
  );
  expect(at).toBe(line);
  // Of the fault that is unknown the card says so, and lets it be taken out.
  await page.getByRole('button', { name: /^Remove this fault/ }).click();
  await expect(told(page)).toHaveText('The file is in order.');
  await expect(text(page)).toHaveValue(/^# Practice: a gross leak code/);

  // And sat as a learner would.
  await page.getByRole('button', { name: 'Hand out' }).click();
  await dialog(page).getByRole('button', { name: 'Try it as a learner' }).click();
  await expect(page.getByRole('button', { name: 'Take the job' }).first()).toBeVisible({ timeout: 30_000 });
  await page.goBack();
  await expect(told(page)).toHaveText('The file is in order.', { timeout: 30_000 });
});

test('a job in two languages, with steps, a range and another truth, is written in the form alone and is in order', async ({
  page,
}) => {
  await newJob(page);
  await page.getByLabel('Write the texts in English and Spanish').check();
  const field = (name: string, language: string) =>
    page.getByRole('group', { name, exact: true }).getByLabel(language, { exact: true });
  await field('Title', 'English').fill('The lamp');
  await field('Title', 'Spanish').fill('La luz');
  await field('Summary', 'English').fill('Short.');
  await page.getByRole('group', { name: 'Aims' }).getByLabel('Entry 1, English').fill('Look first.');
  await page.getByLabel('Number of the order').fill('HP-7');
  await field('Complaint', 'English').fill('It is on.');
  await field('Remark', 'Spanish').fill('Era el cable.');
  await field('Remark', 'English').fill('It was the wire.');
  await expect(text(page)).toHaveValue(/title:\n {2}en: The lamp\n {2}es: La luz\n/);
  await page.getByRole('button', { name: 'Add a fault' }).first().click();
  await dialog(page).getByRole('button', { name: 'The sense wire has too much resistance.' }).click();
  await page.getByLabel('Each seat gets its own degree').check();
  await page.getByRole('slider', { name: /How bad, from/ }).fill('0.6');
  await expect(text(page)).toHaveValue(/severity: 0\.6\n {4}severity-to: 1\n/);

  await page.getByText('Variants: the same job with other faults').click();
  await page.getByRole('button', { name: 'Add to: Variants' }).click();
  await page.getByRole('button', { name: 'Add a fault' }).nth(1).click();
  await dialog(page).getByRole('button', { name: 'The sense wire is open.' }).click();
  await expect(text(page)).toHaveValue(/variants:\n {2}- faults:\n {6}- fault: sense-open\n/);
  await expect(told(page)).toHaveText('The file is in order.');

  // Led step by step there is one truth only: the form says so, and what to do.
  await page.getByLabel('How it is sat').selectOption('walkthrough');
  await expect(told(page)).toHaveText(/things still to write or mend/);
  await page.getByRole('button', { name: 'Remove from Variants: number 1' }).click();
  await page.getByLabel('Each seat gets its own degree').uncheck();
  await page.getByRole('button', { name: 'Add to: Steps' }).click();
  await page.getByLabel('Name of the step').fill('key-on');
  await field('Why it is done', 'English').fill('Power first.');
  await field('How it is done', 'English').fill('Turn the key.');
  const done = page.getByLabel('When it is done');
  await done.fill('key: on\npl');
  await expect(page.getByText('This cannot be read yet')).toBeVisible();
  await done.fill('key: on\nplug: parted');
  await expect(text(page)).toHaveValue(/done: \{ key: on, plug: parted \}/);
  await expect(told(page)).toHaveText('The file is in order.');
});

test('the bench stands beside the draft with its faults in, and follows them with what the hands did', async ({
  page,
}) => {
  await newJob(page);
  const bench = page.getByRole('tabpanel', { name: 'Bench' });
  await expect(bench.locator('canvas')).toBeVisible({ timeout: 60_000 });
  // Words that are still to be written do not keep the truck from standing there.
  await expect(told(page)).toHaveText(/things still to write/);
  await bench.locator('[data-spot="key-position:on"]').press('Space');
  await bench.locator('[data-spot="meter-selector:volts-dc"]').press('Space');
  await page.getByRole('button', { name: 'Add a fault' }).click();
  await dialog(page).getByRole('button', { name: 'The ground wire has too much resistance.' }).click();
  const slider = page.getByRole('slider', { name: /How bad/ });
  await expect(slider).toHaveAttribute('aria-valuetext', /8\.22 Ω/);
  await slider.press('ArrowRight');
  await expect(text(page)).toHaveValue(/severity: 0\.55/);
  await expect(bench.getByRole('status').first()).toContainText('The bench follows what you write');
  await expect(bench.locator('[data-spot="key-position:on"]')).toBeChecked();
  // The key is a letter of the bench, but not while somebody writes beside it.
  await page.getByLabel('Title', { exact: true }).fill('');
  await page.getByLabel('Title', { exact: true }).pressSequentially('kkk');
  await expect(bench.locator('[data-spot="key-position:on"]')).toBeChecked();
  await bench.getByText('See inside the unit').click();
  await expect(bench.locator('.inside')).toBeVisible({ timeout: 30_000 });
  await bench.getByRole('button', { name: 'Clear the bench' }).click();
  await expect(bench.locator('[data-spot="key-position:off"]')).toBeChecked();
});

test('of two pages on one draft the second says so, and a browser that keeps nothing is told of', async ({
  page,
  context,
}) => {
  await newJob(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.getByRole('alert')).toContainText('This draft is open in another page.', {
    timeout: 20_000,
  });
  await other.close();
  await page.close();

  const bare = await context.newPage();
  await bare.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await bare.goto('./?render=canvas#/back-room');
  await expect(
    bare.getByText('This browser keeps nothing (private window or storage switched off). You can go on'),
  ).toBeVisible();
  await bare.getByRole('button', { name: 'Write a new job' }).click();
  await bare.getByLabel('Title', { exact: true }).fill('In memory');
  await expect(bare.getByText('Not kept: save the file')).toBeVisible();
  await bare.getByRole('button', { name: 'All drafts' }).click();
  await expect(bare.getByRole('link', { name: 'Open In memory' })).toBeVisible();
});
