import { randomUUID } from 'node:crypto';
import type { DataRequestList } from '#libs/contracts/requests';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { wilson } from '#libs/science/population/wilson';
import { lead } from '#seed/practices';
import { withAKill } from '#test/support/after-a-kill';
import { readPdf } from '#test/support/read-pdf';
import { Road, type Who } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, getRead } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { admit, ownerSigns, sedate, takeView, throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const exported = async (road: Road, who: Who) => (await road.as(who)).get(`/api/orders/${road.id}/record.zip`);
const refusal = (answer: { status: number; body: unknown }) => [answer.status, (answer.body as { code: string }).code];

describe('a dog that dies in our care', () => {
  let road: Road;
  let diedAt: string;
  let mails: number;
  const toOwner = () => server.mail.to(road.email).filter((m) => m.subject.includes(road.dog.call));

  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']] });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await takeView(road, 'vdExtended');
    server.clock.advance({ minutes: 5 });
    await road.act('nurse', 'recordEvent', road.visit.id, { what: 'Resuscitation begun, as the owner had wished.' });
    server.clock.advance({ minutes: 16 });
    mails = toOwner().length;
    await road.act('vet', 'recordDeath', road.id, { day: road.today, inCare: true, cause: 'Not known yet.' });
    diedAt = server.clock.now().toISOString();
  }, 60_000);

  it('freezes the record, sets a legal hold, and asks for one person who speaks with the family, all by one action', () => {
    expect(road.screen).toMatchObject({ frozen: true, silent: true, calm: { legalHold: true, caseOwner: null, death: { inCare: true, day: road.today }, late: [] } });
    expect(road.screen.holds.map((h) => h.code)).toEqual(expect.arrayContaining(['DEATH', 'CASE_OWNER_MISSING', 'LEGAL_HOLD']));
    // Nobody is asked to agree another day with this family.
    expect(road.screen.holds.map((h) => h.code)).not.toContain('NO_VISIT');
    expect(road.screen.holds.find((h) => h.on.id === road.study().id)!.code).toBe('AFTER_DEATH_UNDECIDED');
    expect(road.screen.dog.died).toBe(road.today);
    expect(road.visit.step).toBe('died');
  });

  it('keeps every reading and every batch', () => {
    expect(road.screen.calm).toMatchObject({ readings: road.visit.readings.length, batches: 1 });
    expect(road.visit.readings.length).toBeGreaterThan(1);
  });

  it('marks what is written down later, and does not mark what happens later', async () => {
    server.clock.advance({ hours: 4 });
    const earlier = new Date(Date.parse(diedAt) - 22 * 60_000).toISOString();
    const added = await road.attempt('nurse', 'recordEvent', road.visit.id, { what: 'Capillary refill was 3 seconds; I had noted it on paper.' }, { at: earlier });
    expect(added.status).toBe(200);
    await road.act('nurse', 'recordDrug', road.visit.id, { event: 'discarded', drug: 'Example sedative (invented)', batch: 'EX-0001', amountMl: 0.1 });
    await road.look('vet');
    expect(road.screen.calm!.late).toMatchObject([{ at: earlier, what: 'Capillary refill was 3 seconds; I had noted it on paper.', by: road.name('nurse') }]);
    expect(road.screen.happened.filter((h) => h.late)).toHaveLength(1);
  });

  it('is silent: nothing is sent to the family, however much time passes', async () => {
    await server.until(road.at(9, '10:00'));
    await server.sweep();
    expect(toOwner()).toHaveLength(mails);
    const { rows } = await (await road.as('desk')).read<{ rows: { accession: string }[] }>('/api/orders?show=all');
    expect(rows.map((r) => r.accession)).toContain(road.screen.accession);
  });

  it('leaves with its history for the named person, and for nobody else', async () => {
    expect(refusal(await exported(road, 'vet'))).toEqual([422, 'NOT_AT_THIS_STEP']);
    const manager = await road.as('manager');
    await road.act('vet', 'nameCaseOwner', road.id, { person: manager.me.id! });
    expect(road.screen.calm!.caseOwner).toEqual({ id: manager.me.id, name: road.name('manager') });
    expect(refusal(await exported(road, 'vet'))).toEqual([403, 'NOT_YOUR_ROLE']);
    expect(refusal(await exported(road, 'nurse'))).toEqual([403, 'NOT_YOUR_ROLE']);
    const files = await unzip(await manager.bytes(`/api/orders/${road.id}/record.zip`));
    const text = (name: string) => files.get(name)!.toString();
    expect(text('drugs.csv')).toContain('EX-0001');
    expect(text('readings.csv').trim().split('\r\n')).toHaveLength(1 + road.visit.readings.length);
    expect(text('late.csv')).toMatch(/Capillary refill .*late/);
    expect(text('audit.csv')).toContain(`recordDeath`);
    expect(text('audit.csv')).toContain('exportRecord');
    expect((JSON.parse(text('facts.json')) as { type: string }[]).filter((f) => f.type === 'readingTaken')).toHaveLength(road.visit.readings.length);
    expect([...files.keys()].filter((f) => f.startsWith('films/'))).toHaveLength(1);
    const listed = (JSON.parse(text('manifest.json')) as { files: { file: string }[] }).files.map((f) => f.file).sort();
    expect(listed).toEqual([...files.keys()].filter((f) => f !== 'manifest.json').sort());
    const paper = await readPdf(files.get('record.pdf')!);
    for (const words of ['EX-0001', 'Capillary refill was 3 seconds', 'in our care', `Speaks with the family: ${road.name('manager')}`, 'Resuscitation begun']) expect(paper.text).toContain(words);
    expect(paper.tags).toEqual(expect.arrayContaining(['H1', 'Table', 'TH', 'TD']));
  });

  it('is kept against an erasure, on this order, through another one, and through a request', async () => {
    const held = await road.attempt('manager', 'erasePerson', road.id, { person: road.dog.person.id });
    expect(refusal(held)).toEqual([422, 'HELD']);
    const other = await Road.book(server, { dog: 'Grayle', studies: [['elbow', 'threnfold']], inDays: 1 });
    expect(other.dog.person.id).toBe(road.dog.person.id);
    const through = await other.attempt('manager', 'erasePerson', other.id, { person: other.dog.person.id });
    expect(refusal(through)).toEqual([422, 'HELD']);
    expect((through.body as { message: string }).message).toContain(road.screen.accession);
    const manager = await road.as('manager');
    const { rows } = await manager.send<DataRequestList>('/api/requests', { person: road.dog.person.id, kind: 'erasure', asked: 'Forget us.', received: road.today });
    await manager.send(`/api/requests/${rows[0]!.id}/verified`, { how: 'Called back on the number in the register.' });
    const refused = await manager.post(`/api/requests/${rows[0]!.id}/erased`);
    expect(refusal(refused)).toEqual([422, 'HELD']);
    expect((refused.body as { message: string }).message).toContain(road.screen.accession);
    expect(await server.look((tx) => tx.person.count({ where: { id: road.dog.person.id, erasedAt: null } }))).toBe(1);
    expect(await server.look((tx) => tx.tombstone.count())).toBe(0);
  });

  it('is let go by two people, never by one', async () => {
    const manager = await road.as('manager');
    await road.look('manager');
    expect(refusal(await road.attempt('manager', 'liftLegalHold', road.id, { why: 'Settled.', second: manager.me.id! }))).toEqual([400, 'BAD_INPUT']);
    await road.act('manager', 'liftLegalHold', road.id, { why: 'Settled with the family.', second: (await road.as('vet')).me.id! });
    expect(road.screen).toMatchObject({ frozen: true, calm: { legalHold: false } });
  });

  it('is counted for the scheme’s lead with an interval, and no practice is named beside it', async () => {
    const { harm } = await (await server.as(lead.name)).read<SchemeScreen>('/api/scheme');
    expect(harm).toEqual({ sedated: 1, since: expect.any(String) as unknown, diedInCare: { count: 1, interval: wilson(1, 1) }, harmed: { count: 0, interval: wilson(0, 1) } });
    expect(JSON.stringify(harm)).not.toContain(road.house.name);
  });
});

