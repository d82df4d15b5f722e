import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { getRead, release } from '#test/support/study-legs';
import { admit, ownerSigns, sedate, takeView, throughTheVisit } from '#test/support/visit-legs';
import { findings } from './support/findings.js';
import { see, tabTo } from './support/moves.js';
import { phone, Stage } from './support/stage.js';

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

  it('choosing a share', async () => {
    const page = await stage.person('Oda Fering');
    await page.getByRole('link', { name: 'Choosing a share to breed from' }).click();
    await see(page, 'The breed and the share');
    expect(await findings(page)).toEqual([]);
  });

  it('times and readers, with a reading round', async () => {
    const page = await stage.person('Oda Fering');
    await page.goto('/scheme/readers');
    await page.getByRole('button', { name: /Study/ }).click();
    await page.getByRole('option', { name: 'Hips, laxity' }).click();
    await page.getByLabel('Readings').fill('0.40 0.42\n0.55 0.52\n0.31 0.30');
    await page.getByRole('button', { name: 'Show how well they agree' }).click();
    await see(page, 'Two readings of one film differ');
    expect(await findings(page)).toEqual([]);
  });

  it('fees of an order, with a charge that nobody has agreed to and a form open', async () => {
    await desk.goto(`/orders/${read.id}/fees`);
    await desk.getByRole('button', { name: 'Charge something else' }).click();
    await desk.getByRole('textbox', { name: 'What for' }).fill('Clipping a nail');
    await desk.getByRole('textbox', { name: 'Amount, with tax' }).fill('25.00');
    await desk.getByRole('textbox', { name: 'Why it is not in the estimate' }).fill('Torn on arrival.');
    await desk.getByRole('button', { name: 'Charge this' }).click();
    await see(desk, '25.00 is open');
    await desk.getByRole('button', { name: 'Write down a payment' }).click();
    await see(desk, 'Number of the receipt');
    expect(await findings(desk)).toEqual([]);
  });

  it('a bill of a centre, from a file with a wrong row to the lines that fit and do not', async () => {
    await desk.goto('/fees/centres/new');
    await desk.getByRole('button', { name: /Centre/ }).click();
    await desk.getByRole('option', { name: 'Reading centre, Threnfold' }).click();
    await desk.getByText('Lines from a file').click();
    const rows = (amount: string) => `reference;study;amount\n${read.screen.accession};Elbows;58,00\nP-00000000;Elbows;${amount}\n`;
    await desk.getByRole('textbox', { name: 'Rows of the file' }).fill(rows('fifty'));
    await desk.getByRole('button', { name: 'Look at these rows' }).click();
    await see(desk, 'Row 3: “fifty” is no amount.');
    expect(await findings(desk)).toEqual([]);
    await desk.getByRole('textbox', { name: 'Rows of the file' }).fill(rows('58.00'));
    await desk.getByRole('button', { name: 'Look at these rows' }).click();
    await see(desk, '2 rows, ALM 116.00.');
    await desk.getByRole('textbox', { name: 'Number of the bill' }).fill('T-7');
    await desk.getByRole('spinbutton', { name: /day, Dated/ }).click();
    await desk.keyboard.type(read.today.split('-').reverse().join(''));
    await desk.getByRole('button', { name: 'Enter this bill' }).click();
    await desk.getByRole('heading', { name: 'Bill T-7' }).waitFor();
    await desk.getByRole('button', { name: 'Match line 2' }).click();
    await see(desk, 'It is for this study');
    expect(await findings(desk)).toEqual([]);
    await desk.goto('/fees/centres?show=unmatched');
    await see(desk, 'is no order and no package of yours');
    expect(await findings(desk)).toEqual([]);
  });

  it('help, with where a study comes from open', async () => {
    await desk.goto('/help');
    await desk.getByText('Where this comes from').first().click();
    expect(await findings(desk)).toEqual([]);
  });

  it('the tour, and what a number means', async () => {
    await desk.goto('/');
    await desk.getByRole('button', { name: 'Next' }).click();
    await see(desk, /^2 of 5\./);
    expect(await findings(desk)).toEqual([]);
    await desk.getByRole('button', { name: 'Leave the tour' }).click();
    await desk.reload();
    await desk.getByRole('heading', { level: 1 }).waitFor();
    expect(await desk.getByRole('button', { name: 'Leave the tour' }).count()).toBe(0);
    await desk.goto(`/orders/${read.id}`);
    await desk.getByRole('button', { name: 'What does this number mean?' }).first().click();
    await see(desk, 'How far two readings differ.');
    expect(await findings(desk)).toEqual([]);
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
      for (const address of ['/', `/book?dog=${asleep.dog.id}`, `/orders/${asleep.id}`, '/orders', '/dogs', '/mailbox', '/practice', '/help', '/fees', '/fees/centres', '/fees/centres/new', `/orders/${read.id}/fees`]) {
        await desk.goto(address);
        await desk.getByRole('heading', { level: 1 }).waitFor();
        // A page with an open line to the server is never without network.
        await desk.locator('[role=status].loading').first().waitFor({ state: 'detached' }).catch((cause: unknown) => { throw new Error(`${address} goes on loading at a width of ${width}.`, { cause }); });
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
