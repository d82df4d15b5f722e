import { randomUUID } from 'node:crypto';
import request from 'supertest';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, getRead } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

/** A dog whose reading the vet has accepted; its letter waits to be released. */
async function accepted(dog: string): Promise<Road> {
  const road = await Road.book(server, { dog, studies: [['elbow', 'threnfold']], inDays: 1 });
  await throughTheVisit(road);
  await getRead(road, road.study().id);
  await accept(road, road.study().id);
  return road;
}

/** Released, and whatever the mail server made of it has been noted. */
async function released(road: Road): Promise<void> {
  await road.act('vet', 'releaseLetter', road.study().id, {});
  await server.settled();
  await road.look();
}

const lettersTo = (road: Road) => server.mail.to(road.email).filter((m) => m.subject.startsWith(`${road.dog.call}: a letter`));
const outcomes = (road: Road) => road.study().letters.map((l) => l.outcomes.map((o) => o.outcome));
const mailsOf = (road: Road, kind: string) => road.screen.messages.filter((m) => m.kind === kind);

describe('a letter that comes back', () => {
  let road: Road;
  beforeAll(async () => {
    road = await accepted('Nettle');
    server.mail.nextTo(road.email, 'refused');
    await released(road);
  });

  it('is shown on the order with what the mail server said', () => {
    expect(lettersTo(road)).toEqual([]);
    expect(outcomes(road)).toEqual([['bounced']]);
    expect(mailsOf(road, 'result')).toMatchObject([{ state: 'bounced', detail: expect.stringContaining('550') }]);
    expect(road.study().step).toBe('released');
    expect(road.screen.holds.map((h) => h.code)).toContain('LETTER_NOT_DELIVERED');
  });

  it('goes again when a person says so, to the address that the register has now, with the same certificate', async () => {
    const desk = await road.as('desk');
    await desk.send(`/api/people/${road.dog.person.id}`, { name: road.dog.person.name, email: 'lena.new@hillkarsby.example', phone: road.dog.person.phone, channel: 'mail', language: 'en' });
    const serial = road.screen.documents.find((d) => d.kind === 'certificate')!.serial!;
    await road.act('desk', 'releaseAgain', road.study().id, {});
    const mail = await server.mail.wait('lena.new@hillkarsby.example', /a letter/);
    await server.settled();
    await road.look();
    expect(road.study().step).toBe('reported');
    expect(road.screen.documents.filter((d) => d.kind === 'certificate')).toMatchObject([{ serial }]);
    const page = (await request(server.url).get(`/api/certificates/${serial}`).expect(200)).body as CertificateCheck;
    expect(page).toMatchObject({ state: 'valid', replacedBy: null });
    const letter = (await readPdf(mail.attachments[0]!.content)).text;
    expect(letter).toContain(serial);
    expect(letter).not.toContain('replaces');
  });
});

describe('a letter of which nobody knows whether it came', () => {
  let road: Road;
  beforeAll(async () => {
    road = await accepted('Fennec');
    server.mail.nextTo(road.email, 'cutOff');
    await released(road);
  });

  it('is shown as such on the order', () => {
    expect(outcomes(road)).toEqual([['unknown']]);
    expect(mailsOf(road, 'result')).toMatchObject([{ state: 'unknown' }]);
    expect(road.screen.holds.map((h) => h.code)).toContain('LETTER_NOT_DELIVERED');
  });

  it('is not sent a second time by itself, however often the schedule comes round', async () => {
    await server.until(new Date(server.clock.now().getTime() + 3_600_000));
    await server.sweep();
    expect(lettersTo(road)).toHaveLength(1);
    const refused = await road.attempt('desk', 'releaseAgain', road.study().id, {});
    expect(refused.status).toBe(422);
    expect(lettersTo(road)).toHaveLength(1);
  });

  it('is settled by a person who has asked the owner', async () => {
    await road.act('desk', 'resolveLetter', road.study().id, { letter: road.study().letters[0]!.id, to: road.dog.person.id, arrived: true });
    expect(road.study().step).toBe('reported');
    expect(mailsOf(road, 'result')).toMatchObject([{ state: 'delivered' }]);
    await server.sweep();
    expect(lettersTo(road)).toHaveLength(1);
  });
});

