import type { Page } from 'playwright-core';
import { lead } from '#seed/practices';
import { describeWithPeer } from '#test/support/peers';
import { example, packageOf } from '#test/support/results-in';
import { Road } from '#test/support/road';
import { dispatch } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';
import { partsOf, sheetOf, zipOf } from '#test/support/workbook';
import { findings } from './support/findings.js';
import { choose, see } from './support/moves.js';
import { Stage } from './support/stage.js';

const CENTRE = 'Reading centre, Threnfold';

describeWithPeer('chromium', 'a file of readings', (chromium) => {
  let stage: Stage;
  let road: Road;
  let desk: Page;
  let csv: string;
  const arrived = () => stage.server.look((tx) => tx.fact.count({ where: { orderId: road.id, type: 'resultArrived' } }));
  const gives = (page: Page, text: string) => page.getByLabel('File (xlsx or CSV)').setInputFiles({ name: 'readings.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  const row = (page: Page, n: number) => page.getByRole('row', { name: new RegExp(`^${n} `) });

  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    await (await dispatch(road, road.study().id)).acknowledge();
    await road.look();
    csv = example('readings.csv', { 'P-1A2B3C4D': await packageOf(road, 'hipLaxity') }, road.today);
    desk = await stage.person(road.name('desk'));
  }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('is looked at row by row, with its dog or what is wrong, before anything is taken', async () => {
    await desk.goto('/orders');
    await desk.getByRole('link', { name: 'Readings in' }).click();
    await desk.getByRole('button', { name: 'Look at this file' }).click();
    await see(desk, 'Choose the centre whose readings these are.');
    await see(desk, 'Choose the file.');
    await choose(desk, 'Centre', CENTRE);
    await gives(desk, csv);
    await desk.getByRole('button', { name: 'Look at this file' }).click();
    await see(desk, 'Nothing has been taken yet.');
    await see(desk, '1 row can be taken, none is there already, 2 are wrong.');
    expect(await row(desk, 2).innerText()).toMatch(/R-2031, Noemi Haskel[^]*Gale[^]*Left hip: 0\.38[^]*Right hip: 0\.44[^]*Can be taken\./);
    expect(await row(desk, 3).innerText()).toMatch(/Cannot be taken\. Nothing under package P-2B3C4D5E was sent to this centre\. Compare the number/);
    expect(await findings(desk)).toEqual([]);
    expect(await desk.locator('html').evaluate((html) => html.scrollWidth - html.clientWidth)).toBe(0);
    expect(await arrived()).toBe(0);
  });

  it('is looked at in the same way as a workbook, which says what its spreadsheet changed and what was not looked at', async () => {
    const parcel = await packageOf(road, 'hipLaxity');
    const rows = [['package', 'number', 'read by', 'dog number', 'left', 'right'], [parcel, 'R-2031', 'Noemi Haskel', null, 0.38, 0.44], [parcel, 'R-2032', 'Noemi Haskel', 40981000000001, 0.38, 0.44]];
    await desk.getByLabel('File (xlsx or CSV)').setInputFiles({ name: 'readings.xlsx', mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet', buffer: await zipOf(partsOf({ November: sheetOf(rows), October: sheetOf([]) })) });
    await desk.getByRole('button', { name: 'Look at this file' }).click();
    await see(desk, 'Only the sheet “November” was looked at. The workbook has another one, which was not.');
    expect(await row(desk, 2).innerText()).toMatch(/R-2031, Noemi Haskel[^]*Gale[^]*Left hip: 0\.38[^]*Right hip: 0\.44[^]*Can be taken\./);
    expect(await row(desk, 3).innerText()).toMatch(/Cannot be taken\. “dog number” is stored as a number of 14 digits[^]*Format the column as text/);
    expect(await findings(desk)).toEqual([]);
    await desk.getByRole('button', { name: 'Leave the file' }).click();
    await gives(desk, csv);
    await desk.getByRole('button', { name: 'Look at this file' }).click();
    await see(desk, '1 row can be taken, none is there already, 2 are wrong.');
  });

  it('is taken by its right rows, and each row says what became of it', async () => {
    await desk.getByRole('button', { name: 'Take this reading' }).click();
    await see(desk, '1 reading was taken.');
    expect(await row(desk, 2).innerText()).toContain('Taken in. It waits for a veterinarian of the practice.');
    expect(await row(desk, 3).innerText()).toContain('Not taken in. Nothing under package P-2B3C4D5E');
    expect(await findings(desk)).toEqual([]);
    expect(await arrived()).toBe(1);
  });

  it('takes nothing twice, also when somebody at the centre sends it', async () => {
    const reader = await stage.person('Noemi Haskel');
    await reader.getByRole('link', { name: 'Readings from a file' }).click();
    await gives(reader, csv);
    await reader.getByRole('button', { name: 'Look at this file' }).click();
    await see(reader, 'None can be taken');
    expect(await row(reader, 2).innerText()).toContain('There already.');
    expect(await reader.getByText('Gale').count()).toBe(0);
    expect(await reader.getByRole('button', { name: /^Take / }).count()).toBe(0);
  });

  it('the lead makes a centre’s key, whose secret is shown once', async () => {
    const page = await stage.person(lead.name);
    await page.getByRole('link', { name: 'Readings in' }).click();
    await page.getByRole('button', { name: 'Make a key' }).click();
    await page.getByRole('form').or(page.locator('form')).last().getByRole('button', { name: /Centre/ }).click();
    await page.getByRole('option', { name: CENTRE }).click();
    await page.getByRole('button', { name: 'Make it' }).click();
    await see(page, 'Write this down now.');
    const secret = await page.locator('.key-made dd').last().innerText();
    expect(secret).toMatch(/^[\w-]{43}$/);
    expect(await findings(page)).toEqual([]);
    await page.getByRole('button', { name: 'I have it' }).click();
    await page.reload();
    await see(page, 'Valid');
    expect(await page.content()).not.toContain(secret);
  });

  it('no page complained', () => {
    expect(stage.complaints).toEqual([]);
  });
});
