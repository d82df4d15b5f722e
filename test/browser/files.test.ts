import type { Page } from 'playwright-core';
import { text } from 'node:stream/consumers';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { findings } from './support/findings.js';
import { see } from './support/moves.js';
import { Stage } from './support/stage.js';

describeWithPeer('chromium', 'a list as a file', (chromium) => {
  let stage: Stage;
  let desk: Page;
  const words = 'Fetch as a file for a spreadsheet';
  const bar = () => desk.getByRole('progressbar', { name: words });
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    await Road.book(stage.server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 0 });
    desk = await stage.person('Marit Oskar');
    await desk.goto('/orders');
    await see(desk, 'Gale');
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('says that it is being made until it is there, whole', async () => {
    let goOn = () => {};
    const heldBack = new Promise<void>((resolve) => { goOn = resolve; });
    await desk.route('**/orders/export.csv*', async (route) => {
      await heldBack;
      await route.continue();
    });
    const file = desk.waitForEvent('download');
    await desk.getByRole('link', { name: words }).click();
    await bar().waitFor();
    await see(desk, 'being made');
    expect(await findings(desk)).toEqual([]);
    goOn();
    const fetched = await file;
    expect(fetched.suggestedFilename()).toBe('orders.csv');
    expect(await text(await fetched.createReadStream())).toContain('Gale');
    await bar().waitFor({ state: 'detached' });
  }, 60_000);

  it('that could not be made is said so, and nothing is kept', async () => {
    await desk.unroute('**/orders/export.csv*');
    await desk.route('**/orders/export.csv*', (route) => route.fulfill({ status: 503, json: { code: 'BUSY', message: 'The server has so much to do that this had to wait too long.' } }));
    await desk.getByRole('link', { name: words }).click();
    await desk.getByRole('alert').getByText('so much to do').waitFor();
    expect(await bar().count()).toBe(0);
  });

  it('that the page holds whole is made without the server', async () => {
    await desk.goto('/');
    const file = desk.waitForEvent('download');
    await desk.getByRole('button', { name: `Visits shown: ${words[0]!.toLowerCase()}${words.slice(1)}` }).click();
    expect(await text(await (await file).createReadStream())).toMatch(/^Time,Room,Dog,.*\r\n[\s\S]*Gale/);
    expect(stage.complaints).toEqual([]);
  });
});
