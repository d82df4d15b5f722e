import request from 'supertest';
import type { OwnerPage, CertificateCheck } from '#libs/contracts/screens/owner';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { demoSignIns } from '#seed/sign-ins';
import { readPdf } from '#test/support/read-pdf';
import { enters, scanOf } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, AtReader, dispatch, getRead, readings, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });

async function atCentre(dog: string): Promise<Road> {
  const road = await Road.book(server, { dog, studies: [['hipLaxity', 'threnfold']], inDays: 1 });
  await throughTheVisit(road);
  const reader = await dispatch(road, road.study().id);
  await reader.acknowledge();
  return road;
}

describe('a result by post', () => {
  let road: Road;
  let result: string;
  const sheet = (left: number) => [{ joint: 'left', value: left }, { joint: 'right', value: 0.44 }];
  beforeAll(async () => { road = await atCentre('Gale'); });

  it('is refused without its scan, and nothing is changed', async () => {
    await road.look();
    const refused = await road.attempt('desk', 'enterResult', road.study().id, { ref: 'K-1', channel: 'post', joints: sheet(0.41) });
    expect(refused.body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'scan' }] });
    expect((await road.look()).studies[0]!.results).toEqual([]);
  });

  it('shows no value to the second person who keys it', async () => {
    result = await enters(road, 'desk', { ref: 'K-1', channel: 'post', joints: sheet(0.83), scan: await scanOf(road) });
    const shown = await (await road.as('nurse')).get(`/api/orders/${road.id}`).expect(200);
    expect(shown.text).not.toContain('0.83');
    expect(road.study().results[0]).toMatchObject({ state: 'waiting', keyedBy: [road.name('desk')], joints: [{ words: 'shown when two people have keyed the same' }, {}] });
    expect(road.screen.holds.map((h) => h.code)).toContain('POST_NOT_KEYED_TWICE');
  });

  it('is not keyed twice by one person', async () => {
    const again = await road.attempt('desk', 'keyResult', road.study().id, { result, joints: sheet(0.83) });
    expect(again.body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'result', message: 'You have keyed this sheet already. Another person keys it now.' }] });
  });

  it('is held when two people have keyed it differently, until two are alike', async () => {
    await road.act('nurse', 'keyResult', road.study().id, { result, joints: sheet(0.41) });
    expect(road.screen.holds.map((h) => h.code)).toContain('KEYED_DIFFERENTLY');
    expect((await road.attempt('vet', 'acceptResult', road.study().id, { result })).body).toMatchObject({ code: 'HELD' });
    await road.act('vet', 'keyResult', road.study().id, { result, joints: sheet(0.41) });
    expect(road.screen.holds.map((h) => h.code)).not.toContain('KEYED_DIFFERENTLY');
  });

  it('says in the letter what two people have keyed, not what was typed in first', async () => {
    expect(road.study().results[0]!.joints.map((j) => j.words)).toEqual(['0.41', '0.44']);
    await release(road, road.study().id);
    const { text } = await readPdf((await server.mail.wait(road.email, /a letter/)).attachments[0]!.content);
    expect(text).toContain('0.41');
    expect(text).not.toContain('0.83');
  });
});

describe('the same reading twice', () => {
  const joints = [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }];

  it('is one that waits and its copy, also under the same number, and the one that waits can be accepted', async () => {
    const road = await atCentre('Quill');
    const [first] = [await enters(road, 'desk', { ref: 'K-8', channel: 'file', joints }), await enters(road, 'desk', { ref: 'K-8', channel: 'file', joints })];
    expect(road.study().results.map((r) => r.state)).toEqual(['waiting', 'copy']);
    await road.act('vet', 'acceptResult', road.study().id, { result: first });
    expect(road.study().results.map((r) => r.state)).toEqual(['accepted', 'copy']);
  });

  it('by telephone and then in a file waits as the file: what is written counts more', async () => {
    const road = await atCentre('Corrie');
    await enters(road, 'desk', { ref: 'K-9', channel: 'phone', joints });
    const written = await enters(road, 'desk', { ref: 'K-9', channel: 'file', joints });
    expect(road.study().results.map((r) => r.state)).toEqual(['copy', 'waiting']);
    await road.act('vet', 'acceptResult', road.study().id, { result: written });
    expect(road.study().results.map((r) => r.state)).toEqual(['copy', 'accepted']);
  });
});

