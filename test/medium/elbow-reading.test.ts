import type { Joint } from '#libs/contracts/common';
import { addToOutbox } from '#libs/platform/database/outbox';
import { queueActor } from '#libs/steps/record/actor';
import { append } from '#libs/steps/record/append';
import { lockOrder } from '#libs/steps/record/order-record';
import { workOn } from '#libs/steps/record/work';
import { readPdf } from '#test/support/read-pdf';
import { enters, scanOf } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { dispatch, release, type AtReader } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate, throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

async function atCentre(dog: string): Promise<{ road: Road; reader: AtReader }> {
  const road = await Road.book(server, { dog, studies: [['elbow', 'threnfold']], inDays: 1 });
  await throughTheVisit(road);
  const reader = await dispatch(road, road.study().id);
  await reader.acknowledge();
  await road.look();
  return { road, reader };
}

/** Invented readings. */
const left: Joint = { joint: 'left', value: '0', findings: { osteophytes: 'none', sclerosis: 'none', primaryLesion: 'absent' } };
const right = (osteophytes: string): Joint => ({ joint: 'right', value: '3', findings: { osteophytes, primaryLesion: 'evident', coronoid: true, step: 2.5 } });
const FOUND = ['Bone spurs, the largest: 2 to 5 mm', 'Primary lesion: evident', 'Lesion of the coronoid process', 'Step between radius and ulna 2.5 mm'];

describe('an elbow reading with the size of its spurs', () => {
  let road: Road;
  let reader: AtReader;
  beforeAll(async () => { ({ road, reader } = await atCentre('Nettle')); });

  it('is asked for by the forms of the reader and of the practice', () => {
    for (const { findings } of [reader.screen, road.study()]) {
      expect(findings.find((f) => f.code === 'osteophytes')).toMatchObject({ words: 'Bone spurs, the largest', kind: 'choice', required: false, choices: [{ words: 'none seen' }, { words: 'under 2 mm' }, { words: '2 to 5 mm' }, { words: 'over 5 mm' }] });
      expect(findings.map((f) => f.code)).toEqual(expect.arrayContaining(['sclerosis', 'primaryLesion', 'coronoid', 'anconeal', 'osteochondrosis', 'step']));
    }
  });

  it.each<[string, Joint, RegExp]>([
    ['a grade below its spurs', { joint: 'right', value: '2', findings: { osteophytes: 'over5' } }, /Right elbow: Bone spurs, the largest: “over 5 mm” cannot be grade 2: it makes grade 3 or more/],
    ['a size that is none', { joint: 'right', value: '2', findings: { osteophytes: '4 mm' } }, /Right elbow: Bone spurs, the largest: “4 mm” is not offered/],
    ['the place of a lesion that is absent', { joint: 'right', value: '2', findings: { primaryLesion: 'absent', anconeal: true } }, /“Lesion of the anconeal process” is entered, so “Primary lesion” is “suspected” or “evident”/],
    ['a step as wide as the joint', { joint: 'right', value: '2', findings: { step: 45 } }, /45 mm is outside 0\.0 to 20\.0 mm/],
  ])('is refused with %s, at the practice and on the reader’s page, and nothing is kept', async (_, wrong, words) => {
    const joints = [left, wrong];
    const atPractice = await road.attempt('desk', 'enterResult', road.study().id, { ref: 'E-1', channel: 'file', joints });
    const atReader = await reader.session.post(`${reader.path}/result`, { joints, signedBy: 'Noemi Haskel' });
    for (const { status, body } of [atPractice, atReader]) expect([status, JSON.stringify(body).replaceAll('\\"', '"')]).toEqual([400, expect.stringMatching(words)]);
    expect((await road.look()).studies[0]!.results).toEqual([]);
  });

  it('is read back in the same words on the reader’s page, the order, the file and the letter', async () => {
    await reader.reads({ joints: [left, right('from2to5')] });
    const signed = reader.screen.reading!.joints.map((j) => j.words);
    expect(signed[0]).toBe('grade 0; Bone spurs, the largest: none seen; Denser bone at the coronoid process: none seen; Primary lesion: none seen');
    await road.look('vet');
    expect(road.study().results[0]).toMatchObject({ problems: [], joints: [{}, { words: 'grade 3', flags: FOUND }] });
    await release(road, road.study().id);
    const mail = await server.mail.wait(road.email, /a letter/);
    const letter = (await readPdf(mail.attachments[0]!.content)).text.replace(/\s+/g, ' ');
    const csv = (await (await road.as('desk')).get('/api/orders/results.csv').expect(200)).text;
    for (const words of FOUND) {
      expect([words, signed[1]!.includes(words)]).toEqual([words, true]);
      expect([words, csv.includes(words)]).toEqual([words, true]);
      if (words !== 'Lesion of the coronoid process') expect([words, letter.includes(words)]).toEqual([words, true]);
    }
    expect(letter).toContain('Right elbow: The lesion lies at the coronoid process, the inner edge of the joint.');
    expect(csv).toContain('Elbows,2,Right elbow,grade 3');
  });
});

