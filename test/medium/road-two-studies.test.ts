import { createHash } from 'node:crypto';
import type { CapturedMail } from '#libs/platform/mail/capture-server';
import type { CertificateCheck, OwnerPage } from '#libs/contracts/screens/owner';
import { readCode, verifyFacts } from '#libs/documents/check-code';
import type { CertificateSnapshot } from '#libs/documents/snapshots';
import { addDays } from '#libs/pathway/days';
import { instantOf } from '#libs/steps/record/local-time';
import request from 'supertest';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { accept, AtReader, dispatch } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { admit, goHome, image, ownerSigns, sedate } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let owner: Session;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });
// Each test is the next part of one road.
const hip = () => road.study('hipLaxity');
const elbow = () => road.study('elbow');
const pdfs = (mail: CapturedMail) => mail.attachments.filter((a) => a.contentType === 'application/pdf');

describe('a dog booked for hips and elbows', () => {
  it('is confirmed by a mail with text, page, calendar invitation, the vet’s advice and the link', async () => {
    road = await Road.book(server, { dog: 'Alder', studies: [['hipLaxity', 'threnfold'], ['elbow', 'threnfold']] });
    const mail = await server.mail.wait('ilse@longreach.example', /visit on/);
    const raw = mail.raw.toString();
    expect(raw).toMatch(/Content-Type: text\/plain/);
    expect(raw).toMatch(/Content-Type: text\/html/);
    expect(raw).toMatch(/Content-Type: text\/calendar;[^]*method=REQUEST/);
    expect(mail.text).toContain('Give no food in the night before the visit.');
    for (const study of ['Hips, laxity', 'Elbows']) expect(mail.text).toContain(study);
    expect(mail.text).toMatch(/https:\/\/cotyla\.example\/o\/[\w-]{40,}/);
    expect(mail.html).toContain('Give no food in the night before the visit.');
    const invitation = mail.attachments.find((a) => a.filename === 'invitation.ics')!.content.toString().replaceAll('\r\n ', '');
    expect(invitation).toContain('METHOD:REQUEST');
    expect(invitation).toContain(`UID:visit-${road.visit.id}`);
    expect(invitation).toContain(`DTSTART:${instantOf(road.slot.day, road.slot.start, road.house.zone).toISOString().replace(/[-:]|\.000/g, '')}`);
    const row = await server.look((tx) => tx.message.findFirstOrThrow({ where: { orderId: road.id, kind: 'confirmation' } }));
    expect(mail.messageId).toBe(`<${row.id}@cotyla.example>`);
  });

  it('is held by what the owner has to say, until the owner has said it behind the link', async () => {
    const before = road.screen.holds.map((h) => h.code);
    expect(before).toEqual(expect.arrayContaining(['ESTIMATE_NOT_ACCEPTED', 'CONSENT_SEDATION_MISSING', 'CONSENT_STUDY_MISSING', 'CONSENT_SEND_ALL_MISSING']));
    owner = await ownerSigns(road);
    const page = await owner.read<OwnerPage>('/api/owner');
    expect(page.toDo).toEqual([]);
    expect(page.consents).toMatchObject({ sedation: { answered: 'yes' }, sendAll: { answered: 'yes' }, statistics: { answered: 'yes' }, studies: [{ answered: 'yes' }, { answered: 'yes' }] });
    expect(road.screen.holds.map((h) => h.code)).toEqual(['BEFORE_THE_DAY']);
  });

  it('is reminded of two days before, with a link of its own', async () => {
    await server.until(instantOf(addDays(road.slot.day, -2), '10:00', road.house.zone));
    const mail = await server.mail.wait('ilse@longreach.example', /your visit on/);
    expect(mail.text).toMatch(/https:\/\/cotyla\.example\/o\//);
  });

  it('is admitted, and sleeps by a plan whose arithmetic is shown in both directions', async () => {
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    const { lines } = road.visit.plans[0]!;
    // 24 kg × 1 mg/kg = 24 mg; 24 mg ÷ 100 mg/mL = 0.24 mL: computed by hand.
    expect(lines[0]!.words).toMatch(/0\.24\smL/);
    expect(lines[0]!.steps.join(' ')).toMatch(/24\skg.*24\smg.*100\smg\/mL.*0\.24\smL/);
    const shown = await (await road.as('vet')).send<{ lines: { back: string }[] }>('/api/sedation/arithmetic', { weightKg: 24, drugs: [{ drug: 'Example sedative (invented)', route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }] });
    expect(shown.lines[0]!.back).toMatch(/^1\smg\/kg/);
    expect(road.visit).toMatchObject({ step: 'sedated', scans: [{ place: 'admission', matches: true }, { place: 'table', matches: true }] });
  });

  it('has each view taken once, judged by the operator, and every film kept', async () => {
    await image(road);
    expect(road.screen.exposures.map((e) => e.view).sort()).toEqual(['mlFlexedLeft', 'mlFlexedRight', 'vdCompression', 'vdDistraction', 'vdExtended']);
    expect(road.screen.exposures.every((e) => e.verdicts.every((v) => v.verdict === 'accept') && e.people.length === 2)).toBe(true);
    expect([hip().step, elbow().step]).toEqual(['ready', 'ready']);
    expect(road.visit.step).toBe('imaged');
  });

  it('goes home with the sheet, printed and mailed', async () => {
    await goHome(road);
    expect(road.visit).toMatchObject({ step: 'home', sheet: { to: 'Ilse Morwen' } });
    const [sheet] = pdfs(await server.mail.wait('ilse@longreach.example', /goes home/));
    const { text } = await readPdf(sheet!.content);
    expect(text).toContain('Normal tonight');
    expect(text).toContain('Call at once if Alder');
    expect(text).toContain('0470 21 00');
    expect(text).not.toMatch(/mg|mL/);
    const paper = await owner.get(`/api/owner/documents/${road.visit.sheet!.document}`).expect(200);
    expect(paper.headers['content-type']).toBe('application/pdf');
  });
});

describe('its pictures', () => {
  let atHips: AtReader;

  it('reach the reader behind a link: a zip whose manifest tells the hash of every film', async () => {
    atHips = await dispatch(road, hip().id);
    await dispatch(road, elbow().id);
    await atHips.acknowledge();
    const files = await unzip(await atHips.session.bytes(`${atHips.path}/zip`));
    const { films, manifest } = JSON.parse(files.get('manifest.json')!.toString()) as { manifest: string; films: { file: string; sha256: string; view: string }[] };
    expect(films.map((f) => f.view)).toEqual(['vdExtended', 'vdCompression', 'vdDistraction']);
    for (const { file, sha256 } of films) expect(createHash('sha256').update(files.get(file)!).digest('hex')).toBe(sha256);
    expect([...files.keys()].sort()).toEqual([...films.map((f) => f.file), 'manifest.json', 'summary.json'].sort());
    expect(manifest).toBe(hip().packages[0]!.manifest);
  });

  it('say nothing there of owner or practice', async () => {
    const everything = JSON.stringify(atHips.screen) + JSON.stringify(await atHips.session.read('/api/reader/packages'));
    for (const word of ['Ilse', 'Morwen', 'Weirside', 'Alder', road.screen.accession]) expect(everything).not.toContain(word);
    await atHips.session.get(`/api/orders/${road.id}`).expect(404);
  });

  it('are read joint by joint, and the reading waits for the vet', async () => {
    await atHips.reads({ joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }], comment: 'Both rims easy to follow.' });
    await road.look('vet');
    expect(hip()).toMatchObject({ step: 'answered', results: [{ state: 'waiting', by: 'Noemi Haskel', joints: [{ words: '0.38' }, { words: '0.44' }] }] });
    expect(server.mail.to('ilse@longreach.example').some((m) => /a letter/.test(m.subject))).toBe(false);
  });
});

