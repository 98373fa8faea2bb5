import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { simpleParser } from 'mailparser';
import sharp from 'sharp';
import { expect, phone, journey as test, watchPage } from '../fixtures/shop';
import { Door } from '../pages/door';
import { JobPage } from '../pages/job-page';
import { LayoutTable } from '../pages/layout-table';
import { ProofSheet } from '../pages/proof-sheet';
import { RevisionPages } from '../pages/revision-pages';

const owner = {
  shopName: 'Otterbank Press',
  unit: 'Inches',
  timeZone: 'America/New_York',
  currency: 'USD',
  ownerName: 'Robin Teal',
  email: 'robin@otterbank.example.org',
  password: 'heron wading at dusk',
} as const;

const PRINT = 'heron-crest';

test.use({ viewport: { width: 1440, height: 900 } });
test.describe.configure({ timeout: 240_000 });

test('a maker goes from an empty shop to a signed-off revision of real art', async ({ page, browser, shop }) => {
  const door = new Door(page);
  const job = new JobPage(page);
  const table = new LayoutTable(page);
  const revisions = new RevisionPages(page);

  await test.step('set up the shop with the code from the terminal, once', async () => {
    await door.visit();
    await expect(page).toHaveURL(/\/set-up$/);
    await door.setUp({ ...owner, code: shop.setUpCode() });
    await expect(
      page.getByRole('heading', { name: 'You can do these now' }).or(page.getByText('No jobs')),
    ).toBeVisible();
    await page.goto('/set-up');
    await expect(page).not.toHaveURL(/\/set-up$/);
  });

  await test.step('make a job, its garment and its counts', async () => {
    await page.goto('/jobs');
    await job.make({
      customer: 'Saltmarsh Rowing Club',
      email: 'wren@saltmarsh-rowing.example.org',
      occasion: 'Autumn relay shirts',
      neededBy: '2027-10-02T16:00',
      notes: 'Collected on the Friday.',
    });
    await job.addTee('Relay tee', 'Navy');
    await job.enterCounts({ 'Youth sizes': { M: 4 }, 'Adult sizes': { M: 6, '2XL': 2 } });
    await expect(page.getByText('12 in all')).toBeVisible();
  });

  await test.step('add art and read how wide it can be printed sharp', async () => {
    await job.addArt('prisma/demo/heron-crest.png');
    await expect(page.getByText('sharp to 9.5 in')).toBeVisible();
  });

  await test.step('lay the art on the garment, move it and type readings on the tape', async () => {
    await job.openTable();
    await table.layOn('heron-crest.png', 'Full front');
    // Common practice, no source: a full front starts 10 in wide, four fingers (3 in) below the collar.
    await expect(table.reading('Width', PRINT)).toHaveValue('10 in');
    await expect(table.reading('Drop', PRINT)).toHaveValue('3 in');
    await table.nudge('ArrowDown');
    await expect(table.reading('Drop', PRINT)).toHaveValue('3 1/8 in');
    await table.undo();
    await expect(table.reading('Drop', PRINT)).toHaveValue('3 in');
    await table.redo();
    await expect(table.reading('Drop', PRINT)).toHaveValue('3 1/8 in');
    await table.type('Width', PRINT, '9 1/2');
    await expect(table.reading('Width', PRINT)).toHaveValue('9 1/2 in');
    await table.showSize('Youth M');
    await expect(table.reading('Width', PRINT)).toHaveValue('7 1/2 in');
    await expect(table.saved).toBeVisible();
    await page.reload();
    await table.showSize('M');
    await expect(table.reading('Width', PRINT)).toHaveValue('9 1/2 in');
  });

  const link = await test.step('send Rev 1 and see how to reach the customer', async () => {
    await table.toSending();
    await expect(page.getByText('The link opens on this computer only')).toBeVisible();
    await revisions.send('Please look it over.');
    await expect(page.getByRole('heading', { level: 1, name: 'Rev 1' })).toBeVisible();
    return revisions.customerLink();
  });

  await test.step('the seal is what another program computes from the sealed bytes', async () => {
    const path = await revisions.downloadSealedBytes();
    const seal = (await revisions.fullSeal.textContent())?.trim();
    expect(execFileSync('sha256sum', [path], { encoding: 'utf8' }).slice(0, 64)).toBe(seal);
  });

  await test.step('the whole revision can be sent as one picture', async () => {
    const { width, format } = await sharp(await revisions.downloadPicture()).metadata();
    expect({ width, format }).toEqual({ width: 1200, format: 'png' });
  });

  await test.step('the message to the customer lies as a file and holds the same link', async () => {
    await expect.poll(() => readdirSync(shop.mailDir).length).toBeGreaterThan(0);
    const [name = ''] = readdirSync(shop.mailDir);
    const mail = await simpleParser(readFileSync(join(shop.mailDir, name)));
    expect(mail.text).toContain(link);
    expect([mail.to].flat()[0]?.text).toContain('wren@saltmarsh-rowing.example.org');
  });

  const customer = await browser.newContext(phone);
  const customerPage = await customer.newPage();
  const seen = watchPage(customerPage);
  const proof = new ProofSheet(customerPage);

  await test.step('the customer sees front and back on a phone and asks for a change', async () => {
    await customerPage.goto(link);
    await expect(proof.picture('Front').first()).toBeVisible();
    await expect(customerPage.getByText('9 1/2 in wide').first()).toBeVisible();
    await proof.askForChange('A touch bigger, please.', 'Wren Okafor');
    await expect(customerPage.getByText('You asked for a change to Rev 1')).toBeVisible();
  });

  await test.step('the maker reads the change on the bench, makes it and sends Rev 2', async () => {
    await page.goto('/jobs');
    await expect(page.getByText('A touch bigger, please.')).toBeVisible();
    await page.getByRole('link', { name: /Autumn relay shirts/ }).click();
    await page.getByRole('link', { name: 'Make the change' }).click();
    await table.showSize('M');
    await table.type('Width', PRINT, '10 1/4');
    await expect(table.saved).toBeVisible();
    await table.toSending();
    await revisions.send('Three quarters of an inch wider.');
    await expect(page.getByRole('heading', { level: 1, name: 'Rev 2' })).toBeVisible();
  });

  await test.step('an answer to the replaced revision is refused in words, with nothing lost', async () => {
    // The page of Rev 1 is still open on the phone.
    await proof.sayYes('Wren Okafor');
    await expect(customerPage.getByText('A newer look came out while your page was open')).toBeVisible();
    await expect(customerPage.getByLabel('Your full name')).toHaveValue('Wren Okafor');
  });

  await test.step('the customer says yes to Rev 2 without JavaScript', async () => {
    const plain = await browser.newContext({ ...phone, javaScriptEnabled: false });
    const plainPage = await plain.newPage();
    const sheet = new ProofSheet(plainPage);
    await plainPage.goto(link);
    await expect(plainPage.getByText('10 1/4 in wide').first()).toBeVisible();
    await sheet.sayYes('Wren Okafor');
    await expect(plainPage.getByText('You said yes to Rev 2')).toBeVisible();
    await plainPage.goto(`${link}?rev=1`);
    await expect(plainPage.getByText('It was replaced by Rev 2')).toBeVisible();
    await plain.close();
  });

  await test.step('the layout is locked and the specification shows what to press', async () => {
    await page.goto('/jobs');
    await page.getByRole('link', { name: /Autumn relay shirts/ }).click();
    await expect(page.getByText('Wren Okafor').first()).toBeVisible();
    await revisions.openSpecification();
    await expect(page.getByText('10 1/4 in').first()).toBeVisible();
    await expect(page.getByText(/^Yes from Wren Okafor/)).toBeVisible();
    const path = await revisions.download(/PNG, 300 dpi/);
    const { width, density } = await sharp(path).metadata();
    expect(density).toBe(300);
    expect(width).toBeGreaterThan(2_000);
    await page.goBack();
    await job.openTable();
    await expect(page.getByText('This layout is signed off')).toBeVisible();
  });

  expect(seen).toEqual([]);
  await customer.close();
});
