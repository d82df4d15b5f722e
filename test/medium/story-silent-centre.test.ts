import { addDays } from '#libs/pathway/days';
import type { CentreKey } from '#seed/centre';
import { demoSignIns } from '#seed/sign-ins';
import { withAKill } from '#test/support/after-a-kill';
import { enters, scanOf } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
/** Twelve orders at one centre that says nothing, and a first one that is unpaid. */
const roads: Road[] = [];
const DOGS = ['Gale', 'Hazel', 'Moss', 'Ash', 'Drift', 'Rill', 'Bracken', 'Wenna', 'Alder', 'Kestrel', 'Corrie', 'Quill', 'Rowan'];
const centre: CentreKey = 'threnfold';
const address = 'films@threnfold.example';
const digests = () => server.mail.to(address).filter((m) => /waiting for/.test(m.subject));
let first: Road;

async function morning(day: number): Promise<void> {
  await server.until(first.at(day, '09:00'));
  await server.sweep();
  await server.until(first.at(day, '09:01'));
  await first.look();
}

/** Sent on a Tuesday; the acknowledgement is due on Friday, and the Monday after it is free at the centre alone. */
beforeAll(async () => {
  server = await startServer();
  for (const dog of DOGS) roads.push(await Road.book(server, { dog, studies: [[dog === DOGS[0] ? 'hipLaxity' : 'elbow', centre]], inDays: 1 }));
  first = roads[0]!;
  await server.look((tx) => tx.centre.update({ where: { id: server.scheme.centres[centre].id }, data: { holidays: [addDays(first.slot.day, 6)] } }));
  for (const road of roads.sort((a, b) => a.at(0, a.slot.start).getTime() - b.at(0, b.slot.start).getTime())) {
    await throughTheVisit(road);
    await road.act('desk', 'seal', road.study().id, {});
    const send = () => road.act('desk', 'send', road.study().id, {});
    await (road === roads.at(-1) ? withAKill(road, send) : send());
  }
  await server.settled();
}, 480_000);
afterAll(async () => { await server.close(); });

it('an automatic reply stops no clock', async () => {
  await first.act('desk', 'recordAutoReply', first.study().id, {});
  expect(first.study()).toMatchObject({ step: 'sent', chase: { clock: 'ack', dueDay: addDays(first.slot.day, 3) } });
});

it('a holiday that only the centre has is no day for reminders', async () => {
  for (const day of [4, 5, 6]) await morning(day);
  expect(digests()).toEqual([]);
  expect(first.screen.holds.map((h) => h.code)).toContain('NOT_ACKNOWLEDGED');
});

it('an unpaid bill is a cause, and reaches the manager instead of the centre', async () => {
  await first.act('manager', 'recordCause', first.study().id, { cause: 'unpaid' });
  expect(first.screen.holds.map((h) => h.code)).toContain('UNPAID');
  await morning(7);
  const manager = demoSignIns().find((s) => s.name === first.house.manager.name)!.email;
  expect((await server.mail.wait(manager, new RegExp(first.screen.accession))).text).toContain('Known cause: not paid.');
});

it('one digest covers all twelve others, and nothing of dogs and owners is in it', () => {
  expect(digests()).toHaveLength(1);
  expect(digests()[0]!.subject).toBe('Packages we are waiting for: 12');
  for (const road of roads) expect(digests()[0]!.text).not.toContain(road.dog.call);
});

describe('then 0.41 by post and 0.14 in a file', () => {
  const hips = (left: number) => [{ joint: 'left', value: left }, { joint: 'right', value: 0.38 }];

  it('release nothing, and the page shows both', async () => {
    await first.act('manager', 'clearCause', first.study().id, { cause: 'unpaid' });
    const post = await enters(first, 'desk', { ref: 'K-41', channel: 'post', joints: hips(0.41), scan: await scanOf(first) });
    await first.act('nurse', 'keyResult', first.study().id, { result: post, joints: hips(0.41) });
    const file = await enters(first, 'desk', { ref: 'K-14', channel: 'file', joints: hips(0.14) });
    expect(first.study().conflict).toMatchObject({ results: [post, file], differs: ['left'] });
    expect(first.study().results.map((r) => [r.channel, r.state, r.joints[0]!.words])).toEqual([['post', 'waiting', '0.41'], ['file', 'waiting', '0.14']]);
    for (const result of [post, file]) expect((await first.attempt('vet', 'acceptResult', first.study().id, { result })).body).toMatchObject({ code: 'HELD', because: [{ code: 'RESULTS_DISAGREE' }] });
    expect((await first.attempt('vet', 'releaseLetter', first.study().id, {})).status).toBe(422);
    await server.settled();
    expect(server.mail.to(first.email).filter((m) => /letter/.test(m.subject))).toEqual([]);
    expect(first.screen.documents.filter((d) => d.kind !== 'goingHome' && d.kind !== 'consentCopy')).toEqual([]);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
