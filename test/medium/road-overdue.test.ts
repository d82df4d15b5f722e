import { addDays } from '#libs/pathway/days';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { AtReader, readings } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
/** Of two practices; the first has two studies, of which the hips are acknowledged at once. */
let alder: Road;
let kestrel: Road;
let atHips: AtReader;

const CENTRE = 'films@threnfold.example';
const digests = () => server.mail.to(CENTRE).filter((m) => /waiting for/.test(m.subject));
const hips = () => alder.study('hipLaxity');
const elbows = () => alder.study('elbow');

/** A morning of the centre, and what the schedule makes of it, the digest's gathering time included. */
async function morning(day: number): Promise<void> {
  await server.until(alder.at(day, '09:00'));
  await server.sweep();
  await server.until(alder.at(day, '09:01'));
  await alder.look();
  await kestrel.look();
}

/** Days are counted from the visits, on a Tuesday; three working days to say that a package came, ten to read it. */
beforeAll(async () => {
  server = await startServer();
  alder = await Road.book(server, { dog: 'Alder', studies: [['hipLaxity', 'threnfold'], ['elbow', 'threnfold']], inDays: 1 });
  kestrel = await Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']], inDays: 1 });
  const holiday = addDays(alder.slot.day, 6);
  await server.look((tx) => tx.centre.update({ where: { id: server.scheme.centres.threnfold.id }, data: { holidays: [holiday] } }));
  for (const road of [alder, kestrel]) {
    await throughTheVisit(road);
    for (const { id } of road.screen.studies) {
      await road.act('desk', 'seal', id, {});
      await road.act('desk', 'send', id, {});
    }
  }
  atHips = await AtReader.of(alder, hips().id);
  await atHips.acknowledge();
  await server.settled();
}, 90_000);
afterAll(async () => { await server.close(); });

it('counts working days: from a Tuesday three to a Friday, ten over the centre’s free Monday to a Wednesday', async () => {
  await alder.look();
  expect(elbows().chase).toMatchObject({ clock: 'ack', dueDay: addDays(alder.slot.day, 3) });
  expect(hips().chase).toMatchObject({ clock: 'result', dueDay: addDays(alder.slot.day, 15) });
});

it('reminds nobody on the day that is due, over the weekend, or on the centre’s free day, though the hold stands', async () => {
  const elbowsLink = await AtReader.of(alder, elbows().id);
  await morning(3);
  const lateAtReader = async () => (await elbowsLink.session.read<{ rows: { overdue: boolean }[] }>('/api/reader/packages')).rows[0]!.overdue;
  expect(await lateAtReader()).toBe(false);
  // Half past midnight at the centre, when it is still the day before in UTC.
  await server.until(alder.at(4, '00:30'));
  await alder.look();
  expect([elbows().chase!.overdue, await lateAtReader()]).toEqual([true, true]);
  for (const day of [4, 5, 6]) await morning(day);
  expect(digests()).toEqual([]);
  expect(elbows().chase).toMatchObject({ overdue: true, act: 'none', reminders: 0 });
  expect(alder.screen.holds.map((h) => h.code)).toContain('NOT_ACKNOWLEDGED');
});

it('reminds on the next working day, with one digest for both practices’ packages and nothing of owner or dog', async () => {
  await morning(7);
  expect(digests()).toHaveLength(1);
  const { subject, text } = digests()[0]!;
  expect(subject).toBe('Packages we are waiting for: 2');
  expect(text.match(/P-[0-9A-F]{8}, Elbow grading: not acknowledged/g)).toHaveLength(2);
  expect(text).not.toMatch(/Alder|Kestrel|Morwen|Esk|Weirside|Hillfoot/);
  expect([elbows().chase!.reminders, kestrel.study().chase!.reminders, hips().chase!.reminders]).toEqual([1, 1, 0]);
});

it('sends one digest a day, however often the schedule comes round', async () => {
  await server.until(alder.at(7, '15:00'));
  await server.sweep();
  await server.sweep();
  await server.until(alder.at(7, '15:01'));
  expect(digests()).toHaveLength(1);
});

it('stops the first clock by the acknowledgement and starts the second', async () => {
  const reader = await AtReader.of(alder, elbows().id);
  await reader.acknowledge();
  await alder.look();
  expect(elbows().chase).toMatchObject({ clock: 'result', dueDay: addDays(alder.slot.day, 21), overdue: false, reminders: 0 });
});

it('reminds again after three working days, and only of what is still missing', async () => {
  for (const day of [8, 9]) await morning(day);
  expect(digests()).toHaveLength(1);
  await morning(10);
  expect(digests()).toHaveLength(2);
  expect(digests()[1]!.subject).toBe('Packages we are waiting for: 1');
  expect(kestrel.study().chase).toMatchObject({ reminders: 2 });
});

it('tells a named person of the practice once, when the reminders are used up', async () => {
  await morning(15);
  await morning(16);
  expect(kestrel.study().chase).toMatchObject({ act: 'escalate' });
  expect(server.mail.to('pell@hillfoot.example')).toHaveLength(1);
  const { text } = server.mail.to('pell@hillfoot.example')[0]!;
  expect(text).toContain(kestrel.screen.accession);
  expect(text).toContain('After 2 reminders');
  expect(server.mail.to('hedda@weirside.example')).toEqual([]);
});

it('counts a missing result by its own clock', () => {
  expect(digests()).toHaveLength(3);
  expect(digests()[2]!.text).toMatch(/Hip laxity by stress radiography: no result/);
  expect(digests()[2]!.subject).toBe('Packages we are waiting for: 1');
  expect(hips().chase).toMatchObject({ clock: 'result', overdue: true, reminders: 1 });
});

it('stops by itself when the result arrives', async () => {
  await atHips.reads({ joints: readings.hipLaxity! });
  await alder.look();
  expect(hips()).toMatchObject({ step: 'answered', chase: null });
  for (const day of [17, 20, 21]) await morning(day);
  expect(digests()).toHaveLength(3);
  expect(server.mail.to('pell@hillfoot.example')).toHaveLength(1);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
