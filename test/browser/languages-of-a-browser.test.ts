import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { centres } from '#seed/centre';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { dispatch, readings, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';
import { see } from './support/moves.js';
import { desktop, Stage } from './support/stage.js';

const findings = async (page: Page) => (await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze()).violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)}`));

describeWithPeer('chromium', 'somebody without an account', (chromium) => {
  let stage: Stage;
  let road: Road;
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 0 });
    await throughTheVisit(road);
  }, 120_000);
  afterAll(async () => { await stage.close(); });

  it('behind the link of a package reads German once it was chosen, after a reload and at the next link too', async () => {
    const study = road.study().id;
    const reader = await dispatch(road, study);
    const centre = centres.find((c) => c.name === road.study().centre.name)!;
    const link = /\/r\/[\w-]+/.exec((await stage.server.mail.wait(`films@${centre.mail}`, /^Package/)).text)![0];
    const page = await stage.window();
    const open = async (button: string) => {
      await page.goto(link);
      await page.getByRole('button', { name: button }).click();
    };
    await open('Open the package');
    await page.getByRole('button', { name: 'Deutsch' }).click();
    await see(page, 'Abmelden');
    await page.reload();
    await see(page, 'Abmelden');
    expect(await page.evaluate('document.documentElement.lang')).toBe('de');
    expect(((await (await page.request.get('/api/me')).json()) as { language: string }).language).toBe('de');
    await page.getByRole('button', { name: 'Abmelden' }).click();
    await open('Das Paket öffnen');
    await see(page, 'Abmelden');
    const other = await stage.window();
    await other.goto(link);
    await see(other, 'Open the package');
    await reader.acknowledge();
    await reader.reads({ joints: readings.elbow! });
    await road.look('vet');
  }, 90_000);

  it('checks an English certificate in a German browser: each line as it is printed, and what it says', async () => {
    await release(road, road.study().id);
    await road.look();
    const page = await stage.window({ ...desktop, locale: 'de-DE' });
    await page.goto(`/c/${road.screen.documents.find((d) => d.serial)!.serial}`);
    await see(page, 'Es gilt noch.');
    await see(page, 'Das Papier ist auf Englisch geschrieben.');
    const line = page.locator('.cert-facts > div').filter({ hasText: 'Left elbow' });
    expect((await line.innerText()).split('\n').map((words) => words.trim())).toEqual(['Left elbow', 'Linker Ellbogen', expect.stringMatching(/^grade 0; /), expect.stringMatching(/^Grad 0; /)]);
    expect(await line.locator('[lang=en]').allTextContents()).toEqual(['Left elbow', expect.stringMatching(/^grade 0; /)]);
    expect(await page.evaluate('document.documentElement.lang')).toBe('de');
    expect(await findings(page)).toEqual([]);
  });

  it('complained about nothing', () => expect(stage.complaints).toEqual([]));
});
