import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { describeWithPeer } from '#test/support/peers';
import { see } from './support/moves.js';
import { phone, Stage } from './support/stage.js';

const kept = path.resolve('test/browser/looks');
/** A point differs when a person would see it; letters have soft edges, and another browser draws them a little otherwise. */
const SEEN = 48;
/** Of all points. A heading that moved by a line, another colour or another font is far beyond it. */
const MOST = 0.02;

async function points(picture: Buffer): Promise<{ data: Buffer; size: string }> {
  const { data, info } = await sharp(picture).greyscale().raw().toBuffer({ resolveWithObject: true });
  return { data, size: `${info.width} × ${info.height}` };
}

/** How much of the page looks otherwise than in the kept picture; a page whose look was changed on purpose is kept anew with KEEP_LOOKS=1. */
async function differs(page: Page, name: string, keep = process.env.KEEP_LOOKS === '1'): Promise<number> {
  await page.evaluate('document.fonts.ready');
  const now = await page.screenshot();
  const file = path.join(kept, `${name}.png`);
  if (keep) await writeFile(file, await sharp(now).png({ palette: true, colours: 32, compressionLevel: 9 }).toBuffer());
  const [a, b] = await Promise.all([points(now), points(await readFile(file))]);
  expect(a.size).toBe(b.size);
  return a.data.filter((value, i) => Math.abs(value - b.data[i]!) > SEEN).length / a.data.length;
}

// The fonts are the program's own, so the same letters are drawn on every machine. Pages with days and names of the demo change daily and are not kept.
describeWithPeer('chromium', 'pages that are to look as they did', (chromium) => {
  let stage: Stage;
  beforeAll(async () => { stage = await Stage.open(chromium); }, 120_000);
  afterAll(async () => { await stage.close(); });

  it.each([['light'], ['dark']] as const)('help, in a %s scheme', async (colorScheme) => {
    const page = await stage.person('Hedda Lorne');
    await page.emulateMedia({ colorScheme });
    await page.goto('/help');
    await see(page, /step/i);
    expect(await differs(page, `help-${colorScheme}`)).toBeLessThan(MOST);
  });

  it('sign-in on a phone', async () => {
    const page = await stage.window(phone);
    await page.goto('/sign-in');
    await page.getByLabel('Password').waitFor();
    expect(await differs(page, 'sign-in-phone')).toBeLessThan(MOST);
  });

  it('an empty booking', async () => {
    const page = await stage.person('Marit Oskar');
    await page.goto('/book');
    await see(page, 'Choose the studies');
    expect(await differs(page, 'booking')).toBeLessThan(MOST);
  });

  it('a picture that was changed is told from the kept one', async () => {
    const page = await stage.person('Marit Oskar');
    await page.goto('/book');
    await see(page, 'Choose the studies');
    await page.addStyleTag({ content: 'main { padding-top: 3rem }' });
    expect(await differs(page, 'booking', false)).toBeGreaterThan(MOST);
  });
});