describe('its hips', () => {
  let letter: CapturedMail;
  let check: CertificateCheck;

  it('are reported in a mail with two papers whose subject tells no result, while the elbows are still out', async () => {
    await accept(road, hip().id);
    await road.act('vet', 'releaseLetter', hip().id, {});
    letter = await server.mail.wait('ilse@longreach.example', /a letter/);
    expect(letter.subject).toBe('Alder: a letter from Weirside Animal Practice');
    expect(letter.text).not.toMatch(/0\.\d\d/);
    expect(pdfs(letter)).toHaveLength(2);
    await server.settled();
    await road.look();
    expect([hip().step, elbow().step]).toEqual(['reported', 'sent']);
    expect(hip().letters).toMatchObject([{ kind: 'result', outcomes: [{ toName: 'Ilse Morwen', outcome: 'delivered' }] }]);
    const facts = await server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type: 'letterOutcome' } }));
    expect(facts).toMatchObject([{ by: 'queue', body: { outcome: 'delivered', to: road.dog.person.id } }]);
  });

  it('are told in the letter with dog, values, how sure, what it cannot tell, and what is still out', async () => {
    const papers = await Promise.all(pdfs(letter).map((a) => readPdf(a.content)));
    const { text, title } = papers[0]!;
    const serial = await serialOf(road);
    expect(title).toContain('Alder’s hips');
    for (const words of ['Alder of the Long Reach', 'Aldra Water Hound', '0.38', '0.44', 'What the reading cannot tell', 'It does not tell whether Alder has pain or will be lame.', 'How sure this is', 'Elbows', 'Noemi Haskel', serial]) expect(text).toContain(words);
    const result = papers[1]!.text;
    for (const words of ['Statement of a screening result', 'Alder of the Long Reach', '0.38', '0.44', serial, road.slot.operator.name]) expect(result).toContain(words);
    expect(result).not.toContain('Morwen');
  });

  it('have a page that shows every printed fact and that the paper stands', async () => {
    check = (await request(server.url).get(`/api/certificates/${await serialOf(road)}`).expect(200)).body as CertificateCheck;
    expect(check).toMatchObject({ state: 'valid', replacedBy: null });
    expect(check.printed).toContainEqual({ label: 'Dog', value: 'Alder of the Long Reach', said: null });
    const { text } = await readPdf(pdfs(letter)[1]!.content);
    const squeezed = text.replace(/\s+/g, '');
    for (const { value } of check.printed) for (const part of value.split(/; |\. /)) expect(squeezed).toContain(part.replace(/\s+|\.$/g, ''));
    expect(JSON.stringify(check)).not.toContain('Morwen');
  });

  it('have a code that proves the facts with the published key alone, and not after one letter was changed', async () => {
    const { pem } = (await request(server.url).get('/api/certificates/public-key').expect(200)).body as { pem: string };
    const row = await server.look((tx) => tx.document.findFirstOrThrow({ where: { orderId: road.id, kind: 'certificate' } }));
    const signed = readCode((row.snapshot as unknown as CertificateSnapshot).code)!;
    expect(verifyFacts(signed, pem)).toEqual(check.printed.map(({ label, value }) => [label, value]));
    const { payload } = signed;
    for (const at of [3, Math.floor(payload.length / 2)]) {
      const other = payload[at] === 'A' ? 'B' : 'A';
      expect(verifyFacts({ ...signed, payload: payload.slice(0, at) + other + payload.slice(at + 1) }, pem)).toBeNull();
    }
  });

  it('are on the owner’s page with letter and sheet', async () => {
    const page = await owner.read<OwnerPage>('/api/owner');
    expect(page.results).toMatchObject([{ study: 'Hips, laxity', words: ['Left hip: 0.38', 'Right hip: 0.44'] }]);
    expect(page.documents.map((d) => d.name)).toEqual(expect.arrayContaining(['Going-home sheet', 'Hips, laxity, letter to Ilse Morwen', 'Hips, laxity, result sheet']));
  });
});