describe('a letter released in the evening, where the practice has quiet hours', () => {
  let road: Road;
  let other: Road;
  beforeAll(async () => {
    await quiet({ from: 20, to: 8 });
    road = await accepted('Juniper');
    other = await accepted('Rowan');
    await server.until(other.at(1, '21:10'));
    await released(road);
    await released(other);
  });
  afterAll(() => quiet({ from: 0, to: 0 }));

  const quiet = (hours: { from: number; to: number }) => server.look((tx) => tx.$executeRaw`UPDATE practice SET policy = jsonb_set(policy, '{quiet}', ${JSON.stringify(hours)}::jsonb)`);

  it('stays in the house all night', async () => {
    await server.until(other.at(2, '03:00'));
    await server.sweep();
    await road.look();
    expect(lettersTo(road)).toEqual([]);
    expect(mailsOf(road, 'result')).toMatchObject([{ state: 'waiting', detail: 'waits: NIGHT' }]);
  });

  it('goes out in the morning, but not to somebody whose dog has died in the night', async () => {
    await other.act('vet', 'recordDeath', other.id, { day: other.today, inCare: false, cause: 'Run over, as the owner says.' });
    await server.until(other.at(2, '08:30'));
    await server.sweep();
    await road.look();
    await other.look();
    expect(lettersTo(road)).toHaveLength(1);
    expect(outcomes(road)).toEqual([['delivered']]);
    expect(lettersTo(other)).toEqual([]);
    expect(mailsOf(other, 'result')).toMatchObject([{ state: 'waiting', detail: 'waits: DEATH' }]);
  });

  it('waits on after a death until a vet has lifted the silence', async () => {
    await other.act('vet', 'liftSilence', other.id, { why: 'The owner asked for the letter.' });
    await server.until(other.at(2, '09:30'));
    await server.sweep();
    await other.look();
    expect(lettersTo(other)).toHaveLength(1);
  });
});

describe('a decision', () => {
  let road: Road;
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Moth', studies: [['elbow', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    await getRead(road, road.study().id);
  });
  const stored = () => server.look(async (tx) => ({ facts: await tx.fact.count({ where: { orderId: road.id } }), mails: await tx.message.count({ where: { orderId: road.id } }), papers: await tx.document.count({ where: { orderId: road.id } }) }));
  const waiting = () => road.study().results[0]!.id;

  it('on an order that somebody else has changed is refused with what changed, and changes nothing', async () => {
    const { version } = road.screen;
    const result = waiting();
    await accept(road, road.study().id);
    const before = await stored();
    for (const late of [await road.attempt('vet', 'setPhoneFirst', road.study().id, { until: road.today }, { version }), await road.attempt('vet', 'refuseResult', road.study().id, { result, reason: 'implausible' }, { version })]) {
      expect(late.status).toBe(409);
      expect(late.body).toMatchObject({ code: 'CHANGED_MEANWHILE', changed: [{ type: 'resultAccepted', by: road.name('vet') }] });
    }
    expect(await stored()).toEqual(before);
  });

  it('that something forbids is refused with the words of what is missing, and changes nothing', async () => {
    await road.act('vet', 'setPhoneFirst', road.study().id, { until: road.today });
    const before = await stored();
    const refused = await road.attempt('vet', 'releaseLetter', road.study().id, {});
    expect(refused.status).toBe(422);
    expect(refused.body).toMatchObject({ code: 'HELD', because: [{ code: 'PHONE_FIRST', words: expect.stringContaining('Phone the owner first') }] });
    expect(await stored()).toEqual(before);
    await road.act('vet', 'recordCall', road.study().id, { reached: true });
  });

  it('sent twice with the same key, because the first answer got lost, is done once', async () => {
    const more = { key: randomUUID(), version: road.screen.version };
    const first = await road.attempt('vet', 'releaseLetter', road.study().id, {}, more);
    expect(first.status).toBe(200);
    await server.settled();
    const before = await stored();
    const second = await road.attempt('vet', 'releaseLetter', road.study().id, {}, more);
    expect(second.status).toBe(200);
    await server.settled();
    expect(await stored()).toEqual(before);
    expect(lettersTo(road)).toHaveLength(1);
  });
});

it('two readings of a sleeping dog never meet a refusal, whichever version the tablet knew', async () => {
  const road = await Road.book(server, { dog: 'Rill', studies: [['elbow', 'threnfold']], inDays: 1 });
  const { version } = road.screen;
  await throughTheVisit(road);
  const late = await road.attempt('nurse', 'recordReading', road.visit.id, { device: 'ward', n: 77, heartRate: 80 }, { version, at: new Date(server.clock.now().getTime() - 600_000).toISOString() });
  expect(late.status).toBe(200);
});
