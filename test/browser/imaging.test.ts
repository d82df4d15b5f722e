import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { aRadiograph, shades } from '#test/peers/support/a-film';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { getRead } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate, takeView, watch } from '#test/support/visit-legs';
import { see, tabTo } from './support/moves.js';
import { desktop, phone, Stage, tablet } from './support/stage.js';

const SIZE = 300;
/** Three bands so alike that a copy in 8 bits makes one shade of them: 4 of 4096 values apart. */
const BANDS = [1000, 1004, 1008];

/** A film of 12 bits kept in 16; `shift` tells one from the other. */
function film(shift: number): Promise<Buffer> {
  const values = Uint16Array.from({ length: SIZE * SIZE }, (_, i) => BANDS[Math.floor((i % SIZE) / 100)]! + shift);
  values[0] = 0;
  values[1] = 4095;
  return sharp(values, { raw: { width: SIZE, height: SIZE, channels: 1 } }).toColourspace('grey16').png().toBuffer();
}

/** What stands on the n-th canvas in the middle of each band, and where the first band ends. */
const onCanvas = (page: Page, n = 0): Promise<{ greys: number[]; edge: number }> =>
  page.evaluate(`(() => {
    const canvas = document.querySelectorAll('.film-canvas')[${n}];
    const scale = Math.min(canvas.width, canvas.height) / ${SIZE};
    const row = canvas.getContext('2d').getImageData(0, Math.floor(canvas.height / 2), canvas.width, 1).data;
    const at = (x) => row[4 * Math.floor(canvas.width / 2 + x * scale)];
    let edge = Math.floor(canvas.width / 2);
    while (edge > 0 && row[4 * edge] === row[4 * Math.floor(canvas.width / 2)]) edge--;
    return { greys: [-100, 0, 100].map(at), edge };
  })()`);
/** Resolves with the first frame in which it holds. A page lets nobody evaluate text, so it is not asked by way of the page. */
const until = (page: Page, holds: string) =>
  page.evaluate(`new Promise((done) => {
    const look = () => (${holds} ? done() : requestAnimationFrame(look));
    look();
  })`);
/** Resolves once the canvas shows three shades, each brighter than the one before. */
const threeShades = (page: Page, n = 0) =>
  until(page, `(() => {
    const canvas = document.querySelectorAll('.film-canvas')[${n}];
    if (!canvas || canvas.width < 10) return false;
    const scale = Math.min(canvas.width, canvas.height) / ${SIZE};
    const row = canvas.getContext('2d').getImageData(0, Math.floor(canvas.height / 2), canvas.width, 1).data;
    const [a, b, c] = [-100, 0, 100].map((x) => row[4 * Math.floor(canvas.width / 2 + x * scale)]);
    return a < b && b < c && c < 255 && a > 5;
  })()`);
const shown = (page: Page, label: string) => page.locator('.film-box[data-shown=film]').and(page.getByRole('group', { name: new RegExp(`^${label}`) }));

