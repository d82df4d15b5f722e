import { randomUUID } from 'node:crypto';
import type { Calendar, MoveLook } from '#libs/contracts/calendar';
import { addDays } from '#libs/pathway/days';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';

let server: RunningServer;
let desk: Session;
let pilot: Road;
let gale: Road;
beforeAll(async () => {
  server = await startServer();
  pilot = await Road.book(server, { dog: 'Pilot', studies: [['hipLaxity', 'threnfold']], inDays: 3 });
  gale = await Road.book(server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']], inDays: 3 });
  desk = await gale.as('desk');
}, 60_000);
afterAll(async () => { await server.close(); });

const read = (day: string, days = 1) => desk.read<Calendar>(`/api/calendar?day=${day}&days=${days}`);
const look = (to: object) => desk.send<MoveLook>('/api/calendar/look', { visit: gale.visit.id, day: gale.slot.day, start: gale.slot.start, ...to });
const visitOf = async (road: Road, day = road.slot.day) => (await read(day)).visits.find((v) => v.visit === road.visit.id);

it('shows each visit of a day in its room, with its operator and its studies', async () => {
  expect(await visitOf(gale)).toEqual({
    visit: gale.visit.id, order: gale.id, dog: 'Gale', studies: ['Hips, laxity'], step: 'Booked', movable: true, day: gale.slot.day, start: gale.slot.start, minutes: gale.slot.minutes,
    room: gale.slot.room, operator: gale.slot.operator,
  });
  const { operators, days } = await read(gale.slot.day, 7);
  expect(days).toHaveLength(7);
  expect(operators.find((o) => o.id === gale.slot.operator.id)!.mayTake.map((m) => m.study)).toContain('Hips, laxity');
});

it('a free time is told with everybody it takes, keeping whom the visit has', async () => {
  const { slot, problems } = await look({ start: '14:00' });
  expect(problems).toEqual([]);
  expect(slot).toMatchObject({ day: gale.slot.day, start: '14:00', room: gale.slot.room, operator: gale.slot.operator, nurse: gale.slot.nurse, vet: gale.slot.vet });
});

it('what cannot be is told in words: a room that is taken, a closed day, a time that is over, somebody not accredited', async () => {
  expect((await look({ day: pilot.slot.day, start: pilot.slot.start, room: pilot.slot.room.id })).problems).toContain(`${pilot.slot.room.name} is taken then.`);
  expect((await look({ day: addDays(gale.today, -1) })).problems).toContain('That time has passed.');
  expect((await look({ start: '03:00' })).problems.join(' ')).toMatch(/Visits start from \d\d:\d\d to \d\d:\d\d\./);
  const vet = gale.slot.vet;
  expect((await look({ start: '14:00', operator: vet.id })).problems.join(' ')).toMatch(new RegExp(`${vet.name} is not accredited for Hips, laxity`));
});

it('names that are not of this practice are refused', async () => {
  const answer = await desk.post('/api/calendar/look', { visit: gale.visit.id, day: gale.slot.day, start: '14:00', room: randomUUID() });
  expect([answer.status, JSON.stringify(answer.body)]).toEqual([400, expect.stringContaining('not in your practice')]);
  expect((await desk.post('/api/calendar/look', { visit: randomUUID(), day: gale.slot.day, start: '14:00' })).status).toBe(404);
});

it('moving books what was looked at; the old time is free again and answers stay', async () => {
  const { slot, version } = await look({ start: '14:00' });
  const { room, operator, nurse, vet, day, start, minutes } = slot!;
  const moved = await gale.attempt('desk', 'book', gale.visit.id, { day, start, minutes, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id }, { version });
  expect(moved.status).toBe(200);
  expect(await visitOf(gale)).toMatchObject({ start: '14:00' });
  expect((await look({})).slot).toMatchObject({ start: gale.slot.start });
  expect((await gale.look()).holds.map((h) => h.code)).not.toContain('ANSWERS_MISSING');
});
