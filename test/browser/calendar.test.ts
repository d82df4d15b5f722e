import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { findings } from './support/findings.js';
import { see } from './support/moves.js';
import { Stage } from './support/stage.js';

describeWithPeer('chromium', 'the calendar of a practice', (chromium) => {
  let stage: Stage;
  let road: Road;
  let desk: Page;
  const visit = () => desk.getByRole('button', { name: /Gale/ });
  const booked = () => stage.server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type: 'visitBooked' }, orderBy: { rec: 'asc' } }));

  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']], inDays: 3 });
    desk = await stage.person(road.name('desk'));
    await desk.goto(`/calendar?day=${road.slot.day}`);
    await visit().waitFor();
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('a visit is dragged to another time, and the owner is told once somebody has said yes', async () => {
    const box = (await visit().boundingBox())!;
    await desk.mouse.move(box.x + 20, box.y + 8);
    await desk.mouse.down();
    await desk.mouse.move(box.x + 25, box.y + 8 + 126, { steps: 4 });
    await desk.mouse.up();
    await see(desk, 'The owner gets a new confirmation; answers and signatures stay.');
    expect(await findings(desk)).toEqual([]);
    expect(await booked()).toHaveLength(1);
    await desk.getByRole('button', { name: 'Move it there' }).click();
    await desk.getByRole('dialog').waitFor({ state: 'detached' });
    // 90 minutes are 126 pixels.
    const [first, second] = (await booked()).map((f) => f.body as { start: string });
    const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
    expect(minutes(second!.start) - minutes(first!.start)).toBe(90);
    await visit().filter({ hasText: second!.start }).waitFor();
  });

  it('a visit is moved by keyboard alone, and what cannot be is said', async () => {
    await visit().focus();
    await desk.keyboard.press('Space');
    await see(desk, /Gale is picked up/);
    for (let i = 0; i < 60; i++) await desk.keyboard.press('ArrowUp');
    await desk.keyboard.press('Escape');
    await see(desk, 'Gale stays where it was.');
    await desk.keyboard.press('Enter');
    await see(desk, 'This is where the visit stands now.');
    await desk.getByRole('button', { name: /Films by/ }).click();
    await desk.getByRole('option', { name: road.slot.vet.name }).click();
    await see(desk, new RegExp(`${road.slot.vet.name} is not accredited for Hips, laxity`));
    expect(await desk.getByRole('button', { name: 'Move it there' }).count()).toBe(0);
    await desk.getByRole('button', { name: 'Close' }).click();
  });

  it.each(['operators', 'week'])('shows %s, without a finding and no wider than its window', async (by) => {
    await desk.goto(`/calendar?day=${road.slot.day}&by=${by}`);
    await visit().first().waitFor();
    expect(await findings(desk)).toEqual([]);
    expect(await desk.locator('html').evaluate((html) => html.scrollWidth - html.clientWidth)).toBe(0);
  });
});
