import { addDays } from '#libs/pathway/days';
import type { Authority } from '#libs/contracts/people';
import type { Dog, Person } from '#libs/contracts/register';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { openLink, type Session } from '#test/support/session';
import { ownerSigns } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let desk: Session;
let coOwner: Person;
let agent: Person;

const CO = 'bent@riverbend.example';
const holds = () => road.screen.holds.map((h) => h.code);
const said = (answer: { body: unknown }) => (answer.body as { message: string }).message;
const covers = ['sedation', 'study', 'sendAll'] as const;

const signsFor = (input: object) => road.attempt('desk', 'consentStudy', road.study().id, { answer: 'yes', signer: agent.id, signerRole: 'agent', typedName: agent.name, ...input });
const authorise = async (more: object = {}) => {
  const body = { agent: agent.id, owner: road.dog.person.id, covers, from: road.today, until: addDays(road.today, 30), evidence: 'Letter of the owner, in the file of the dog.', ...more };
  return desk.post(`/api/dogs/${road.dog.id}/authorities`, body);
};

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']] });
  desk = await road.as('desk');
  coOwner = (await desk.post('/api/people', { name: 'Bent Wick', email: CO }).expect(201)).body as Person;
  agent = (await desk.post('/api/people', { name: 'Ivo Ferry', phone: '0470 99 10', channel: 'none' }).expect(201)).body as Person;
}, 60_000);
afterAll(async () => { await server.close(); });

describe('who signs for a dog', () => {
  it('is not somebody who merely is in the register', async () => {
    const answer = await road.attempt('desk', 'consentStudy', road.study().id, { answer: 'yes', signer: coOwner.id, signerRole: 'owner', typedName: coOwner.name });
    expect([answer.status, said(answer)]).toEqual([400, expect.stringMatching(/Bent Wick is not an owner of this dog/)]);
  });

  it('is asked of one owner alone where the register knows one', async () => {
    const answer = await road.attempt('desk', 'nameSigners', road.id, { rule: 'all' });
    expect([answer.status, said(answer)]).toEqual([400, expect.stringMatching(/knows one owner/)]);
  });
});

describe('where every owner signs', () => {
  beforeAll(async () => {
    await desk.post(`/api/dogs/${road.dog.id}/people`, { person: coOwner.id, role: 'coOwner', from: road.today }).expect(200);
    await road.act('desk', 'nameSigners', road.id, { rule: 'all' });
  });

  it('one owner’s yes is not enough, and the hold names the other', async () => {
    await ownerSigns(road);
    for (const code of ['CONSENT_SEDATION_MISSING', 'CONSENT_STUDY_MISSING', 'CONSENT_SEND_ALL_MISSING']) {
      expect(road.screen.holds.find((h) => h.code === code)?.rest).toMatch(/^Bent Wick signs/);
    }
  });

  it('the other owner sees their own answers alone, signs, and nothing is missing', async () => {
    // A co-owner has no link of their own: the desk writes down what they say.
    const signed = { answer: 'yes' as const, signer: coOwner.id, signerRole: 'owner' as const, typedName: coOwner.name };
    await road.act('desk', 'consentSedation', road.visit.id, { ...signed, emergency: { resuscitate: 'yes', limitMinor: 50_000, number: '0470 11 22', collectors: [coOwner.name] } });
    await road.act('desk', 'consentStudy', road.study().id, signed);
    expect(holds()).toContain('CONSENT_SEND_ALL_MISSING');
    await road.act('desk', 'consentSendAll', road.study().id, signed);
    expect(holds().filter((c) => c.startsWith('CONSENT'))).toEqual([]);
  });

  it('one who takes a yes back stops it for all, until each has said yes anew', async () => {
    const owner = await openLink(server.url, await server.mail.wait(road.email, /^Alder: visit on /));
    await owner.send('/api/owner/withdraw', { purpose: 'sedation', subject: road.visit.id });
    await road.look();
    expect(holds()).toContain('CONSENT_SEDATION_MISSING');
    expect((await owner.read<OwnerPage>('/api/owner')).consents.sedation!.answered).toBe('taken back');
    await owner.send('/api/owner/consents', { visit: road.visit.id, typedName: road.dog.person.name, sedation: { answer: 'yes', emergency: { resuscitate: 'yes', limitMinor: 60_000, number: road.dog.person.phone, collectors: [road.dog.person.name] } } });
    await road.look();
    expect(road.screen.holds.find((h) => h.code === 'CONSENT_SEDATION_MISSING')?.rest).toMatch(/^Bent Wick signs/);
  });

  it('a new order of the dog begins in the same way', async () => {
    const next = await Road.book(server, { dog: 'Alder', studies: [['hipLaxity', 'threnfold']], inDays: 20 });
    expect(next.screen.happened.map((h) => h.what)).toContainEqual(expect.stringMatching(/^Every owner signs: Bent Wick, /));
  });

  it('any owner’s yes is enough again when somebody says so', async () => {
    await road.act('desk', 'nameSigners', road.id, { rule: 'any' });
    expect(holds().filter((c) => c.startsWith('CONSENT'))).toEqual([]);
  });
});