describe('its elbows', () => {
  it('are reported later, in a letter of their own, and then nothing is open', async () => {
    const reader = await AtReader.of(road, elbow().id);
    await reader.acknowledge();
    await reader.reads({ joints: [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '1', findings: { primaryLesion: 'absent' } }] });
    await road.look('vet');
    await accept(road, elbow().id);
    await road.act('vet', 'releaseLetter', elbow().id, {});
    const papers = await Promise.all(pdfs(await server.mail.wait('ilse@longreach.example', /a letter/, 2)).map((a) => readPdf(a.content)));
    expect(papers[0]!.text).toContain('mild arthrosis');
    // The practice has a delegation, and elbows are among what a practice may certify.
    expect(papers[1]!.text).toMatch(/^Certificate/);
    await server.settled();
    await road.look();
    expect([hip().step, elbow().step]).toEqual(['reported', 'reported']);
    expect(road.screen.holds).toEqual([]);
  });
});

describe('the audit of the order', () => {
  it('has a row for every change, with who and in which role', async () => {
    const { facts, rows } = await server.look(async (tx) => ({
      facts: await tx.fact.findMany({ where: { orderId: road.id } }),
      rows: await tx.audit.findMany({ where: { orderId: road.id } }),
    }));
    const told = new Map(rows.flatMap((row) => ((row.detail as { facts?: { id: string }[] }).facts ?? []).map((f) => [f.id, `${row.by} ${row.role}`])));
    expect(facts.length).toBeGreaterThan(50);
    for (const fact of facts) expect([fact.type, told.get(fact.id)]).toEqual([fact.type, `${fact.by} ${fact.role}`]);
    expect(rows.filter((r) => r.action === 'storeImage')).toHaveLength(5);
  });

  it('has a row for every look: the practice’s, the owner’s and the reader’s', async () => {
    const rows = await server.look((tx) => tx.audit.findMany({ where: { orderId: road.id } }));
    const views = rows.filter((r) => r.action === 'view');
    const count = (all: string[]) => Object.fromEntries([...new Set(all)].sort().map((one) => [one, all.filter((x) => x === one).length]));
    expect(count(views.filter((r) => r.role !== 'owner').map((r) => r.by))).toEqual(count(road.looks));
    expect(views.filter((r) => r.role === 'owner').length).toBeGreaterThan(0);
    expect(rows.filter((r) => r.action === 'openDocument')).toMatchObject([{ by: road.dog.person.id, role: 'owner' }]);
    expect(rows.filter((r) => r.action === 'downloadPackage')).toMatchObject([{ role: 'reader' }]);
    expect(rows.filter((r) => r.action === 'viewPackage').every((r) => r.role === 'reader')).toBe(true);
    expect(rows.every((r) => r.by && r.role && r.practiceId === road.house.id)).toBe(true);
  });

  it('was made without a fault inside the server', () => expect(server.errors).toEqual([]));
});

async function serialOf({ id }: Road): Promise<string> {
  const row = await server.look((tx) => tx.document.findFirstOrThrow({ where: { orderId: id, kind: 'certificate' }, orderBy: { at: 'asc' } }));
  return row.serial!;
}
