import type { Bundle, Consent, DiagnosticReport, Observation, OperationOutcome, Patient, Resource, ServiceRequest } from '@medplum/fhirtypes';
import type { Keys, Scope } from '#libs/contracts/integrations';
import { fhirTypes, type FhirType } from '#libs/fhir/resources';
import { LIMITS } from '#libs/platform/limits/limits';
import { faultsOf } from '#test/support/fhir-definitions';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { signIn, type Visitor } from './access-support/visitor.js';

let open: OpenApi;
let manager: Visitor;
let everything: Program;
let stranger: Program;

/** Another program, with a key. */
class Program {
  constructor(readonly key: string) {}
  async ask(path: string, headers: Record<string, string> = {}): Promise<{ status: number; body: Resource; headers: Headers }> {
    const answer = await fetch(path.startsWith('http') ? path.replace(/^https:\/\/cotyla\.example/, open.url) : `${open.url}/fhir/${path}`, { headers: { authorization: `Bearer ${this.key}`, ...headers } });
    expect(answer.headers.get('content-type')).toBe('application/fhir+json; charset=utf-8');
    return { status: answer.status, body: (await answer.json()) as Resource, headers: answer.headers };
  }
  async found<T extends Resource = Resource>(path: string): Promise<T[]> {
    const { status, body } = await this.ask(path);
    expect(status).toBe(200);
    return ((body as Bundle).entry ?? []).filter(({ search }) => search?.mode === 'match').map(({ resource }) => resource as T);
  }
}

const keyOf = async (who: Visitor, scopes: Scope[], name = 'Practice software'): Promise<Program> => {
  const answer = await who.post('/api/practice/keys', { name, scopes });
  expect(answer.status).toBe(200);
  return new Program((answer.body as Keys).made!.key);
};
const road = (dog: string) => open.roads.find((r) => r.dog.call === dog)!;

beforeAll(async () => {
  open = await openApi(['Heron', 'Lichen', 'Tansy', 'Sleet', 'Wenna']);
  manager = await signIn(open.url, `${road('Heron').house.manager.name.split(' ')[0]!.toLowerCase()}@weirside.example`);
  everything = await keyOf(manager, ['orders', 'results', 'owners']);
  const lichen = road('Lichen').house;
  stranger = await keyOf(await signIn(open.url, `${lichen.manager.name.split(' ')[0]!.toLowerCase()}@hillfoot.example`), ['orders', 'results', 'owners']);
}, 240_000);
afterAll(() => open.close());

describe('what another program reads', () => {
  it('is without a fault by the published definitions, kind by kind and page by page', async () => {
    const counted: Record<string, number> = {};
    for (const type of fhirTypes.filter((t) => t !== 'RelatedPerson')) {
      let next: string | undefined = `${type}?_count=3`;
      const ids: string[] = [];
      while (next) {
        const bundle: Bundle = (await everything.ask(next)).body as Bundle;
        expect(faultsOf(bundle)).toEqual([]);
        const resources = (bundle.entry ?? []).map((e) => e.resource!);
        expect(resources.length).toBeLessThanOrEqual(3);
        for (const resource of resources) expect({ type, faults: faultsOf(resource) }).toEqual({ type, faults: [] });
        ids.push(...resources.map((r) => r.id!));
        next = bundle.link?.find((l) => l.relation === 'next')?.url;
      }
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids).toEqual((await everything.found(`${type}?_count=200`)).map((r) => r.id));
      counted[type] = ids.length;
    }
    for (const type of fhirTypes.filter((t) => t !== 'RelatedPerson')) expect({ type, some: counted[type]! > 0 }).toEqual({ type, some: true });
  }, 120_000);

  it('begins at the order’s number and leads to the result', async () => {
    const { accession, dog } = road('Heron');
    const orders = await everything.found<ServiceRequest>(`ServiceRequest?identifier=${accession}`);
    expect(orders.map((o) => o.code?.coding?.[0]?.code).sort()).toEqual(['hipExtended', 'hipLaxity']);
    expect(orders.every((o) => o.status === 'completed' && o.subject?.reference === `Patient/${dog.id}`)).toBe(true);
    const reports = await everything.found<DiagnosticReport>(`DiagnosticReport?patient=Patient/${dog.id}`);
    expect(reports.map((r) => r.status)).toEqual(['final', 'final']);
    for (const { reference } of reports.flatMap((r) => r.result ?? [])) {
      const { status, body } = await everything.ask(reference!);
      expect({ status, kind: (body as Observation).status }).toEqual({ status: 200, kind: 'final' });
    }
    const history = (await everything.ask(`DiagnosticReport/${reports[0]!.id}/_history`)).body as Bundle;
    expect(faultsOf(history)).toEqual([]);
    expect(history.entry?.map((e) => (e.resource as DiagnosticReport).status)).toEqual(['final', 'registered']);
    expect(((await everything.ask(`DiagnosticReport/${reports[0]!.id}/_history/1`)).body as DiagnosticReport).status).toBe('registered');
  });

  it('finds a dog by its transponder and by the number of this server', async () => {
    const { dog } = road('Heron');
    const [found] = await everything.found<Patient>(`Patient?identifier=${dog.transponder}`);
    expect(found?.id).toBe(dog.id);
    const animal = found!.identifier!.find((i) => i.use === 'official')!;
    expect((await everything.found(`Patient?identifier=${encodeURIComponent(`${animal.system}|${animal.value}`)}`)).map((p) => p.id)).toEqual([dog.id]);
    expect((await everything.found(`RelatedPerson?patient=${dog.id}`)).map((p) => JSON.stringify(p)).join()).toContain(dog.person.name);
  });

  it('is asked for what has changed since a moment', async () => {
    const all = await everything.found<ServiceRequest>('ServiceRequest?_count=200');
    const times = all.map((r) => r.meta!.lastUpdated!).sort();
    const middle = times[Math.floor(times.length / 2)]!;
    expect((await everything.found(`ServiceRequest?_count=200&_lastUpdated=ge${middle}`)).length).toBe(times.filter((t) => t >= middle).length);
    expect((await everything.found(`ServiceRequest?_count=200&_lastUpdated=lt${middle}`)).length).toBe(times.filter((t) => t < middle).length);
  });

  it('says what it can do to anybody, and nothing more', async () => {
    const answer = await fetch(`${open.url}/fhir/metadata`);
    const statement = (await answer.json()) as Resource;
    expect(answer.status).toBe(200);
    expect(faultsOf(statement)).toEqual([]);
    expect(JSON.stringify(statement)).not.toContain('Weirside');
  });
});