describe('an elbow reading by post', () => {
  let road: Road;
  beforeAll(async () => { ({ road } = await atCentre('Moth')); });

  it('is keyed twice, and a size keyed differently is held until two are alike', async () => {
    const result = await enters(road, 'desk', { ref: 'K-1', channel: 'post', joints: [left, right('under2')], scan: await scanOf(road) });
    expect(JSON.stringify(await (await road.as('nurse')).read(`/api/orders/${road.id}`))).not.toContain('Bone spurs, the largest: under');
    await road.act('nurse', 'keyResult', road.study().id, { result, joints: [left, right('from2to5')] });
    expect(road.screen.holds.map((h) => h.code)).toContain('KEYED_DIFFERENTLY');
    await road.act('vet', 'keyResult', road.study().id, { result, joints: [left, right('from2to5')] });
    expect(road.screen.holds.map((h) => h.code)).not.toContain('KEYED_DIFFERENTLY');
    expect(road.study().results[0]!.joints[1]!.flags).toEqual(FOUND);
  });

  it('is one with the same reading by another way, and in conflict with one of another size', async () => {
    await enters(road, 'desk', { ref: 'K-2', channel: 'file', joints: [left, right('from2to5')] });
    expect(road.study()).toMatchObject({ conflict: null, results: [{ state: 'copy' }, { state: 'waiting' }] });
    await enters(road, 'desk', { ref: 'K-3', channel: 'file', joints: [left, right('over5')] });
    expect(road.study().conflict).toMatchObject({ differs: ['right'] });
    expect(road.study().conflict!.told).toContain('The right elbow has the same value in both; what was found beside it differs: bone spurs, the largest.');
  });

  it('that nothing recorded beside it explains is held for the vet to look at', async () => {
    const { road: other } = await atCentre('Rill');
    await enters(other, 'desk', { ref: 'K-4', channel: 'file', joints: [left, { ...left, joint: 'right', value: '3' }] });
    expect(other.study().results[0]!.problems).toEqual(['Right elbow: grade 3 was entered, and nothing recorded beside it comes up to that. Look at the entry again, then ask the reader.']);
    expect(other.screen.holds.map((h) => h.code)).toContain('RESULT_TO_EXPLAIN');
  });
});

describe('an order whose films are taken under version 1', () => {
  let road: Road;
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Wenna', studies: [['elbow', 'threnfold']], inDays: 1 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await server.look(async (tx) => {
      const order = (await lockOrder(tx, road.id))!;
      await append(workOn(tx, server.clock.now(), queueActor(order.practice), order, ''), [{ type: 'protocolChanged', study: road.study().id, version: '1' }], { action: 'lookAhead' });
    });
    await road.look('desk');
    await road.act('desk', 'seeProtocolChange', road.study().id, {});
    await image(road);
    await goHome(road);
    await server.look((tx) => addToOutbox(tx, 'look-ahead', {}));
    await server.settled();
    await road.look();
  }, 60_000);

  it('goes on with version 1 and is held by nothing', () => {
    expect(road.study().version).toBe('1');
    expect(road.screen.holds.map((h) => h.code)).not.toContain('PROTOCOL_CHANGED');
  });

  it('is read and counted as before, with those of version 2', async () => {
    const reader = await dispatch(road, road.study().id);
    await reader.acknowledge();
    expect(reader.screen.findings.map((f) => f.code)).toEqual(['primaryLesion', 'operated']);
    const refused = await reader.session.post(`${reader.path}/result`, { joints: [left, { ...left, joint: 'right' }], signedBy: 'Noemi Haskel' });
    expect(refused.body).toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('“osteophytes” is not recorded in this protocol') as string });
    await reader.reads({ joints: [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '2', findings: { primaryLesion: 'absent' } }] });
    await road.look('vet');
    expect(road.study().results[0]!.problems).toEqual([]);
    await release(road, road.study().id);
    const pools = await server.look((tx) => tx.statisticsStudy.findMany({ where: { protocol: 'elbow', counts: true }, select: { pool: true } }));
    expect(pools.map(({ pool }) => pool)).toEqual(['elbow@1', 'elbow@1']);
  });
});