describe('two readings of the same films that do not agree', () => {
  let road: Road;
  beforeAll(async () => {
    road = await atCentre('Hazel');
    await enters(road, 'desk', { ref: 'K-2', channel: 'file', joints: [{ joint: 'left', value: 0.14 }, { joint: 'right', value: 0.44 }] });
    await enters(road, 'desk', { ref: 'K-3', channel: 'file', joints: [{ joint: 'left', value: 0.41 }, { joint: 'right', value: 0.44 }] });
  });

  it('release nothing, and the page holds them side by side', async () => {
    const study = road.study();
    expect(study.conflict).toMatchObject({ results: study.results.map((r) => r.id), differs: ['left'] });
    expect(study.conflict!.told).toContain('The two values of the left hip hold the same digits in another order, so one may have been written wrongly.');
    for (const { id } of study.results) expect((await road.attempt('vet', 'acceptResult', study.id, { result: id })).body).toMatchObject({ code: 'HELD' });
    expect((await road.attempt('vet', 'releaseLetter', study.id, {})).status).toBe(422);
  });

  it('are sent back to the centre with the question which stands, and who asked is shown', async () => {
    await road.act('desk', 'askWhichStands', road.study().id, {});
    const { text } = await server.mail.wait('films@threnfold.example', /Two readings of package/);
    expect(text).toMatch(/K-2, which came as a file on .*: Left hip 0\.14; Right hip 0\.44\./);
    expect(text).toMatch(/K-3, which came as a file on .*: Left hip 0\.41; Right hip 0\.44\./);
    expect(road.study().conflict!.asked).toEqual([{ at: expect.any(String) as string, by: road.name('desk') }]);
  });

  it('are settled by what somebody at the centre says, who is named', async () => {
    const [, keep] = road.study().results;
    const unnamed = await road.attempt('vet', 'settleConflict', road.study().id, { keep: keep!.id, why: 'Read off the sheet again.', saidBy: '' });
    expect(unnamed.body).toMatchObject({ code: 'BAD_INPUT' });
    await road.act('vet', 'settleConflict', road.study().id, { keep: keep!.id, why: 'Read off the sheet again.', saidBy: 'Noemi Haskel' });
    expect(road.study()).toMatchObject({ conflict: null, results: [{ state: 'superseded' }, { state: 'waiting' }] });
    expect((await road.attempt('vet', 'acceptResult', road.study().id, { result: road.study().results[0]!.id })).body).toMatchObject({ code: 'BAD_INPUT' });
    expect(road.screen.happened[0]!.what).toContain('Noemi Haskel');
  });

  it('with equal values are one', async () => {
    await enters(road, 'desk', { ref: 'K-4', channel: 'file', joints: [{ joint: 'left', value: 0.41 }, { joint: 'right', value: 0.44 }] });
    expect(road.study()).toMatchObject({ conflict: null });
    expect(road.study().results.map((r) => r.state)).toEqual(['superseded', 'waiting', 'copy']);
  });
});