describe('a question that cannot be answered', () => {
  it.each([
    ['Patient/nobody', 404, 'not-found'], ['Patient/11111111-1111-4111-8111-111111111111', 404, 'not-found'], ['Medication', 404, 'not-found'], ['Patient/a/b/c/d', 404, 'not-found'],
    ['ServiceRequest?_count=none', 400, 'invalid'], ['ServiceRequest?_lastUpdated=yesterday', 400, 'invalid'], ['ServiceRequest?after=x', 400, 'invalid'], ['RelatedPerson', 400, 'invalid'], ['Patient?_format=xml', 400, 'invalid'], ['ServiceRequest?patient=a&patient=b', 400, 'invalid'],
    ['Appointment/11111111-1111-4111-8111-111111111111/_history', 404, 'not-found'],
  ])('%s: %i, with words', async (path, status, code) => {
    const answer = await everything.ask(path);
    expect({ status: answer.status, issue: (answer.body as OperationOutcome).issue?.[0] }).toMatchObject({ status, issue: { severity: 'error', code, diagnostics: expect.any(String) as string } });
    expect(faultsOf(answer.body)).toEqual([]);
  });

  it('says what it left out of account, and refuses instead where that is asked for', async () => {
    const { body } = await everything.ask('ServiceRequest?colour=red');
    expect((body as Bundle).entry?.at(-1)).toMatchObject({ search: { mode: 'outcome' }, resource: { issue: [{ severity: 'warning' }] } });
    expect(faultsOf(body)).toEqual([]);
    expect((await everything.ask('ServiceRequest?colour=red', { prefer: 'handling=strict' })).status).toBe(400);
  });

  it('changes nothing: there is no way to write', async () => {
    for (const method of ['POST', 'PUT', 'DELETE']) {
      const answer = await fetch(`${open.url}/fhir/Patient`, { method, headers: { authorization: `Bearer ${everything.key}` } });
      expect(answer.status).toBe(404);
      expect(((await answer.json()) as OperationOutcome).resourceType).toBe('OperationOutcome');
    }
  });
});

