import { randomUUID } from 'node:crypto';
import type { Response } from 'supertest';
import type { BookingOptions } from '#libs/contracts/booking';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { addDays } from '#libs/pathway/days';
import { instantOf } from '#libs/steps/record/local-time';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { getRead } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
/** At Hillfoot, which asks Weirside; Sorn Quay is nobody's business. */
let road: Road;
let weirside: string;
let [home, asked, third]: Session[] = [];

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']] });
  weirside = server.scheme.houses.weirside.id;
  [home, asked, third] = await Promise.all(['Pell Vantry', 'Marit Oskar', 'Ebba Lyndal'].map((name) => server.as(name)));
}, 90_000);
afterAll(async () => { await server.close(); });

const does = async (who: Session, action: string, input: object = {}): Promise<Response> => {
  const { body } = await who.get(`/api/orders/${road.id}`);
  return who.post(`/api/orders/${road.id}/actions/${action}`, { key: randomUUID(), version: (body as OrderScreen).version, on: road.id, input });
};
const offer = (more: object = {}) => does(home!, 'offerReferral', { to: weirside, expires: addDays(road.today, 5), ownerAgreed: true, ...more });
const sees = async (who: Session) => (await who.get(`/api/orders/${road.id}`)).status;

describe('an offer', () => {
  it.each([
    ['without the owner’s yes', { ownerAgreed: false }, /Ask the owner first/],
    ['until a day that has passed', { expires: '2026-01-02' }, /has passed/],
  ])('%s is refused, and nothing is shared', async (_what, more, words) => {
    const answer = await offer(more);
    expect(answer.status).toBe(400);
    expect((answer.body as { message: string }).message).toMatch(words);
    expect(await sees(asked!)).toBe(404);
  });

  it('lets the other practice see the order and nobody else, and brings it a letter', async () => {
    expect((await offer()).status).toBe(200);
    expect([await sees(home!), await sees(asked!), await sees(third!)]).toEqual([200, 200, 404]);
    const mail = await server.mail.wait('desk@weirside.example', new RegExp(`Referral ${road.screen.accession}`));
    const pdf = mail.attachments.find((a) => a.contentType === 'application/pdf')!;
    const { text } = await readPdf(pdf.content);
    expect(text).toContain('Please take these pictures of Kestrel');
    expect(text).toContain('Elbow grading');
    expect(text).toMatch(/for the veterinarian who examines it/);
    const named = async (who: Session) => (await who.read<OrderScreen>(`/api/orders/${road.id}`)).documents.find((d) => d.kind === 'referralLetter')?.name;
    expect(await named(home!)).toBe(`Referral to ${server.scheme.houses.weirside.name}`);
    await home!.send('/api/me/language', { language: 'de' });
    expect(await named(home!)).toBe(`Überweisung an ${server.scheme.houses.weirside.name}`);
    await home!.send('/api/me/language', { language: 'en' });
  });

  it('holds the booking at home, and cannot be accepted by who made it', async () => {
    const answer = await does(home!, 'acceptReferral');
    expect([answer.status, (answer.body as { message: string }).message]).toEqual([403, expect.stringMatching(/The practice that was asked accepts/)]);
    await road.look('desk');
    expect(road.screen.holds.map((h) => h.code)).toContain('REFERRAL_OPEN');
    expect(road.screen.next.find((n) => n.action === 'acceptReferral')!.yours).toBe(false);
    expect((await asked!.read<OrderScreen>(`/api/orders/${road.id}`)).next.find((n) => n.action === 'acceptReferral')!.yours).toBe(true);
  });

  it('cannot be passed on to a third practice by the one that was asked', async () => {
    const answer = await does(asked!, 'offerReferral', { to: server.scheme.houses.sorn.id, expires: addDays(road.today, 5), ownerAgreed: true });
    expect([403, 422]).toContain(answer.status);
    expect(await sees(third!)).toBe(404);
  });
});

describe('what is done at home alone', () => {
  const AT_HOME = ['acceptEstimate', 'erasePerson', 'handOver', 'offerReferral', 'recordTransfer'];

  it('is no button at the practice that was asked, and is refused there with the name of whom to ask', async () => {
    const { next, visits } = await asked!.read<OrderScreen>(`/api/orders/${road.id}`);
    expect(next.filter((n) => n.yours && AT_HOME.includes(n.action))).toEqual([]);
    const answer = await does(asked!, 'acceptEstimate', { payer: road.dog.person.id, how: 'phone', totalMinor: visits[0]!.estimate?.totalMinor ?? 0 });
    expect([answer.status, (answer.body as { message: string }).message]).toEqual([403, expect.stringContaining(`Accepting the estimate is for the practice that this order belongs to, ${road.house.name}.`)]);
  });
});