describeWithPeer('chromium', 'one screen in a dark room', (chromium) => {
  let stage: Stage;
  let road: Road;
  let page: Page;
  const verdicts = () => stage.server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type: 'verdictGiven' }, orderBy: { rec: 'asc' } }));
  const scheme = () => page.evaluate(`getComputedStyle(document.documentElement).colorScheme`);
  const findings = async () => {
    const { violations } = await new AxeBuilder({ page }).analyze();
    return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)}`));
  };

  /** Nothing but keys. */
  async function takeIn(content: Buffer, name = 'film.png', also?: () => Promise<void>): Promise<void> {
    await watch(road);
    await page.keyboard.press('u');
    await page.locator('.act-panel').waitFor();
    await tabTo(page, '.drop .btn');
    const chooser = page.waitForEvent('filechooser');
    await page.keyboard.press('Enter');
    await (await chooser).setFiles({ name, mimeType: name.endsWith('.png') ? 'image/png' : 'application/dicom', buffer: content });
    await see(page, '300 × 300');
    await also?.();
    await tabTo(page, '.act-panel [role=radiogroup]');
    await page.keyboard.press('l');
    await tabTo(page, '.act-panel [type=submit]');
    await page.keyboard.press('Enter');
    await page.locator('.act-panel').waitFor({ state: 'detached' });
  }

  async function choose(label: string, option: string): Promise<void> {
    await page.getByRole('button', { name: label }).press('Enter');
    await page.getByRole('option', { name: option }).press('Enter');
    await page.getByRole('listbox').waitFor({ state: 'detached' });
  }

  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Wenna', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    page = await stage.person(road.slot.operator.name, desktop);
    await page.emulateMedia({ colorScheme: 'light' });
  }, 120_000);
  afterAll(async () => { await stage.close(); });

  it('opens from the day board, dark however light the desk is, and says what comes next', async () => {
    await page.getByRole('row', { name: /Wenna/ }).getByRole('link', { name: 'Imaging screen' }).press('Enter');
    await see(page, 'There is no picture yet.');
    await see(page, 'Extended, from below');
    expect(await scheme()).toBe('dark');
    await page.getByRole('button', { name: 'Stop imaging' }).waitFor();
    expect(await page.getByText(/countdown|score|seconds/i).count()).toBe(0);
  });

  it('takes in a picture, shows it by itself, and brings out shades that a copy in 8 bits has lost', async () => {
    await takeIn(await film(0));
    const box = shown(page, 'Extended, attempt 1');
    await box.waitFor();
    await box.focus();
    for (let i = 0; i < 32; i++) await page.keyboard.press('Shift+ArrowLeft');
    for (let i = 0; i < 5; i++) await page.keyboard.press('Shift+ArrowUp');
    await threeShades(page);
    await page.keyboard.press('i');
    await until(page, `[...document.querySelectorAll('[aria-pressed=true]')].some((b) => b.textContent.startsWith('Black for white'))`);
    await page.keyboard.press('i');
    await threeShades(page);
  }, 60_000);

  it('asks why before a retake, and takes the reason by its number', async () => {
    await page.keyboard.press('r');
    await see(page, 'Why a retake? Choose one or more of the reasons, then press R again.');
    expect(await verdicts()).toEqual([]);
    await page.keyboard.press('4');
    await page.keyboard.press('r');
    await see(page, 'To be taken again.');
    await see(page, 'to be taken again after attempt 1');
    expect((await verdicts()).map((f) => f.body)).toMatchObject([{ verdict: 'retake', reasons: [expect.stringMatching(/^Pelvis level/)] }]);
  });

  it('shows the second attempt beside the first, and whichever is moved, both move', async () => {
    await takeIn(await film(1), 'film.png', async () => {
      await see(page, 'It holds only for a picture that was exported pixel for pixel');
      await choose('Size of its pixels', 'Exported pixel for pixel: X-ray table 1, pixels of 0.14 mm');
      await choose('Which way it lies', 'The dog’s left at the right edge, the tail at the lower edge.');
      expect(await findings()).toEqual([]);
    });
    await shown(page, 'Extended, attempt 2').waitFor();
    await road.look('operator');
    expect(road.screen.exposures.map((e) => e.stated)).toEqual([null, { pixelMm: 0.14, right: 'left', lower: 'tail', detector: 'X-ray table 1' }]);
    await page.keyboard.press('s');
    await shown(page, 'Extended, attempt 1').waitFor();
    // The window goes with the hand, not with the film.
    for (const n of [0, 1]) await threeShades(page, n);
    const before = await onCanvas(page);
    expect((await onCanvas(page, 1)).edge).toBe(before.edge);
    await shown(page, 'Extended, attempt 1').focus();
    await page.keyboard.press('+');
    await until(page, `(() => {
      const edges = [...document.querySelectorAll('.film-canvas')].map((canvas) => {
        const middle = Math.floor(canvas.width / 2);
        const row = canvas.getContext('2d').getImageData(0, Math.floor(canvas.height / 2), canvas.width, 1).data;
        let edge = middle;
        while (edge > 0 && row[4 * edge] === row[4 * middle]) edge--;
        return edge;
      });
      return edges[0] === edges[1] && edges[0] !== ${before.edge};
    })()`);
    expect(await findings()).toEqual([]);
    await page.keyboard.press('s');
    await shown(page, 'Extended, attempt 1').waitFor({ state: 'detached' });
  }, 120_000);

  it('accepts with one key, takes that back with one, and accepts again; each is written down', async () => {
    await page.keyboard.press('a');
    await see(page, 'Accepted.');
    await see(page, 'accepted, attempt 2');
    await page.keyboard.press('z');
    await see(page, 'Taken back. The picture waits to be judged.');
    await see(page, 'to be judged, attempt 2');
    await page.keyboard.press('a');
    await see(page, 'accepted, attempt 2');
    expect((await verdicts()).map((f) => (f.body as { verdict: string }).verdict)).toEqual(['retake', 'accept', 'undecided', 'accept']);
    await road.look('operator');
    expect(road.screen.exposures.map((e) => e.verdicts.map((v) => v.verdict))).toEqual([['retake'], ['accept']]);
    expect(road.screen.happened.map((h) => h.what)).toContain('Hips, laxity: verdict on a film taken back');
  });

  it('shows a picture that somebody else takes in, as it comes', async () => {
    await takeView(road, 'vdCompression');
    await shown(page, 'Compression, attempt 1').waitFor();
  }, 60_000);

  it('says what the file of an X-ray machine says of its exposure and of which way up it is, and how far to believe it', async () => {
    const dog = { ...aRadiograph().dog, animalId: road.screen.dog.animalId };
    await takeIn(writeRadiograph(aRadiograph({ dog, day: road.today, technique: { exposureIndex: 504, targetExposureIndex: 400, deviationIndex: 1 }, pixels: { rows: SIZE, columns: SIZE, bits: 12, values: shades(SIZE, SIZE, 12) } })), 'film.dcm');
    const says = page.getByRole('region', { name: 'What the file says' });
    await says.waitFor();
    expect(await says.innerText()).toContain('Exposure index 504. The machine aims for 400. Deviation index +1.0: 26 % more than it aims for.');
    expect(await says.innerText()).toContain('To the right edge: the dog’s left. To the lower edge: the tail.');
    expect(await says.innerText()).toContain('the marker counts');
    expect(await findings()).toEqual([]);
  }, 60_000);

  it('opens the points on the same picture, and keeps its own Undo there', async () => {
    await page.keyboard.press('p');
    const picture = page.locator('.mark-over svg');
    await picture.waitFor();
    await page.getByRole('button', { name: 'Set a point in the middle' }).click();
    expect(await page.locator('[data-point]').count()).toBe(1);
    await picture.focus();
    await page.keyboard.press('z');
    await page.locator('[data-point]').waitFor({ state: 'detached' });
    expect(await findings()).toEqual([]);
    await page.getByRole('button', { name: 'Points', exact: true }).click();
    await picture.waitFor({ state: 'detached' });
  }, 30_000);

  it('is for everybody’s use, light as well, and no wider than its window', async () => {
    await page.getByRole('button', { name: 'Light screen' }).click();
    expect(await scheme()).toBe('light');
    expect(await findings()).toEqual([]);
    for (const { viewport } of [phone, tablet, desktop]) {
      await page.setViewportSize(viewport!);
      expect(await page.locator('html').evaluate((html) => html.scrollWidth)).toBe(viewport!.width);
      expect(await page.getByRole('button', { name: 'Stop imaging' }).isVisible()).toBe(true);
    }
    await page.getByRole('button', { name: 'Dark screen' }).click();
  }, 60_000);

  it('stops without a network, at a touch, and the dog goes on to wake', async () => {
    await page.context().setOffline(true);
    await page.getByRole('button', { name: 'Stop imaging' }).press('Enter');
    await page.getByRole('button', { name: 'Stop imaging' }).waitFor({ state: 'detached' });
    await see(page, /1 entry waits on this tablet/);
    await page.context().setOffline(false);
    await page.locator('.on-tablet').waitFor({ state: 'detached' });
    await road.look('operator');
    expect(road.visit.step).toBe('imaged');
  }, 60_000);

  it('no page complained', () => expect(stage.complaints).toEqual([]));

  it('gives the reader the same window and level', async () => {
    const other = await Road.book(stage.server, { dog: 'Moss', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    await ownerSigns(other);
    await other.untilVisit();
    await admit(other);
    await sedate(other);
    await image(other);
    await goHome(other);
    await getRead(other, other.study().id);
    const reader = await stage.person('Noemi Haskel');
    await reader.getByRole('link', { name: /P-/ }).first().click();
    await reader.locator('.film-box[data-shown=film]').waitFor();
    const grey = () => reader.evaluate<number>(`document.querySelector('.film-canvas').getContext('2d').getImageData(document.querySelector('.film-canvas').width / 2, 10, 1, 1).data[0]`);
    await until(reader, `document.querySelector('.film-canvas').width > 10 && document.querySelector('.film-canvas').getContext('2d').getImageData(document.querySelector('.film-canvas').width / 2, 10, 1, 1).data[0] > 5`);
    const before = await grey();
    await reader.getByRole('slider', { name: 'Level' }).press('End');
    await until(reader, `document.querySelector('.film-canvas').getContext('2d').getImageData(document.querySelector('.film-canvas').width / 2, 10, 1, 1).data[0] > ${before}`);
  }, 120_000);
});