describe('a key', () => {
  it('reads what it was made for and nothing else', async () => {
    const results = await keyOf(manager, ['results']);
    const orders = await keyOf(manager, ['orders']);
    const statuses = async (program: Program) => Object.fromEntries(await Promise.all(fhirTypes.map(async (type) => [type, (await program.ask(`${type}?patient=${road('Heron').dog.id}`)).status] as const)));
    expect(await statuses(results)).toMatchObject({ Patient: 200, Observation: 200, DiagnosticReport: 200, ServiceRequest: 403, Consent: 403, RelatedPerson: 403, Task: 403 });
    expect(await statuses(orders)).toMatchObject({ Patient: 200, Observation: 403, DiagnosticReport: 403, ServiceRequest: 200, Consent: 200, RelatedPerson: 403, Task: 200 });
    const person = road('Heron').dog.person.name;
    const told = async (program: Program, types: FhirType[]) => JSON.stringify(await Promise.all(types.map((type) => program.found(`${type}?_count=200`))));
    expect(await told(orders, ['Patient', 'ServiceRequest', 'Appointment', 'Consent', 'Procedure', 'ImagingStudy', 'Task'])).not.toContain(person);
    expect(await told(results, ['Patient', 'Observation', 'DiagnosticReport'])).not.toContain(person);
    expect(await told(everything, ['Appointment', 'Consent'])).toContain(person);
  });

  it('of another practice is told nothing of this one, by any id or search', async () => {
    const { dog, accession } = road('Heron');
    for (const type of fhirTypes.filter((t) => t !== 'RelatedPerson')) {
      const theirs = await everything.found(`${type}?patient=${dog.id}&_count=200`);
      for (const { id } of theirs) {
        const nobody = await stranger.ask(`${type}/${id!.replace(/^[0-9a-f]{8}/, '00000000')}`);
        const answer = await stranger.ask(`${type}/${id}`);
        expect({ status: answer.status, body: answer.body }).toEqual({ status: 404, body: nobody.body });
        expect(await stranger.found(`${type}?_id=${id}`)).toEqual([]);
      }
      if (type !== 'Patient') expect(await stranger.found(`${type}?patient=${dog.id}`)).toEqual([]);
      const all = JSON.stringify(await stranger.found(`${type}?_count=200`));
      for (const word of [dog.id, accession, dog.person.name, '"Heron"']) expect({ type, word, seen: all.includes(word) }).toEqual({ type, word, seen: false });
    }
    expect(await stranger.found(`Patient?identifier=${dog.transponder}`)).toEqual([]);
    expect(await stranger.found(`ServiceRequest?identifier=${accession}`)).toEqual([]);
    expect(await stranger.found(`RelatedPerson?patient=${dog.id}`)).toEqual([]);
    expect((await stranger.found('ServiceRequest')).length).toBeGreaterThan(0);
  }, 120_000);

  it('is shown once, kept as a hash, and its use is noted', async () => {
    const made = await manager.post('/api/practice/keys', { name: 'Diary', scopes: ['orders'] });
    const { key } = (made.body as Keys).made!;
    expect(key).toMatch(/^cotyla_[\w-]{43}$/);
    expect(JSON.stringify((await manager.get('/api/practice/keys')).body)).not.toContain(key.slice(8));
    const { rows } = await open.owner.query<{ row: string }>('SELECT api_key::text AS row FROM api_key');
    expect(rows.map((r) => r.row).join()).not.toContain(key.slice(8));
    const used = async () => ((await manager.get('/api/practice/keys')).body as Keys).rows.find((k) => k.name === 'Diary')!.lastUsed;
    expect(await used()).toBeNull();
    await new Program(key).ask('Patient');
    expect(Date.parse((await used())!)).toBeGreaterThan(Date.now() - 60_000);
  });

  it('leaves a line in the audit for each order that it was handed', async () => {
    const { order, dog } = road('Tansy');
    const before = await open.owner.query(`SELECT 1 FROM audit WHERE order_id = $1 AND action = 'fhirRead'`, [order]);
    await everything.found(`Consent?patient=${dog.id}`);
    const { rows } = await open.owner.query<{ role: string; detail: { name: string; type: string } }>(`SELECT role, detail FROM audit WHERE order_id = $1 AND action = 'fhirRead' ORDER BY id`, [order]);
    expect(rows.slice(before.rowCount!)).toEqual([{ role: 'key', detail: { name: 'Practice software', type: 'Consent' } }]);
  });

  it('opens nothing once it was ended, nor does a session, nor a key that is not whole', async () => {
    const answer = await manager.post('/api/practice/keys', { name: 'Lost', scopes: ['orders'] });
    const { made, rows } = answer.body as Keys;
    const lost = new Program(made!.key);
    expect((await lost.ask('Patient')).status).toBe(200);
    expect((await manager.post(`/api/practice/keys/${rows.find((k) => k.name === 'Lost')!.id}/end`)).status).toBe(200);
    for (const program of [lost, new Program(everything.key.slice(0, -1)), new Program('')]) {
      const refused = await program.ask('Patient');
      expect({ status: refused.status, ask: refused.headers.get('www-authenticate'), code: (refused.body as OperationOutcome).issue?.[0]?.code }).toEqual({ status: 401, ask: 'Bearer', code: 'login' });
    }
    expect((await fetch(`${open.url}/fhir/Patient`, { headers: { cookie: manager.cookie } })).status).toBe(401);
  });

  it('is made, seen and ended by a manager alone', async () => {
    const nurse = await signIn(open.url, 'marit@weirside.example');
    expect((await nurse.get('/api/practice/keys')).status).toBe(403);
    expect((await nurse.post('/api/practice/keys', { name: 'Mine', scopes: ['orders'] })).status).toBe(403);
  });

  it('is slowed when it asks without end', async () => {
    const hasty = await keyOf(manager, ['orders'], 'Hasty');
    let last = 200;
    for (let n = 0; n <= LIMITS.key.points && last === 200; n += 20) last = Math.max(...(await Promise.all(Array.from({ length: 20 }, () => hasty.ask('Patient/none')))).map((a) => (a.status === 404 ? 200 : a.status)));
    expect(last).toBe(429);
    expect((await everything.ask('Patient?_count=1')).status).toBe(200);
  });
});

it('a consent taken back is inactive, and one that was refused is told as refused', async () => {
  const statuses = new Set((await everything.found<Consent>('Consent?_count=200')).map((c) => c.status));
  expect([...statuses]).toEqual(expect.arrayContaining(['active']));
  expect([...statuses].every((s) => ['active', 'inactive', 'rejected'].includes(s!))).toBe(true);
  expect(open.broken).toEqual([]);
});
