import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { admit, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';
import { act, done, panel, see } from './support/moves.js';
import { Stage, tablet } from './support/stage.js';

/** Invented. */
const first = { heart: '71', breaths: '13' };
const second = { heart: '77', breaths: '15' };
/** Digits 1 to 3 are neither a country nor a maker. */
const NO_TRANSPONDER = '000000000000001';

describeWithPeer('chromium', 'a tablet beside a sleeping dog that loses the network', (chromium) => {
  let stage: Stage;
  let road: Road;
  let nurse: Page;
  const stored = (type: string) => stage.server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type }, orderBy: { rec: 'asc' } }));
  const network = (there: boolean) => nurse.context().setOffline(!there);

  async function reading({ heart, breaths }: typeof first): Promise<void> {
    await act(nurse, 'Take reading');
    await nurse.getByLabel(/^Heart/).fill(heart);
    await nurse.getByLabel(/^Breathing/).fill(breaths);
    await done(nurse, 'Keep this reading');
  }

  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await judge(road, await takeView(road, 'mlFlexedLeft'), 'accept');
    nurse = await stage.person(road.name('nurse'), tablet);
    await nurse.goto(`/orders/${road.id}`);
    await nurse.getByRole('button', { name: 'Stop imaging' }).waitFor();
    await nurse.evaluate('navigator.serviceWorker.ready.then(() => true)');
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('keeps the page, and says since when nobody answers', async () => {
    await network(false);
    await see(nurse, /^No network since \d\d:\d\d\./);
    await nurse.getByRole('heading', { name: /is asleep$/ }).waitFor();
  });

  it('keeps a reading, Stop imaging and a second reading, in dashes, and offers what comes next', async () => {
    await reading(first);
    await act(nurse, 'Scan');
    await nurse.getByLabel(/^Or type the number/).fill(NO_TRANSPONDER);
    await nurse.getByRole('button', { name: 'Add this number' }).click();
    await done(nurse, 'Scan');
    await nurse.getByRole('button', { name: 'Stop imaging' }).click();
    await nurse.getByRole('button', { name: 'Stop imaging' }).waitFor({ state: 'detached' });
    await reading(second);
    await see(nurse, /4 entries wait on this tablet/);
    const waiting = await nurse.locator('.on-tablet .waits').allInnerTexts();
    expect(waiting.map((w) => w.replace(/\s+/g, ' '))).toEqual([
      expect.stringMatching(/^\d\d:\d\d Reading taken: heart 71, breathing 13 waits here$/i),
      expect.stringMatching(/^\d\d:\d\d Scan: 000000000000001 waits here$/i),
      expect.stringMatching(/^\d\d:\d\d Stop imaging waits here$/i),
      expect.stringMatching(/^\d\d:\d\d Reading taken: heart 77, breathing 15 waits here$/i),
    ]);
    await nurse.getByRole('main').getByRole('button', { name: 'Sign recovery' }).first().waitFor();
    expect(await stored('imagingEnded')).toEqual([]);
  });

  it('opens again after a reload without network: the order as it was last seen, and what waits', async () => {
    await nurse.reload();
    await nurse.getByRole('heading', { level: 1, name: 'Alder' }).waitFor();
    await see(nurse, /4 entries wait on this tablet/);
    await see(nurse, /^No network since \d\d:\d\d\./);
    await nurse.getByRole('main').getByRole('button', { name: 'Sign recovery' }).first().waitFor();
  });

  it('says of what is decided that it needs the network', async () => {
    const vet = await stage.person(road.name('vet'), tablet);
    await vet.goto(`/orders/${road.id}`);
    await vet.getByRole('button', { name: 'Stop imaging' }).waitFor();
    await vet.context().setOffline(true);
    await act(vet, 'End study');
    await panel(vet).getByText('The owner decided', { exact: true }).click();
    await panel(vet).getByRole('button', { name: 'End study', exact: true }).click();
    await see(vet, /needs the network\. What you entered is still here/);
    await vet.context().close();
  });

  it('sends everything once, in order and with its own time, when the network is back', async () => {
    const before = (await stored('readingTaken')).length;
    stage.server.clock.advance({ minutes: 12 });
    await network(true);
    await nurse.locator('.on-tablet').getByText('waits here').first().waitFor({ state: 'detached' });
    const readings = (await stored('readingTaken')).slice(before);
    const ended = await stored('imagingEnded');
    expect(readings.map((f) => (f.body as { detail: { heartRate: number } }).detail.heartRate)).toEqual([71, 77]);
    expect(ended).toHaveLength(1);
    const [one, two] = readings as [(typeof readings)[0], (typeof readings)[0]];
    const inOrder = [one, ended[0]!, two];
    expect(inOrder.map((f) => f.at.getTime())).toEqual(inOrder.map((f) => f.at.getTime()).sort((a, b) => a - b));
    expect(inOrder.map((f) => f.rec.getTime())).toEqual(inOrder.map((f) => f.rec.getTime()).sort((a, b) => a - b));
    for (const f of inOrder) expect(f.rec.getTime() - f.at.getTime()).toBeGreaterThan(10 * 60_000);
    await road.look('nurse');
    expect(road.visit.step).toBe('imaged');
  });

  it('keeps what the server refused, which held nothing up, and says why', async () => {
    await see(nurse, 'Not stored.');
    await see(nurse, /Digits 1 to 3 are 000/);
    await nurse.getByRole('button', { name: 'Take it off this tablet' }).click();
    await nurse.locator('.on-tablet').waitFor({ state: 'detached' });
  });

  it('no page complained', () => expect(stage.complaints).toEqual([]));
});
