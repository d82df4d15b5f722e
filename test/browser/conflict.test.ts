import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { admit, ownerSigns } from '#test/support/visit-legs';
import { act, choose, done, panel, see } from './support/moves.js';
import { phone, Stage, tablet } from './support/stage.js';

/** Invented, so that no number here can be taken for a dose. */
const DRUG = 'Example sedative (invented)';

let stage: Stage;
const open = (chromium: string) => async () => { stage = await Stage.open(chromium); };

describeWithPeer('chromium', 'two people at one order', (chromium) => {
  let road: Road;
  let [first, second]: Page[] = [];
  beforeAll(async () => {
    await open(chromium)();
    road = await Road.book(stage.server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 0 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('the second is told what the first did, and what was entered is kept', async () => {
    [first, second] = await Promise.all(['Ruan Tiedt', 'Anneke Dorn'].map((name) => stage.person(name, tablet)));
    for (const page of [first!, second!]) await page.goto(`/orders/${road.id}`);
    await act(second!, 'Sign plan');
    await fillPlan(second!);
    await act(first!, 'Examine');
    await first!.getByLabel('Heart, lungs, temperature, findings').fill('A soft murmur on the left.');
    await panel(first!).getByText('Healthy', { exact: true }).click();
    await done(first!, 'Examine');
    await panel(second!).getByRole('button', { name: 'Sign plan', exact: true }).click();
    await see(second!, 'Examined, Ruan Tiedt');
    await see(second!, 'What you entered is kept.');
    expect(await second!.getByLabel('Drug', { exact: true }).inputValue()).toBe(DRUG);
    expect(await plansSigned()).toBe(0);
  }, 90_000);

  it('the second, having seen it, decides again', async () => {
    await done(second!, 'Sign plan');
    await see(second!, 'A soft murmur on the left.');
    expect(await plansSigned()).toBe(1);
  });

  async function fillPlan(page: Page): Promise<void> {
    await page.getByLabel('Drug', { exact: true }).fill(DRUG);
    await page.getByLabel('Route').fill('as the vet decides');
    await page.getByLabel('Dose', { exact: true }).fill('1');
    await choose(page, 'Dose in', 'mg/kg');
    await page.getByLabel('Strength on the bottle').fill('100');
    await choose(page, 'Strength in', 'mg/mL');
    await choose(page, 'Syringe read to', '0.01 mL');
    await panel(page).getByText('I am the vet here today').click();
  }

  const plansSigned = () => stage.server.look((tx) => tx.fact.count({ where: { orderId: road.id, type: 'planSigned' } }));
});

describeWithPeer('chromium', 'an address that leads nowhere', (chromium) => {
  beforeAll(open(chromium), 90_000);
  afterAll(async () => { await stage.close(); });

  it('a link that was cut short says that it is not whole', async () => {
    const page = await stage.window(phone);
    await page.goto('/o/abc');
    await page.getByRole('button', { name: 'Open my dog’s page' }).click();
    await see(page, 'This link is not whole. Press it in the mail once more, or copy all of it.');
  });

  it('a link that has run out, or never was one, says whom to ask', async () => {
    const page = await stage.window(phone);
    await page.goto(`/o/${'x'.repeat(43)}`);
    await page.getByRole('button', { name: 'Open my dog’s page' }).click();
    await see(page, 'This link is not valid or has run out. Ask the practice to send a new one.');
  });

  it('a link with a sign in it that cannot be read is told so by a page', async () => {
    const page = await stage.window(phone);
    await page.goto('/o/%E0%A4%A');
    await see(page, 'Links in mails must be copied whole.');
  });

  it('an address without a page says so, and leads back', async () => {
    const page = await stage.window();
    await page.goto('/orderz/1');
    await see(page, 'There is no page here');
    await page.getByRole('link', { name: 'Go to today' }).click();
    await page.waitForURL(/\/sign-in/);
  });

  it('the number of an order or a dog that is not there, or of another practice, says so inside the strip', async () => {
    const page = await stage.person('Marit Oskar');
    for (const address of ['/orders/11111111-1111-4111-8111-111111111111', '/orders/none', `/dogs/${stage.server.scheme.dogs.get('Mallow')!.id}`]) {
      await page.goto(address);
      await see(page, 'There is nothing here under that number.');
      await page.getByRole('link', { name: 'Today' }).waitFor();
    }
  });

  it('a paper that does not exist says what to compare', async () => {
    const page = await stage.window();
    await page.goto('/c/AAAA-BBBB');
    await see(page, 'No paper has the number AAAA-BBBB.');
  });
});