describe('a second reading that the owner asks for', () => {
  let road: Road;
  let reader: AtReader;
  let owner: Awaited<ReturnType<typeof throughTheVisit>>;
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Bracken', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    owner = await throughTheVisit(road);
    reader = await getRead(road, road.study().id, { joints: readings.hipLaxity! });
    await release(road, road.study().id);
    await server.mail.wait(road.email, /a letter/);
    await server.settled();
  });

  it('is offered on the owner’s page with its last day, and asked for once', async () => {
    const { results } = await owner.read<OwnerPage>('/api/owner');
    expect(results[0]!.appeal).toMatchObject({ study: road.study().id, until: expect.stringMatching(/^\d{4}-\d\d-\d\d$/) });
    const { study, result } = results[0]!.appeal!;
    await owner.send('/api/owner/appeal', { study, result });
    expect((await owner.post('/api/owner/appeal', { study, result })).status).toBe(422);
    await road.look();
    expect(road.study()).toMatchObject({ step: 'appealed', chase: { clock: 'result' } });
  });

  it('is asked of the centre by mail, with the first reading taken off its page', async () => {
    const mail = await server.mail.wait('films@threnfold.example', /^Second reading of package/);
    expect(mail.text).toContain('another reader');
    expect(mail.text).not.toMatch(/0\.38|0\.44|Bracken/);
    const again = await reader.session.read<{ reading: unknown; state: string }>(reader.path);
    expect(again).toMatchObject({ reading: null, state: 'acknowledged' });
  });

  it('is not made by the reader of the first', async () => {
    const same = await reader.session.post(`${reader.path}/result`, { joints: [{ joint: 'left', value: 0.4 }, { joint: 'right', value: 0.5 }], signedBy: 'Noemi Haskel' });
    expect(same.body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'signedBy' }] });
  });

  it('stands, whichever way it goes, and the letter says that this was said beforehand', async () => {
    await reader.session.send(`${reader.path}/result`, { joints: [{ joint: 'left', value: 0.52 }, { joint: 'right', value: 0.6 }], signedBy: 'Tobin Arkwell' });
    await road.look('vet');
    const { results } = road.study();
    expect((await road.attempt('vet', 'acceptResult', road.study().id, { result: results[0]!.id })).body).toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('does not wait') });
    expect((await road.attempt('vet', 'refuseResult', road.study().id, { result: results[1]!.id, reason: 'implausible' })).body).toMatchObject({ code: 'BAD_INPUT' });
    expect((await road.attempt('desk', 'closeAppeal', road.study().id, { reason: 'notPossible' })).status).toBe(422);
    await accept(road, road.study().id);
    await road.act('vet', 'releaseLetter', road.study().id, {});
    const { text } = await readPdf((await server.mail.wait(road.email, /a letter/, 2)).attachments[0]!.content);
    expect(text).toContain('this second reading stands, whichever way it went');
    expect(text).toContain('0.60');
    expect(road.study().results.map((r) => [r.reading, r.state])).toEqual([['first', 'superseded'], ['second', 'accepted']]);
  });
});

describe('a result of another dog, found before the letter', () => {
  it('leaves the road, opens an incident for manager and scheme lead, and is closed with words, once', async () => {
    const road = await atCentre('Fern');
    const result = await enters(road, 'desk', { ref: 'K-9', channel: 'file', joints: readings.hipLaxity! });
    await road.act('vet', 'refuseResult', road.study().id, { result, reason: 'otherDog' });
    expect(road.study()).toMatchObject({ step: 'withCentre', results: [{ state: 'refused' }] });
    expect(road.screen.incidents).toMatchObject([{ kind: 'wrongDogHeld', closedAt: null, words: null }]);
    const manager = await road.as('manager');
    const address = demoSignIns().find((s) => s.name === road.house.manager.name)!.email;
    expect((await server.mail.wait(address, /an incident is open/)).text).toContain('found before a letter went out');
    const path = `/api/orders/${road.id}/incidents/${road.screen.incidents[0]!.id}/close`;
    expect((await (await road.as('vet')).post(path, { words: 'Two sheets lay in one envelope.' })).body).toMatchObject({ code: 'NOT_YOUR_ROLE' });
    await manager.send(path, { words: 'Two sheets lay in one envelope.' });
    expect((await manager.post(path, { words: 'Again.' })).body).toMatchObject({ code: 'ALREADY_THERE' });
    const lead = await server.as('Oda Fering');
    const scheme = await lead.read<SchemeScreen>('/api/scheme');
    expect(scheme.incidents).toMatchObject([{ accession: road.screen.accession, what: expect.stringContaining('another dog'), closedOn: expect.any(String) }]);
    expect(JSON.stringify(scheme.incidents)).not.toContain('envelope');
  });
});

it('knows no certificate under an invented number', async () => {
  const page = await request(server.url).get('/api/certificates/AAAA-AAAA-AAAA-AAAA');
  expect(page.status).toBe(404);
  expect(page.body as Partial<CertificateCheck>).not.toHaveProperty('state');
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
