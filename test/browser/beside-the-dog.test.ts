import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { admit, ownerSigns, sedate } from '#test/support/visit-legs';
import { findings } from './support/findings.js';
import { see } from './support/moves.js';
import { Stage, tablet } from './support/stage.js';

describeWithPeer('chromium', 'the tablet beside a sleeping dog', (chromium) => {
  let stage: Stage;
  let road: Road;
  let nurse: Page;
  const readings = () => stage.server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type: 'readingTaken' }, orderBy: { rec: 'asc' } }));
  const key = (name: string) => nurse.getByRole('button', { name, exact: true });
  const press = async (...keys: string[]) => { for (const one of keys) await key(one).click(); };

  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    nurse = await stage.person(road.name('nurse'), tablet);
    await nurse.goto(`/orders/${road.id}`);
    await nurse.getByRole('link', { name: 'Beside the dog' }).click();
    await nurse.getByRole('heading', { level: 1, name: 'Alder' }).waitFor();
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('keeps a reading typed on its own keys, and draws it', async () => {
    const before = (await readings()).length;
    await press('8', '0', 'Next', '1', '4', 'Next', '9', '7', 'Next', '3', '8', '.', '1');
    await nurse.getByText('Pink', { exact: true }).click();
    await key('Keep this reading').click();
    await see(nurse, /^The reading of \d\d:\d\d is kept\./);
    const kept = await readings();
    expect(kept).toHaveLength(before + 1);
    expect(kept.at(-1)!.body).toMatchObject({ detail: expect.anything() });
    await nurse.getByRole('img', { name: /^Heart: .* last 80/ }).waitFor();
  });

  it('asks for at least one thing, and keeps nothing without it', async () => {
    const before = (await readings()).length;
    await key('Keep this reading').click();
    await see(nurse, 'Write down at least one thing you saw.');
    expect(await readings()).toHaveLength(before);
  });

  it('says when the next reading is due and counts minutes, and has no finding in either scheme', async () => {
    await see(nurse, /Next reading by \d\d:\d\d\.|A reading is due, since \d\d:\d\d\./);
    await nurse.getByRole('timer').filter({ hasText: /^\d+ min/ }).waitFor();
    expect(await findings(nurse)).toEqual([]);
  });

  it('keeps a reading without network in dashes, and sends it once when it is back', async () => {
    const before = (await readings()).length;
    await nurse.context().setOffline(true);
    await press('7', '7');
    await key('Keep this reading').click();
    await see(nurse, /1 entry waits on this tablet/);
    expect(await nurse.locator('.small-chart circle.waits').count()).toBeGreaterThan(0);
    await nurse.context().setOffline(false);
    await nurse.locator('.small-chart circle.waits').first().waitFor({ state: 'detached' });
    expect(await readings()).toHaveLength(before + 1);
  });
});
