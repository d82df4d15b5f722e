import type { Page } from 'playwright-core';
import { aFilm } from '#test/support/film';
import { describeWithPeer } from '#test/support/peers';
import { readPdf } from '#test/support/read-pdf';
import { act, actAtOnce, answer, choose, done, linkInMail, panel, see, tabTo } from './support/moves.js';
import { phone, Stage, tablet } from './support/stage.js';

const OWNER = 'Teres Vint';
const TRANSPONDER = '999 000 001 406 672';
/** Keystroke-level model: a key of an average typist, and a moment of thought (Card, Moran and Newell, Commun ACM 1980;23:396-410; values from memory). */
const [KEY_SECONDS, THOUGHT_SECONDS] = [0.28, 1.35];
/** Invented, so that no number here can be taken for a dose. */
const DRUG = 'Example sedative (invented)';

// Each test is the next part of one road; the next person comes to the page that the one before has left.
describeWithPeer('chromium', 'a dog from the front desk to the letter, by clicking and typing', (chromium) => {
  let stage: Stage;
  let desk: Page;
  let owner: Page;
  let nurse: Page;
  let vet: Page;
  let operator: Page;
  let order: string;

  beforeAll(async () => { stage = await Stage.open(chromium); }, 90_000);
  afterAll(async () => { await stage.close(); });

  it('is booked at the desk with the keyboard alone, in less than a minute of a person’s hands and thought', async () => {
    desk = await stage.person('Marit Oskar');
    const keys = desk.keyboard;
    await desk.evaluate('addEventListener("keydown", () => { window.pressed = (window.pressed ?? 0) + 1; }, true)');
    await see(desk, 'Nothing has been booked for this day.');
    await keys.press('b');
    await desk.getByRole('heading', { name: 'Book a visit' }).waitFor();
    await keys.type('Juniper');
    await desk.getByRole('button', { name: 'Juniper of Upland Farm' }).waitFor();
    await keys.press('Tab');
    await keys.press('Enter');
    await see(desk, 'Old enough: 12 months needed. Two views.');
    await tabTo(desk, '.study:has-text("Elbows")');
    await keys.press('Space');
    await see(desk, 'The number chooses.');
    await tabTo(desk, '.slots');
    await keys.press('1');
    const asked = await desk.locator('.qs > li').count();
    for (let n = 1; n <= asked; n++) {
      await tabTo(desk, `.qs > li:nth-child(${n})`);
      await keys.press(n === asked ? 'd' : 'n');
    }
    await see(desk, 'A vet asks and decides, before the dog sleeps.');
    await tabTo(desk, '.field:has-text("Preparation advice")');
    await keys.press('Enter');
    await desk.getByRole('option').first().waitFor();
    await keys.press('Enter');
    await see(desk, 'After booking: 2 holds stay.');
    await keys.press('Control+Enter');
    await desk.waitForURL(/\/orders\//);
    await see(desk, 'Estimate not accepted.');
    order = new URL(desk.url()).pathname;
    // The owner, the study, the time, the advice and each question are thought about once.
    const thoughts = 4 + asked;
    const pressed = Number(await desk.evaluate('window.pressed'));
    expect(pressed).toBeGreaterThan(asked);
    expect(pressed * KEY_SECONDS + thoughts * THOUGHT_SECONDS).toBeLessThan(60);
  }, 90_000);

  it('stands on the day board with what it waits for', async () => {
    await desk.getByRole('link', { name: 'Today' }).click();
    await desk.getByRole('link', { name: 'Juniper' }).waitFor();
    await see(desk, /1 visit/);
    expect(await desk.getByRole('row', { name: /Juniper/ }).innerText()).toMatch(/Elbows[^]*“Don’t know” to a health question|Elbows[^]*Estimate not accepted/);
  });

  it('is answered for, paid for and signed for by the owner, on a phone, behind the link of the mail', async () => {
    await stage.server.mail.wait('teres@vint.example', /visit on/);
    const link = await linkInMail(desk, /Juniper: visit on/, /\/o\//);
    expect(await desk.getByRole('link', { name: 'invitation.ics' }).count()).toBe(1);
    owner = await stage.window(phone);
    await owner.goto(link);
    await owner.getByRole('button', { name: 'Open my dog’s page' }).click();
    await see(owner, 'What we ask of you');
    await see(owner, 'Approved by');
    await answer(owner, /Any operation/, 'No');
    await owner.getByRole('button', { name: 'Send my answers' }).click();
    await see(owner, 'Your answers have reached the practice.');
    await owner.getByRole('button', { name: 'I accept ALM 265.10' }).click();
    await see(owner, 'You said yes to this estimate.');
    for (const purpose of [/Sedation for the pictures/, /Elbow grading/, /Every film taken is sent/, /Counting in the picture/]) await answer(owner, purpose, 'Yes');
    await answer(owner, /heart or breathing stops/, 'Yes');
    await owner.getByLabel(/Up to how much may help cost/).fill('600');
    await owner.getByLabel('A number where you answer on that day').fill('0475 30 19');
    await owner.getByLabel('Who may fetch the dog').fill(OWNER);
    await owner.getByRole('button', { name: 'Sign my answers' }).click();
    await see(owner, 'Your signature is missing.');
    await owner.getByLabel('Name of the person who signs').fill(OWNER);
    await owner.getByRole('button', { name: 'Sign my answers' }).click();
    await see(owner, 'Signed. Your decisions have reached the practice');
    expect(await owner.locator('.decided').count()).toBe(4);
  }, 90_000);

  it('is admitted and scanned by the nurse', async () => {
    await stage.server.until(new Date(stage.server.clock.now().getTime() + 30 * 60_000));
    nurse = await stage.person('Lio Sand', tablet);
    await nurse.getByRole('link', { name: 'Juniper' }).click();
    await act(nurse, 'Admit');
    await panel(nurse).getByRole('button', { name: 'Admit' }).click();
    await see(nurse, '3 things missing:');
    await nurse.getByLabel('Weight today').fill('24');
    await nurse.getByLabel('Hours without food').fill('10');
    await answer(nurse, /Body condition/, '5');
    await done(nurse, 'Admit');
    await scan(nurse);
    await see(nurse, 'matches the order');
    await act(nurse, 'Answer questions');
    for (const no of await panel(nurse).getByText('No', { exact: true }).all()) await no.click();
    await done(nurse, 'Answer questions');
    await see(nurse, 'Not examined yet.');
  }, 90_000);

  it('is examined, and sleeps by a plan whose arithmetic the vet has seen', async () => {
    vet = await stage.person('Ruan Tiedt', tablet);
    await vet.getByRole('link', { name: 'Juniper' }).click();
    await act(vet, 'Examine');
    await vet.getByLabel('Heart, lungs, temperature, findings').fill('Heart and lungs without findings.');
    await panel(vet).getByText('Healthy', { exact: true }).click();
    await done(vet, 'Examine');
    await act(vet, 'Sign plan');
    await vet.getByLabel('Drug', { exact: true }).fill(DRUG);
    await vet.getByLabel('Route').fill('as the vet decides');
    await vet.getByLabel('Dose', { exact: true }).fill('1');
    await choose(vet, 'Dose in', 'mg/kg');
    await vet.getByLabel('Strength on the bottle').fill('100');
    await choose(vet, 'Strength in', 'mg/mL');
    await choose(vet, 'Syringe read to', '0.01 mL');
    // 24 kg × 1 mg/kg = 24 mg; 24 mg ÷ 100 mg/mL = 0.24 mL: computed by hand.
    await see(vet, /To draw up: 0\.24\smL\. Back again: 1\smg\/kg/);
    expect(await panel(vet).locator('.sums').innerText()).toMatch(/24\smg ÷ 100\smg\/mL = 0\.24\smL/);
    await panel(vet).getByText('I am the vet here today').click();
    await done(vet, 'Sign plan');
    await actAtOnce(vet, 'Start sedation');
    await see(vet, 'Juniper is asleep');
  }, 90_000);

  it('is watched, with “Stop imaging” in sight of everybody', async () => {
    await nurse.reload();
    await act(nurse, 'Take reading');
    await nurse.getByLabel('Heart').fill('74');
    await nurse.getByLabel('Breathing').fill('14');
    await nurse.getByLabel('Oxygen').fill('97');
    await nurse.getByLabel('Temperature').fill('38,1');
    await answer(nurse, 'Gums', 'Pink');
    await done(nurse, 'Keep this reading');
    await see(nurse, '38.1 °C');
    for (const page of [nurse, vet]) {
      const { y, height } = (await page.getByRole('button', { name: 'Stop imaging' }).boundingBox())!;
      expect(y + height).toBeLessThanOrEqual(page.viewportSize()!.height);
    }
    await desk.getByRole('link', { name: 'Today' }).click();
    await desk.getByRole('row', { name: /Juniper.*Now at: sedated|Juniper.*sedated/i }).waitFor();
  }, 60_000);

  it('is imaged with one retake, while it sleeps', async () => {
    operator = await stage.person('Sef Adler', tablet);
    await operator.getByRole('link', { name: 'Juniper' }).click();
    await scan(operator);
    await takeFilm('Elbow, left, bent, from the side', 'L');
    await judge('Retake');
    await see(operator, 'Left elbow on the plate, bent as far as the dog lets it rest');
    await takeFilm('Elbow, left, bent, from the side', 'L');
    await judge('Accept');
    await takeFilm('Elbow, right, bent, from the side', 'R');
    await judge('Accept');
    await see(operator, '3 films');
    await operator.getByRole('button', { name: 'Stop imaging' }).waitFor();
    await actAtOnce(operator, 'End imaging');
    await operator.getByRole('button', { name: 'Stop imaging' }).waitFor({ state: 'detached' });
  }, 90_000);

  it('wakes, and goes home with the sheet', async () => {
    await nurse.reload();
    await act(nurse, 'Sign recovery');
    for (const sign of await panel(nurse).locator('.check').all()) await sign.click();
    await done(nurse, 'Sign recovery');
    await see(nurse, 'Going-home sheet not given.');
    await act(nurse, 'Give going-home sheet');
    await nurse.getByRole('combobox', { name: 'Explained to' }).fill(OWNER);
    await nurse.keyboard.press('Escape');
    await done(nurse, 'Give going-home sheet');
    await act(nurse, 'Send home');
    await nurse.getByLabel('Collected by').fill(OWNER);
    await done(nurse, 'Send home');
    await see(nurse, `Gone home with ${OWNER}`);
  }, 90_000);

  it('has its pictures sealed and sent at the desk, and read by somebody who knows neither owner nor practice', async () => {
    await desk.goto(order);
    await actAtOnce(desk, 'Seal package');
    await actAtOnce(desk, 'Send');
    await see(desk, 'receipt to be confirmed');
    await stage.server.mail.wait('films@sluicegreen.example', /to read/);
    const reader = await stage.window();
    await reader.goto(await linkInMail(desk, /Package P-\w+ to read/, /\/r\//));
    await reader.getByRole('button', { name: 'Open the package' }).click();
    await reader.getByRole('button', { name: 'The package has come' }).click();
    await reader.getByRole('button', { name: 'The package has come' }).waitFor({ state: 'detached' });
    await see(reader, '1 Elbow, left, bent, from the side, attempt 1, then taken again');
    for (const name of [OWNER, 'Weirside', 'Juniper']) expect(await reader.getByText(name).count()).toBe(0);
    await reader.getByRole('button', { name: 'Sign the reading' }).click();
    await see(reader, 'Not signed yet.');
    for (const [joint, grade] of [[0, '0'], [1, '1']] as const) {
      await reader.locator('.joint').nth(joint).getByRole('button', { name: 'Grade' }).click();
      await reader.getByRole('option', { name: grade, exact: true }).click();
    }
    await reader.getByLabel('Signed by').fill('Vera Castine');
    await reader.getByRole('button', { name: 'Sign the reading' }).click();
    await see(reader, 'Signed by Vera Castine');
  }, 90_000);

  it('is told of in a letter that the vet releases: two papers by mail, a result on the owner’s page', async () => {
    await vet.goto(order);
    await actAtOnce(vet, 'Accept result');
    await actAtOnce(vet, 'Release letter');
    await stage.server.mail.wait('teres@vint.example', /a letter/);
    await desk.getByRole('link', { name: 'Mailbox' }).click();
    await desk.getByRole('link', { name: /Juniper: a letter from Weirside/ }).click();
    const attached = desk.getByRole('link', { name: /\.pdf/ });
    await attached.nth(1).waitFor();
    const papers = await attached.all();
    const [letter, certificate] = await Promise.all(papers.map(async (paper) => readPdf(await (await desk.request.get((await paper.getAttribute('href'))!)).body())));
    expect(papers).toHaveLength(2);
    expect(letter!.text).toContain('What the reading cannot tell');
    expect(certificate!.text).toContain('Juniper of Upland Farm');
    await owner.reload();
    await see(owner, 'Right elbow: grade 1');
    await see(owner, 'It does not tell');
  }, 90_000);

  it('has a certificate whose page says to anybody that it still stands', async () => {
    await stage.server.settled();
    await vet.reload();
    const check = await stage.window(phone);
    await check.goto((await vet.locator('a[href^="/c/"]').first().getAttribute('href'))!);
    await see(check, 'It still stands.');
    await see(check, TRANSPONDER);
    await see(check, 'grade 1 (right, the worse elbow)');
    expect(await check.getByText(OWNER).count()).toBe(0);
  }, 60_000);

  it('met no page that broke', () => {
    expect(stage.complaints).toEqual([]);
    expect(stage.server.errors).toEqual([]);
  });

  async function scan(page: Page): Promise<void> {
    await act(page, 'Scan');
    await page.getByLabel('Or type the number').fill(TRANSPONDER);
    await page.getByRole('button', { name: 'Add this number' }).click();
    await done(page, 'Scan');
  }

  async function takeFilm(view: string, side: string): Promise<void> {
    stage.server.clock.advance({ minutes: 3 });
    await act(operator, 'Take view');
    await panel(operator).getByRole('button', { name: `${view} View` }).waitFor();
    const chooser = operator.waitForEvent('filechooser');
    await operator.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles({ name: 'film.png', mimeType: 'image/png', buffer: await aFilm() });
    await see(operator, '240 × 320');
    await answer(operator, 'Side marker seen in the image', side);
    await panel(operator).getByText('Sef Adler').click();
    await operator.getByLabel('Tube voltage').fill('66');
    await done(operator, 'Take view');
  }

  async function judge(verdict: 'Accept' | 'Retake'): Promise<void> {
    await act(operator, 'Accept or retake');
    await answer(operator, 'This picture', verdict);
    if (verdict === 'Retake') await panel(operator).locator('.checks .check').first().click();
    await done(operator, 'Keep this verdict');
  }
});