describe('an agent', () => {
  beforeAll(async () => { road = await Road.book(server, { dog: 'Ember', studies: [['elbow', 'threnfold']], inDays: 10 }); });

  it('without a stored authority is refused, and nothing is signed', async () => {
    for (const input of [{}, { authority: '00000000-0000-4000-8000-000000000001' }]) {
      const answer = await signsFor(input);
      expect([answer.status, said(answer)]).toEqual([400, expect.stringMatching(/authority/)]);
    }
    await road.look();
    expect(holds()).toContain('CONSENT_STUDY_MISSING');
  });

  it.each([
    ['of somebody who does not own the dog', { owner: '' }, /does not own this dog/],
    ['that ends before it begins', { until: '2026-01-01' }, /before the first one/],
  ])('an authority %s is not kept', async (_what, more, words) => {
    const answer = await authorise('owner' in more ? { owner: (await desk.post('/api/people', { name: 'Nobody’s Owner', channel: 'none' })).body.id as string } : more);
    expect([answer.status, said(answer)]).toEqual([400, expect.stringMatching(words)]);
  });

  it('signs what the authority covers, while it holds, and nothing else', async () => {
    const narrow = (await authorise({ covers: ['sedation'] })).body as { rows: Authority[] };
    expect(said(await signsFor({ authority: narrow.rows[0]!.id }))).toMatch(/does not cover this/);
    const wide = ((await authorise()).body as { rows: Authority[] }).rows.find((r) => r.covers.length === 3)!;
    await road.look();
    expect(road.screen.choices.authorities!.map((c) => c.name)).toContain(`Ivo Ferry for ${road.dog.person.name}`);
    expect((await signsFor({ authority: wide.id })).status).toBe(200);
    await road.look();
    expect(holds()).not.toContain('CONSENT_STUDY_MISSING');
    await desk.post(`/api/dogs/${road.dog.id}/authorities/${wide.id}/end`).expect(200);
    expect(said(await signsFor({ authority: wide.id }))).toMatch(/was ended/);
  });

  it('whose authority has run out is refused', async () => {
    const until = addDays(road.today, 1);
    const short = ((await authorise({ until })).body as { rows: Authority[] }).rows.find((r) => r.until === until)!;
    await server.until(road.at(-4, '09:00'));
    expect(said(await signsFor({ authority: short.id }))).toMatch(/holds from/);
  });
});

it('the dog’s page names the agent', async () => {
  const dog = await desk.read<Dog>(`/api/dogs/${road.dog.id}`);
  expect(dog.people.filter((p) => p.role === 'agent').map((p) => p.person.name)).toEqual(['Ivo Ferry']);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
