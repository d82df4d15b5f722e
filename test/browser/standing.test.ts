import type { Page } from 'playwright-core';
import type { Db, Tx } from '#libs/platform/database/db';
import { earlierResults } from '#seed/earlier/earlier-results';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { getRead, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';
import { findings } from './support/findings.js';
import { choose, see } from './support/moves.js';
import { phone, Stage } from './support/stage.js';


describeWithPeer('chromium', 'where a dog and a breed stand, on the screen', (chromium) => {
  let stage: Stage;
  let road: Road;
  let lead: Page;
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    const { server } = stage;
    const db = { system: <T>(_reason: string, work: (tx: Tx) => Promise<T>) => server.look(work) } as unknown as Db;
    await earlierResults(db, server.scheme, server.clock.now());
    road = await Road.book(server, { dog: 'Sedge', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    await getRead(road, road.study().id, { joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }] });
    await release(road, road.study().id);
    await server.settled();
    lead = await stage.person('Oda Fering', phone);
  }, 180_000);
  afterAll(async () => { await stage.close(); });

  /** Clean in both colour schemes, and no wider than the phone that it is looked at with. */
  async function forEverybody(page: Page): Promise<void> {
    expect(await findings(page)).toEqual([]);
    expect(await page.locator('html').evaluate((html) => html.scrollWidth)).toBe(phone.viewport!.width);
  }

  /** On a phone in two rows, drawn with twenty dogs, and told in one sentence. */
  async function lineOfTwenty(page: Page): Promise<void> {
    const { line } = road.study().standing!;
    const drawing = page.getByRole('img', { name: line!.described });
    await drawing.waitFor();
    const rows = drawing.locator('svg').filter({ visible: true });
    expect(await rows.count()).toBe(1);
    expect(await rows.getAttribute('class')).toBe('two-rows');
    expect(await rows.locator('path.may').count()).toBe(line!.to - line!.from + 1);
    expect(await rows.locator('path:not(.dash)').count()).toBe(20);
  }

  it('the line of twenty on the owner’s page', async () => {
    const page = await stage.window(phone);
    const { text } = await stage.server.mail.wait(road.email, /visit on/);
    await page.goto(/http:\/\/\S+\/o\/[\w-]+/.exec(text)![0]);
    await page.getByRole('button', { name: 'Open my dog’s page' }).click();
    await lineOfTwenty(page);
    await forEverybody(page);
  });

  it('the line of twenty on the order’s page', async () => {
    const page = await stage.person('Marit Oskar', phone);
    await page.goto(`/orders/${road.id}`);
    await lineOfTwenty(page);
    await forEverybody(page);
  });

  it('a breed with its birth years beside how many were born, corrected on the page', async () => {
    await lead.goto('/scheme/breeds');
    await lead.getByRole('link', { name: 'Karsby Spitz' }).click();
    const oldest = stage.server.clock.now().getUTCFullYear() - 9;
    await lead.getByRole('img', { name: /Of every 20 pups born, in this set/ }).waitFor();
    expect(await lead.locator('.chart desc').last().textContent()).toMatch(new RegExp(`${oldest + 3} to ${oldest + 6}: 3\\.\\d, may be \\d\\.\\d to \\d\\.\\d`));
    await see(lead, `not known, as the births of ${oldest} are not written down.`);
    await lead.getByRole('button', { name: 'Write down these births' }).click();
    await see(lead, '3 things missing:');
    await lead.getByRole('textbox', { name: 'Born in the year' }).fill(String(oldest));
    await lead.getByRole('textbox', { name: 'Pups born' }).fill('57');
    await lead.getByRole('textbox', { name: 'Where the number comes from' }).fill('Invented for this test.');
    await lead.getByRole('button', { name: 'Write down these births' }).click();
    await see(lead, `Written down for ${oldest}`);
    await lead.getByRole('row', { name: /57 Invented for this test\./ }).waitFor();
    await see(lead, /in this set of every 20 pups born: 3\.\d, may be/);
    await forEverybody(lead);
  });

  it('choosing a share of a frozen set', async () => {
    await lead.goto('/scheme/choosing');
    await choose(lead, 'Breed and study', 'Aldra Water Hound, hip laxity by stress radiography, at 12 to 23 months');
    await lead.getByRole('button', { name: 'Show what it would do' }).click();
    await see(lead, 'What is left to breed from');
    await lead.getByRole('img', { name: /Mean distraction index of the generations to come/ }).waitFor();
    await forEverybody(lead);
  });

  it('how well readers agree', async () => {
    await lead.goto('/scheme/readers');
    await choose(lead, 'Study', 'Hips, laxity');
    await lead.getByLabel('Readings').fill('0.40 0.42\n0.55 0.52\n0.31 0.30');
    await lead.getByRole('button', { name: 'Show how well they agree' }).click();
    await see(lead, 'Two readings of one film differ');
    await forEverybody(lead);
  });

  it('no page complained', () => expect(stage.complaints).toEqual([]));
});