describe('declined', () => {
  it('tells the practice that asked why, and the other one sees the order no longer', async () => {
    expect((await does(asked!, 'closeReferral', { answer: 'takenBack', why: 'We have no time.' })).status).toBe(403);
    expect((await does(asked!, 'closeReferral', { answer: 'declined', why: 'Our device is being repaired.' })).status).toBe(200);
    const mail = await server.mail.wait('desk@hillfoot.example', /declined/);
    expect(mail.text).toContain('Our device is being repaired.');
    await server.settled();
    expect([await sees(home!), await sees(asked!)]).toEqual([200, 404]);
  });
});

describe('the letter of an offer', () => {
  const letterTo = async (): Promise<string> => {
    const letters = () => server.mail.to('desk@weirside.example').flatMap((mail) => mail.attachments);
    const before = letters().length;
    expect((await offer()).status).toBe(200);
    await server.settled();
    const { lang, text } = await readPdf(letters()[before]!.content);
    expect((await does(home!, 'closeReferral', { answer: 'takenBack', why: 'We ask again.' })).status).toBe(200);
    return `${lang}: ${text}`;
  };

  it('is in the language that most of the practice’s people chose, whatever its sender reads', async () => {
    await asked!.send('/api/me/language', { language: 'de' });
    expect(await letterTo()).toMatch(/^de: .*Bitte machen Sie diese Bilder von Kestrel/);
  });

  it('is in its sender’s where nobody there has chosen one', async () => {
    await server.look((tx) => tx.$executeRaw`UPDATE staff SET language = NULL WHERE practice_id = ${weirside}::uuid`);
    expect(await letterTo()).toMatch(/^en: .*Please take these pictures of Kestrel/);
    await home!.send('/api/me/language', { language: 'de' });
    expect(await letterTo()).toMatch(/^de: .*Bitte machen Sie/);
    await home!.send('/api/me/language', { language: 'en' });
  });
});

describe('not answered in time', () => {
  it('is told to the practice that asked, once, and can no longer be accepted', async () => {
    expect((await offer({ expires: addDays(road.today, 1) })).status).toBe(200);
    await server.until(instantOf(addDays(road.today, 2), '09:00', road.house.zone));
    await server.sweep();
    await server.sweep();
    expect(server.mail.to('desk@hillfoot.example').filter((m) => /no answer/.test(m.subject))).toHaveLength(1);
    const late = await does(asked!, 'acceptReferral');
    expect([late.status, (late.body as { message: string }).message]).toEqual([422, expect.stringMatching(/was open until/)]);
    expect((await does(home!, 'closeReferral', { answer: 'takenBack', why: 'We ask again.' })).status).toBe(200);
    expect(await server.mail.wait('desk@weirside.example', /taken back/)).toBeDefined();
  });
});

describe('accepted', () => {
  it('is booked and imaged by the practice that was asked, and the letter is known at both', async () => {
    expect((await offer()).status).toBe(200);
    expect((await does(asked!, 'acceptReferral')).status).toBe(200);
    expect((await server.mail.wait('desk@hillfoot.example', /accepted/)).text).toContain('Weirside Animal Practice');
    const options = await asked!.send<BookingOptions>('/api/booking/options', { dog: road.dog.id, studies: [{ protocol: 'elbow', version: road.study().version, centre: road.study().centre.id }], from: road.today, days: 7 });
    const slot = options.slots.find((s) => s.day > road.today)!;
    const { room, operator, nurse, vet, ...when } = slot;
    const { body } = await asked!.get(`/api/orders/${road.id}`);
    const visit = (body as OrderScreen).visits.at(-1)!.id;
    const booked = await asked!.post(`/api/orders/${road.id}/actions/book`, { key: randomUUID(), version: (body as OrderScreen).version, on: visit, input: { ...when, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id } });
    expect([booked.status, booked.status === 200 ? '' : booked.body]).toEqual([200, '']);
    // The people who have the dog in front of them are now Weirside’s; its desk at home goes on sending and asking.
    Object.assign(road, { slot, screen: booked.body as OrderScreen });
    await throughTheVisit(road);
    await getRead(road, road.study().id);
    await road.act('vet', 'acceptResult', road.study().id, { result: road.study().results[0]!.id });
    await road.act('vet', 'releaseLetter', road.study().id, {});
    const told = await server.mail.wait('desk@hillfoot.example', /the letter has been released/);
    expect(told.text).not.toMatch(/Grade|\b[0-3]\b of|left|right/);
    expect([await sees(home!), await sees(asked!), await sees(third!)]).toEqual([200, 200, 404]);
    const [there, here] = await Promise.all([home!, asked!].map((s) => s.read<OrderScreen>(`/api/orders/${road.id}`)));
    expect(there!.studies[0]!.results).toEqual(here!.studies[0]!.results);
    expect(there!.documents.map((d) => d.kind)).toContain('letter');
  }, 60_000);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
