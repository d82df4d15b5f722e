import { randomUUID } from 'node:crypto';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { OwnerOffer, WaitingList } from '#libs/contracts/waiting';
import { dayWords } from '#libs/steps/record/day-words';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { ownerSigns } from '#test/support/visit-legs';

let server: RunningServer;
let freed: Road;
let first: Road;
let second: Road;
let owners: { first: Session; second: Session };
const hips: [string, 'threnfold'][] = [['hipLaxity', 'threnfold']];

const desk = () => first.as('desk');
const list = async () => (await (await desk()).read<WaitingList>('/api/waiting-list')).rows;
const offerOn = async (owner: Session) => (await owner.read<OwnerOffer>('/api/owner/offer')).offer;
const offerMails = (road: Road) => server.mail.to(road.email).filter((m) => m.subject.startsWith(`${road.dog.call}: an earlier time`));

/** Nothing is free in any room from now until a moment, but for what is booked already. */
async function fillTheDiary(until: Date): Promise<void> {
  await server.look((tx) => tx.$executeRaw`INSERT INTO slot (practice_id, visit_id, order_id, kind, resource_id, period)
    SELECT r.practice_id, gen_random_uuid(), gen_random_uuid(), 'room', r.id, free FROM room r
    CROSS JOIN LATERAL unnest(tstzmultirange(tstzrange(${server.clock.now()}, ${until})) - COALESCE((SELECT range_agg(s.period) FROM slot s WHERE s.resource_id = r.id), '{}'::tstzmultirange)) AS free
    WHERE r.practice_id = ${first.house.id}::uuid`);
}

beforeAll(async () => {
  server = await startServer();
  freed = await Road.book(server, { dog: 'Gale', studies: hips, inDays: 7 });
  second = await Road.book(server, { dog: 'Wenna', studies: hips, inDays: 14 });
  first = await Road.book(server, { dog: 'Moss', studies: hips, inDays: 16 });
  owners = { first: await ownerSigns(first), second: await ownerSigns(second) };
  await fillTheDiary(first.at(0, first.slot.start));
}, 60_000);
afterAll(async () => { await server.close(); });

it('a visit waits in the order of asking, once, and keeps the time it has', async () => {
  for (const road of [first, second]) {
    server.clock.advance({ minutes: 1 });
    await (await desk()).send(`/api/orders/${road.id}/waiting`, { key: randomUUID(), visit: road.visit.id });
  }
  await server.settled();
  expect((await list()).map((r) => [r.dog, r.day, r.start, r.offer])).toEqual([['Moss', first.slot.day, first.slot.start, null], ['Wenna', second.slot.day, second.slot.start, null]]);
  const file = (await (await desk()).bytes('/api/waiting-list.csv')).toString();
  expect([first, second].map((road) => file.includes(`${road.screen.accession},${road.dog.call},`))).toEqual([true, true]);
  const again = await (await desk()).post(`/api/orders/${first.id}/waiting`, { key: randomUUID(), visit: first.visit.id });
  expect([again.status, (again.body as { code: string }).code]).toEqual([409, 'ALREADY_THERE']);
});

it('a time that becomes free is offered to the first alone, by mail and on the page', async () => {
  await freed.act('desk', 'cancelVisit', freed.visit.id, { side: 'owner', why: 'On holiday.' });
  await server.settled();
  expect(await offerOn(owners.first)).toMatchObject({ day: freed.slot.day, start: freed.slot.start, insteadOf: { day: first.slot.day, start: first.slot.start } });
  expect(await offerOn(owners.second)).toBeNull();
  const [mail] = offerMails(first);
  expect(mail!.text).toContain(`${dayWords(freed.slot.day)} at ${freed.slot.start}, instead of ${dayWords(first.slot.day)}, ${first.slot.start}`);
  expect(offerMails(second)).toEqual([]);
});

it('runs out after a day, then goes to the next, and a late yes changes nothing', async () => {
  const late = (await offerOn(owners.first))!;
  await server.until(late.expiresAt);
  expect(await offerOn(owners.first)).toBeNull();
  expect(await offerOn(owners.second)).toMatchObject({ day: freed.slot.day, start: freed.slot.start });
  const answer = await owners.first.post('/api/owner/offer', { offer: late.id, answer: 'yes' });
  expect(answer.status).toBe(422);
  expect((answer.body as { message: string }).message).toContain('has run out');
  expect((await first.look()).visits.at(-1)).toMatchObject({ day: first.slot.day });
});

it('an offer is nobody else’s to answer', async () => {
  const theirs = (await offerOn(owners.second))!;
  await owners.first.post('/api/owner/offer', { offer: theirs.id, answer: 'yes' }).expect(404);
});

it('a yes moves the visit with what was answered and signed, and the advice is repeated once', async () => {
  const before = await owners.second.read<OwnerPage>('/api/owner');
  const offer = (await offerOn(owners.second))!;
  await owners.second.send('/api/owner/offer', { offer: offer.id, answer: 'yes' });
  const page = await owners.second.read<OwnerPage>('/api/owner');
  expect(page.visit).toMatchObject({ day: freed.slot.day, start: freed.slot.start, advice: before.visit!.advice });
  expect([page.questions, page.consents, page.estimate!.accepted]).toEqual([before.questions, before.consents, true]);
  await server.settled();
  const confirmed = await server.mail.wait(second.email, /^Wenna: visit on /, 2);
  expect(confirmed.text).toContain('This is a new time. What you have already answered and signed stays as it is.');
  expect(confirmed.text.split(page.visit!.advice!.body.slice(0, 40))).toHaveLength(2);
  // Yes twice, because the first reply got lost, is one.
  await owners.second.send('/api/owner/offer', { offer: offer.id, answer: 'yes' });
  expect((await list()).map((r) => r.dog)).toEqual(['Moss']);
});

it('the time that was left goes to the next; a no keeps the visit and the place in line', async () => {
  const offer = (await offerOn(owners.first))!;
  expect(offer).toMatchObject({ day: second.slot.day, start: second.slot.start });
  await owners.first.send('/api/owner/offer', { offer: offer.id, answer: 'no' });
  await server.settled();
  expect((await list()).map((r) => [r.dog, r.day, r.offer, r.earlier.map((e) => e.split(': ')[1])])).toEqual([['Moss', first.slot.day, null, ['no answer in time', 'no']]]);
});

it('only the reminder of the new time is sent', async () => {
  await server.until(second.at(0, '12:00'));
  expect(server.mail.to(second.email).filter((m) => /^Wenna: your visit on/.test(m.subject)).map((m) => m.subject)).toEqual([`Wenna: your visit on ${dayWords(freed.slot.day)}`]);
});

it('whoever does not come is asked to call, keeps the order, and leaves the list', async () => {
  await first.untilVisit();
  await first.look();
  await first.act('desk', 'recordMissed', first.visit.id, {});
  const mail = await server.mail.wait(first.email, /^Moss: your visit on/, 2);
  expect(mail.text).toContain('we did not see you');
  expect(first.screen.holds.map((h) => h.code)).toContain('NO_VISIT');
  await server.sweep();
  server.clock.advance({ minutes: 11 });
  await server.sweep();
  expect(await list()).toEqual([]);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
