import { AxeBuilder } from '@axe-core/playwright';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { getRead, release } from '#test/support/study-legs';
import { admit, ownerSigns, sedate, takeView, throughTheVisit } from '#test/support/visit-legs';
import { see, tabTo } from './support/moves.js';
import { phone, Stage } from './support/stage.js';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];
/** A caught mail is somebody else's page, in a frame in which no script runs, not even one that looks for faults. */
const FRAME = 'iframe.mail-page';
/** Bytes of compressed script before the first page can be drawn. */
const FIRST_PAGE = 200_000;
const pages = path.resolve(import.meta.dirname, '../../dist/web');

describeWithPeer('chromium', 'pages that everybody can use', (chromium) => {
  let stage: Stage;
  let desk: Page;
  let asleep: Road;
  let read: Road;
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    const { server } = stage;
    read = await Road.book(server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 0 });
    await throughTheVisit(read);
    await getRead(read, read.study().id);
    await release(read, read.study().id);
    asleep = await Road.book(server, { dog: 'Wenna', studies: [['hipLaxity', 'threnfold'], ['elbow', 'threnfold']], inDays: 0 });
    await ownerSigns(asleep);
    await asleep.untilVisit();
    await admit(asleep);
    await sedate(asleep);
    await takeView(asleep, 'vdExtended');
    await server.settled();
    desk = await stage.person('Marit Oskar');
  }, 120_000);
  afterAll(async () => { await stage.close(); });

  /** What the rules of WCAG 2.0 to 2.2, A and AA, find on the page, in both colour schemes. */
  async function findings(page: Page): Promise<string[]> {
    const all: string[] = [];
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const { violations } = await new AxeBuilder({ page }).withTags(RULES).exclude(FRAME).analyze();
      all.push(...violations.flatMap((v) => v.nodes.map((n) => `${colorScheme} ${v.id}: ${n.html.slice(0, 160)}`)));
    }
    return all;
  }

  it('sign-in', async () => {
    const page = await stage.window();
    await page.goto('/sign-in');
    await see(page, 'This is a demo');
    expect(await findings(page)).toEqual([]);
  });

  it('day board', async () => {
    await desk.goto('/');
    await desk.getByRole('link', { name: 'Wenna' }).waitFor();
    expect(await findings(desk)).toEqual([]);
  });

  it('booking, with a study chosen and too early a try', async () => {
    await desk.goto(`/book?dog=${asleep.dog.id}`);
    await desk.getByText('Hips, extended', { exact: true }).click();
    await see(desk, 'The number chooses.');
    await desk.getByRole('button', { name: /^Book/ }).click();
    await see(desk, 'things missing:');
    expect(await findings(desk)).toEqual([]);
  });

  it('an order while the dog sleeps, with a form open', async () => {
    const nurse = await stage.person(asleep.name('nurse'));
    await nurse.goto(`/orders/${asleep.id}`);
    await nurse.getByRole('button', { name: 'Take reading' }).click();
    await see(nurse, 'Keep this reading');
    expect(await findings(nurse)).toEqual([]);
  });

  it('an order with its result', async () => {
    await desk.goto(`/orders/${read.id}`);
    await see(desk, 'Results so far');
    expect(await findings(desk)).toEqual([]);
  });

  it('the owner’s page, with everything still to do', async () => {
    const road = await Road.book(stage.server, { dog: 'Moss', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    const page = await stage.window(phone);
    await page.goto(await linkTo(road.email));
    await page.getByRole('button', { name: 'Open my dog’s page' }).click();
    await see(page, 'What we ask of you');
    expect(await findings(page)).toEqual([]);
  });

  it('the reader’s package', async () => {
    const page = await stage.person('Noemi Haskel');
    await page.getByRole('link', { name: /P-/ }).first().click();
    await see(page, 'You read blind');
    expect(await findings(page)).toEqual([]);
  });

  it('the check of a certificate', async () => {
    const page = await stage.window(phone);
    await page.goto(`/c/${read.screen.documents.find((d) => d.serial)!.serial}`);
    await see(page, 'It still stands.');
    expect(await findings(page)).toEqual([]);
  });

  it('scheme', async () => {
    const page = await stage.person('Oda Fering');
    await page.getByRole('heading', { level: 2 }).first().waitFor();
    expect(await findings(page)).toEqual([]);
  });

  it('practice', async () => {
    const page = await stage.person('Hedda Lorne');
    await page.getByRole('link', { name: 'Practice' }).click();
    await page.getByRole('heading', { level: 2 }).first().waitFor();
    expect(await findings(page)).toEqual([]);
  });

  it('mailbox, with a message open', async () => {
    await desk.goto('/mailbox');
    await desk.getByRole('link', { name: /a letter from/ }).click();
    await desk.getByRole('link', { name: /\.pdf/ }).first().waitFor();
    expect(await findings(desk)).toEqual([]);
  });

  it('the main button of the booking is reached with the keyboard', async () => {
    await desk.goto(`/book?dog=${asleep.dog.id}`);
    await see(desk, 'Asked on the phone');
    await tabTo(desk, '[type=submit]');
    await desk.keyboard.press('Enter');
    await see(desk, 'things missing:');
  });

  it('no page is wider than its window, on a phone, a tablet and a desktop', async () => {
    for (const width of [390, 1024, 1440]) {
      await desk.setViewportSize({ width, height: 900 });
      for (const address of ['/', `/book?dog=${asleep.dog.id}`, `/orders/${asleep.id}`, '/orders', '/dogs', '/mailbox', '/practice']) {
        await desk.goto(address);
        await desk.getByRole('heading', { level: 1 }).waitFor();
        await desk.waitForLoadState('networkidle');
        expect([width, address, await desk.locator('html').evaluate((html) => html.scrollWidth)]).toEqual([width, address, width]);
      }
    }
  }, 120_000);

  it('the first page needs little script', async () => {
    const html = await readFile(path.join(pages, 'index.html'), 'utf8');
    const first = [...html.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(([, file]) => file!);
    const sizes = await Promise.all(first.map(async (file) => gzipSync(await readFile(path.join(pages, file))).length));
    expect(first.length).toBeGreaterThan(0);
    expect(sizes.reduce((a, b) => a + b, 0)).toBeLessThan(FIRST_PAGE);
  });

  async function linkTo(address: string): Promise<string> {
    const { text } = await stage.server.mail.wait(address, /visit on/);
    return /http:\/\/\S+\/o\/[\w-]+/.exec(text)![0];
  }
});
