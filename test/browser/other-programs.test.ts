import type { Page } from 'playwright-core';
import { describeWithPeer } from '#test/support/peers';
import { Receiver } from '#test/support/receiver';
import { Road } from '#test/support/road';
import { throughTheVisit } from '#test/support/visit-legs';
import { dicomwebCentre } from '#test/medium/channels-support/dicomweb-centre';
import type { Centre } from '#test/medium/channels-support/centre';
import { findings } from './support/findings.js';
import { act, choose, done, panel, see } from './support/moves.js';
import { phone, Stage } from './support/stage.js';

describeWithPeer('chromium', 'other programs, on the practice’s page', (chromium) => {
  let stage: Stage;
  let manager: Page;
  let receiver: Receiver;
  let archive: Centre;
  const sheet = (title: string) => manager.locator('.sheet').filter({ has: manager.getByRole('heading', { name: title, exact: true }) });
  const clipboard = () => manager.evaluate<string>('navigator.clipboard.readText()');
  const leaveAndComeBack = async () => {
    await manager.getByRole('link', { name: 'Mailbox' }).click();
    await manager.goBack();
    await manager.getByRole('heading', { name: 'Programs that read here' }).waitFor();
  };
  /** What the sheet has come to, in the practice's eyes: no fault, and no sideways scrolling. */
  const isFine = async () => {
    expect(await findings(manager)).toEqual([]);
    expect(await manager.locator('html').evaluate((html) => html.scrollWidth - html.clientWidth)).toBe(0);
  };

  beforeAll(async () => {
    receiver = await new Receiver().start();
    archive = await dicomwebCentre();
    stage = await Stage.open(chromium, { allow: [receiver.place, new URL(archive.channel.address!).host] });
    manager = await stage.person('Hedda Lorne');
    await manager.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await manager.goto('/practice');
    await manager.getByRole('heading', { name: 'Programs that read here' }).waitFor();
  }, 90_000);
  afterAll(async () => {
    await stage.close();
    await archive.close();
    receiver.close();
  });

  it('a key wants a name and a right; it is made, shown once, copied, works, and is ended', async () => {
    const keys = sheet('Programs that read here');
    await keys.getByRole('button', { name: 'Make a key' }).click();
    await keys.getByRole('button', { name: 'Make this key' }).click();
    await see(manager, '2 things missing:');
    await isFine();
    await keys.getByLabel('Which program, and where it runs').fill('Practice software, at the desk');
    await keys.getByText('Read orders: dogs').click();
    await keys.getByRole('button', { name: 'Make this key' }).click();
    await see(manager, 'The key of Practice software, at the desk.');
    const key = await keys.locator('.secret code').innerText();
    expect(key).toMatch(/^cotyla_/);
    await keys.getByRole('button', { name: 'Copy the key of Practice software, at the desk' }).click();
    await see(manager, 'Copied.');
    expect(await clipboard()).toBe(key);
    await isFine();
    const asks = () => fetch(`${stage.server.url}/fhir/ServiceRequest`, { headers: { authorization: `Bearer ${key}` } }).then((answer) => answer.status);
    expect(await asks()).toBe(200);
    await leaveAndComeBack();
    await keys.getByRole('rowheader', { name: 'Practice software, at the desk' }).waitFor();
    expect(await manager.content()).not.toContain(key);
    await keys.getByRole('button', { name: 'End the key of Practice software, at the desk now' }).click();
    await see(manager, 'No key yet');
    expect(await asks()).toBe(401);
    await isFine();
  }, 120_000);

  it('an address is entered, its secret shown once and copied; a test call says what came of it; it gets a new secret, and is ended', async () => {
    const told = sheet('Programs that are told');
    await told.getByRole('button', { name: 'Add an address' }).click();
    await told.getByLabel('Which program').fill('Practice software');
    await told.getByLabel('Address that is called').fill('https://10.0.0.9/told');
    await told.getByText('A dog went home').click();
    await told.getByRole('button', { name: 'Call this address' }).click();
    await see(manager, /leads into the server’s own network/);
    await isFine();
    await told.getByLabel('Address that is called').fill(receiver.address);
    await told.getByRole('button', { name: 'Call this address' }).click();
    await see(manager, 'The secret of Practice software.');
    const secret = await told.locator('.secret code').innerText();
    receiver.answer = 401;
    await told.getByRole('button', { name: 'Send a test call to Practice software' }).click();
    await see(manager, /Test call, .*: 127\.0\.0\.1:\d+ is reached, and refuses the name, password or key \(401\)\./);
    expect(await told.locator('.secret code').innerText()).toBe(secret);
    await told.getByRole('button', { name: 'Copy the secret of Practice software' }).click();
    await see(manager, 'Copied.');
    expect(await clipboard()).toBe(secret);
    receiver.answer = 204;
    await told.getByRole('button', { name: 'Send a test call to Practice software' }).click();
    await see(manager, /Test call, .*: It was taken \(204\)\./);
    expect(receiver.heard.map(({ body }) => (JSON.parse(body) as { test: boolean }).test)).toEqual([true, true]);
    await told.getByText('What was told lately').click();
    expect(await told.getByRole('row', { name: /No order/ }).count()).toBe(2);
    await isFine();
    await told.getByRole('button', { name: 'New secret for Practice software' }).click();
    await told.locator('.secret code').filter({ hasNotText: secret }).waitFor();
    const fresh = await told.locator('.secret code').innerText();
    await leaveAndComeBack();
    await see(manager, /The secret before holds until/);
    expect(await manager.content()).not.toContain(secret);
    expect(await manager.content()).not.toContain(fresh);
    await told.getByRole('button', { name: 'Tell Practice software nothing from now on' }).click();
    await see(manager, 'No address yet');
    await isFine();
  }, 120_000);

  it('the line to a centre is tried before a film depends on it, and what it says comes with what to do', async () => {
    const centres = sheet('Centres');
    const threnfold = centres.locator('.centre').filter({ hasText: 'Threnfold' });
    expect(await threnfold.getByRole('button', { name: /^Try the connection/ }).count()).toBe(0);
    const enter = async (password: string) => {
      await threnfold.getByRole('button', { name: 'Change how films go there' }).click();
      await choose(manager, 'Films go by', 'DICOMweb: into the centre’s archive (STOW-RS)');
      await threnfold.getByLabel('Address of the DICOMweb service').fill(archive.channel.address!);
      await threnfold.getByLabel('Name to sign in with').fill('practice');
      await threnfold.getByLabel('Password or token').fill(password);
      await threnfold.getByRole('button', { name: 'Send this way from now on' }).click();
      await threnfold.getByRole('button', { name: 'Try the connection to Reading centre, Threnfold' }).click();
    };
    await enter('not the word');
    await see(manager, /refuses the name, password or key \(401\)\. Ask there for the right ones/);
    await isFine();
    await enter('word');
    await see(manager, /is reached, lets us in and answers\. Nothing of a dog was sent\. Tried by Hedda Lorne/);
    await isFine();
  }, 120_000);

  it('all of it fits a telephone', async () => {
    const page = await stage.person('Hedda Lorne', phone);
    await page.goto('/practice');
    await page.getByRole('heading', { name: 'Programs that are told' }).waitFor();
    expect(await page.locator('html').evaluate((html) => html.scrollWidth - html.clientWidth)).toBe(0);
    expect(await findings(page)).toEqual([]);
  }, 60_000);

  it('a note that an archive refuses is told by hand, from the order’s page', async () => {
    const on = await Road.book(stage.server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 0 });
    await throughTheVisit(on);
    await on.act('desk', 'seal', on.study().id, {});
    await on.act('desk', 'send', on.study().id, {});
    await stage.server.settled();
    archive.refuse(1);
    await on.look('operator');
    await on.act('operator', 'disownFilm', on.visit.id, { exposure: on.screen.exposures[0]!.id, reason: 'otherDog' });
    await stage.server.settled();
    const desk = await stage.person(on.name('desk'));
    await desk.goto(`/orders/${on.id}`);
    await see(desk, 'The archive took no note');
    await see(desk, /The archive does not take the note that 1 film is not to be used any more\./);
    expect(await findings(desk)).toEqual([]);
    await act(desk, 'Centre was told by phone or mail');
    await panel(desk).getByText('By phone', { exact: true }).click();
    await panel(desk).getByLabel('Who at the centre was told').fill('The reading room');
    await done(desk, 'Centre was told by phone or mail');
    await see(desk, /told The reading room at the centre by phone on .* not to use 1 film any more\. This film is of another dog\./);
    expect(await desk.getByText('The archive took no note').count()).toBe(0);
    expect(await findings(desk)).toEqual([]);
  }, 120_000);

  it('no page complained', () => expect(stage.complaints).toEqual([]));
});