describe('a dog that comes to harm while a letter waits for the morning', () => {
  let road: Road;
  const letters = () => server.mail.to(road.email).filter((m) => /letter/.test(m.subject) && m.subject.includes(road.dog.call));

  beforeAll(async () => {
    await server.look((tx) => tx.$executeRaw`UPDATE practice SET policy = jsonb_set(policy, '{quiet}', '{"from": 20, "to": 8}'::jsonb)`);
    road = await Road.book(server, { dog: 'Rowan', studies: [['elbow', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    await getRead(road, road.study().id);
    await accept(road, road.study().id);
    await server.until(road.at(1, '21:10'));
    await road.act('vet', 'releaseLetter', road.study().id, {});
    await road.act('vet', 'recordHarm', road.id, { what: 'The owner phoned: the dog does not wake properly.' });
  }, 60_000);

  it('gets no letter in the morning, nor later', async () => {
    await server.until(road.at(3, '10:00'));
    await server.sweep();
    expect(letters()).toEqual([]);
    await road.look('vet');
    expect(road.screen.messages.filter((m) => m.kind === 'result')).toMatchObject([{ state: 'waiting', detail: 'waits: HARM' }]);
  });

  it('gets it once, when a vet lifts the silence after somebody was named', async () => {
    expect(refusal(await road.attempt('vet', 'liftSilence', road.id, { why: 'The owner asked.' }))).toEqual([422, 'HELD']);
    await road.act('vet', 'nameCaseOwner', road.id, { person: (await road.as('vet')).me.id! });
    const key = randomUUID();
    await withAKill(road, async () => {
      for (let i = 0; i < 2; i++) expect((await road.attempt('vet', 'liftSilence', road.id, { why: 'The owner asked for the letter.' }, { key })).status).toBe(200);
    });
    await server.until(road.at(3, '10:30'));
    await server.sweep();
    await server.sweep();
    expect(letters()).toHaveLength(1);
  });
});

it('a record that is not frozen has no such export', async () => {
  const road = await Road.book(server, { dog: 'Juniper', studies: [['elbow', 'threnfold']], inDays: 1 });
  expect(refusal(await exported(road, 'manager'))).toEqual([422, 'NOT_AT_THIS_STEP']);
});
