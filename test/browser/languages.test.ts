import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { see, tabTo } from './support/moves.js';
import { phone, Stage } from './support/stage.js';

describeWithPeer('chromium', 'the page of an owner who reads German', (chromium) => {
  let stage: Stage;
  let page: Page;
  let road: Road;
  let desk: Page;
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    // Anselm Rook of the demo reads German.
    road = await Road.book(stage.server, { dog: 'Tolle', studies: [['hipLaxity', 'threnfold'], ['elbow', 'threnfold']], inDays: 2 });
    page = await stage.window(phone);
    const mail = await stage.server.mail.wait(road.email, /Termin am/);
    await page.goto(/\/o\/[\w-]+/.exec(mail.text)![0]);
    await page.getByRole('button', { name: 'Open my dog’s page' }).click();
    await see(page, 'Worum wir Sie bitten');
  }, 120_000);
  afterAll(async () => { await stage.close(); });

  it('says its language, keeps inside a phone, and everybody can use it', async () => {
    expect(await page.evaluate('[document.documentElement.lang, document.documentElement.dir]')).toEqual(['de', 'ltr']);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
    const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
    expect(violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)}`))).toEqual([]);
    await see(page, 'Dieser Text der Praxis ist auf Englisch geschrieben.');
  });

  it('keeps a Hebrew name together in a German and in an English sentence', async () => {
    await stage.server.look((tx) => tx.$executeRaw`UPDATE dog SET call_name = 'רקס' WHERE id = ${road.dog.id}::uuid`);
    await page.reload();
    await see(page, 'wird am');
    expect(await page.locator('.lead').textContent()).toMatch(/^\u2068רקס\u2069 wird am /);
    await page.getByRole('button', { name: 'English' }).click();
    await see(page, 'is expected on');
    expect(await page.locator('.lead').textContent()).toMatch(/^\u2068רקס\u2069 is expected on /);
    expect(await page.evaluate('document.documentElement.lang')).toBe('en');
    // The name stands where the sentence begins, at the left edge: nothing of the sentence was drawn along.
    const [lead, name] = await page.evaluate<[number, number]>(`(() => {
      const paragraph = document.querySelector('.lead');
      const range = document.createRange();
      range.setStart(paragraph.firstChild, 1);
      range.setEnd(paragraph.firstChild, 4);
      return [paragraph.getBoundingClientRect().left, range.getBoundingClientRect().left];
    })()`);
    expect(Math.abs(name - lead)).toBeLessThan(3);
  });

  it('a page of the practice speaks German once somebody chooses it, dates and the server’s own words too', async () => {
    desk = await stage.person('Marit Oskar');
    await desk.goto(`/orders/${road.id}`);
    await desk.getByRole('button', { name: 'Deutsch' }).click();
    await see(desk, 'Wie es steht');
    await see(desk, 'Worauf er wartet');
    await see(desk, /Termin, (Montag|Dienstag|Mittwoch|Donnerstag|Freitag|Samstag|Sonntag), /);
    await see(desk, 'Auftrag eröffnet');
    expect(await desk.evaluate('document.documentElement.lang')).toBe('de');
    await desk.reload();
    await see(desk, 'Wie es steht');
    const { violations } = await new AxeBuilder({ page: desk }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
    expect(violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)}`))).toEqual([]);
  });

  it('is booked in German with the keyboard alone, by the letters that the answers begin with there', async () => {
    const keys = desk.keyboard;
    await desk.goto('/');
    await see(desk, 'Termin buchen');
    await keys.press('b');
    await desk.getByRole('heading', { name: 'Termin buchen' }).waitFor();
    expect((await desk.locator('.head kbd').allTextContents()).join(' ')).toBe('Tab Umschalt Tab J N W Strg Eingabe');
    await keys.type('Juniper');
    await desk.getByRole('button', { name: 'Juniper of Upland Farm' }).waitFor();
    await keys.press('Tab');
    await keys.press('Enter');
    await tabTo(desk, '.study:has-text("Ellbogen")');
    await keys.press('Space');
    await see(desk, /Die Ziffer wählt aus/);
    await tabTo(desk, '.slots');
    await keys.press('1');
    const asked = await desk.locator('.qs > li').count();
    const chosen = (n: number) => desk.locator(`.qs > li:nth-child(${n}) input:checked`);
    for (let n = 1; n <= asked; n++) {
      await tabTo(desk, `.qs > li:nth-child(${n})`);
      // The English letters of yes and of not knowing answer nothing here.
      await keys.press('y');
      await keys.press('d');
      expect(await chosen(n).count()).toBe(0);
      await keys.press(n === 1 ? 'j' : n === asked ? 'w' : 'n');
      expect(await chosen(n).inputValue()).toBe(n === 1 ? 'yes' : n === asked ? 'unknown' : 'no');
    }
    await tabTo(desk, '.field:has-text("Hinweise zur Vorbereitung")');
    await keys.press('Enter');
    await desk.getByRole('option').first().waitFor();
    await keys.press('Enter');
    await see(desk, /Nach dem Buchen/);
    await keys.press('Control+Enter');
    await desk.waitForURL(/\/orders\//);
    await see(desk, 'Wie es steht');
  }, 90_000);

  it('complained about nothing', () => expect(stage.complaints).toEqual([]));
});
