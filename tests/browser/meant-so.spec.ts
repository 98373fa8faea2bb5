import { ownShop } from './fixtures/own-shop';
import { expect, phone, test, watchPage } from './fixtures/shop';
import { OWNER } from './fixtures/shop-side';
import { Door } from './pages/door';
import { ProofSheet } from './pages/proof-sheet';
import { RevisionPages } from './pages/revision-pages';

const WHY = 'The stripe runs from sleeve to sleeve on purpose.\nAs on the old shirts.';

const own = ownShop();

test('a print over a seam is sent with a word why it is meant so, and the customer reads it', async ({ browser }) => {
  test.slow();
  const { jobId } = own.side.layOutTooWide();
  const bench = await browser.newPage();
  const seen = watchPage(bench);
  const pages = new RevisionPages(bench);
  const stopped = pages.stopped('Crest');

  await test.step('the send page says what is wrong, on which size, and where to mend it', async () => {
    await bench.goto(`${own.server.url}/sign-in`);
    await new Door(bench).signIn(OWNER.email, OWNER.password);
    await bench.getByRole('link', { name: 'Autumn relay shirts' }).first().waitFor();
    await bench.goto(`${own.server.url}/jobs/${jobId}/send`);
    await expect(stopped).toContainText(/Crest, full front: .*wider than the space between the armholes.* on Youth S/);
    await expect(stopped.getByRole('link', { name: 'Mend it on the layout table' })).toHaveAttribute(
      'href',
      `/jobs/${jobId}/table`,
    );
    await expect(pages.lookAtThis).toContainText(/Crest, full front: comes within .* on/);
  });

  await test.step('nothing is sent without the word, and the note to the customer is still there', async () => {
    await bench.getByLabel(/^A note to/).fill('Have a look at the stripe.');
    await pages.sendButton.click();
    await expect(pages.refusal).toContainText('Write why Crest is meant so, or mend it on the layout table.');
    await expect(bench.getByLabel(/^A note to/)).toHaveValue('Have a look at the stripe.');
    expect(own.side.look(jobId)).toEqual([]);
  });

  await test.step('a print changed in another window meanwhile is shown as it is now, with nothing typed lost', async () => {
    await stopped.getByLabel('Why it is meant so').fill(WHY);
    own.side.widen(jobId);
    await pages.sendButton.click();
    await expect(pages.refusal).toContainText('the layout was changed in another window');
    await expect(stopped.getByLabel('Why it is meant so')).toHaveValue(WHY);
    await pages.sendButton.click();
    await bench.getByRole('heading', { name: 'Reach the customer' }).waitFor();
    await expect(bench.getByText(`Crest is meant so. You wrote: ${WHY.replace('\n', ' ')}`)).toBeVisible();
  });

  await test.step('the customer reads it under that print, with what it is about', async () => {
    const context = await browser.newContext(phone);
    const page = await context.newPage();
    await new ProofSheet(page).open(await pages.customerLink());
    await expect(page.getByText(/^On Youth S the print .*runs over both sleeve seams/)).toBeVisible();
    await expect(page.getByText('The maker says: The stripe runs from sleeve to sleeve on purpose.')).toBeVisible();
    await page.getByText('How near the seams', { exact: true }).click();
    await expect(page.getByRole('row', { name: /^M .* in from the sleeve seam$/ })).toBeVisible();
    await expect(page.getByRole('row', { name: /^Youth S over / })).toBeVisible();
    await context.close();
  });

  await test.step('the specification says it, and the next form has it filled in', async () => {
    await bench.goto(`${bench.url()}/specification`);
    await expect(bench.getByText(/on Youth S, and meant so\. The maker says: The stripe runs/)).toBeVisible();
    own.side.widen(jobId);
    await bench.goto(`${own.server.url}/jobs/${jobId}/send`);
    await expect(stopped.getByLabel('Why it is meant so')).toHaveValue(WHY);
  });
  expect(seen).toEqual([]);
  await bench.close();
});
