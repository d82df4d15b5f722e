import request from 'supertest';
import type { CertificateCheck, OwnerPage } from '#libs/contracts/screens/owner';
import { certificateFacts } from '#libs/documents/certificate-facts';
import { readCode, verifyFacts } from '#libs/documents/check-code';
import type { CertificateSnapshot } from '#libs/documents/snapshots';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { getRead, release } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate } from '#test/support/visit-legs';

// Anselm Rook of the demo reads German; he owns Tolle.
let server: RunningServer;
let road: Road;
let owner: Session;
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Tolle', studies: [['hipLaxity', 'threnfold'], ['elbow', 'threnfold']], inDays: 1 });
}, 60_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const page = () => owner.read<OwnerPage>('/api/owner');
const german = (words: string) => !/\b(the|and|your|you|is|was|not|with|of)\b/i.test(words);

describe('an owner who reads German', () => {
  it('is invited in German, subject, text and page of the mail alike', async () => {
    const mail = await server.mail.wait(road.email, /Termin am/);
    expect(mail.subject).toMatch(/^Tolle: Termin am \p{L}+, \d+\. \p{L}+ 2026, \d\d:\d\d Uhr$/u);
    expect(mail.text).toContain('Guten Tag Anselm Rook,');
    expect(mail.text).toContain('Bilder: Hüften, Lockerheit; Ellbogen.');
    expect(mail.html).toContain('<html lang="de" dir="ltr">');
  });

  it('finds a German page with the questions, and the practice’s own texts named as English', async () => {
    owner = await ownerSigns(road);
    const { language, status, questions, consents, waiting, toDo } = await page();
    expect(language).toBe('de');
    expect(status).toMatch(/^Tolle wird am .* erwartet\.$/);
    expect([status, ...questions.map((q) => q.words), ...waiting, ...toDo.map((t) => t.words), ...consents.studies.map((s) => `${s.name} ${s.text}`)].filter((words) => !german(words))).toEqual([]);
    expect(consents.sedation).toMatchObject({ language: 'en', text: expect.stringContaining('Your dog') });
  });

  it('takes home the sheet in German, with the practice’s German text', async () => {
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await image(road);
    await goHome(road);
    const mail = await server.mail.wait(road.email, /geht nach Hause/);
    const { text } = await readPdf(mail.attachments[0]!.content);
    for (const said of ['Tolle geht nach Hause', 'Heute Nacht normal', 'Müde, wackelig und still', 'Rufen Sie sofort an, wenn Tolle', 'Die Bilder sind fertig']) expect(text).toContain(said);
  });

  it('gets a letter in German, numbers and days written as there, and frozen as such', async () => {
    const hips = road.study('hipLaxity');
    await getRead(road, hips.id);
    await release(road, hips.id);
    const mail = await server.mail.wait(road.email, /ein Brief von/);
    const letter = await readPdf(mail.attachments.find((a) => a.filename?.includes('Brief'))!.content);
    expect(letter).toMatchObject({ lang: 'de', title: 'Hüften von Tolle' });
    expect(letter.text).toMatch(/Linke Hüfte\s*0,\d\d/);
    for (const said of ['Was gefunden wurde', 'Wie sicher das ist', 'Was die Beurteilung nicht sagen kann', 'Wir entscheiden nicht für Sie', 'Sie können bis zum']) expect(letter.text).toContain(said);
    expect(letter.text).not.toMatch(/\b(the hip|You may|reading centre)\b/);
    const paper = await readPdf(mail.attachments.find((a) => a.filename?.includes('Ergebnisblatt'))!.content);
    expect(paper).toMatchObject({ lang: 'de', title: expect.stringContaining('Mitteilung eines Untersuchungsergebnisses') });
    expect(paper.text).not.toMatch(/\b(the|and|with|version|left|right|none)\b/);
    const { results } = await page();
    expect(results[0]).toMatchObject({ study: 'Hüften, Lockerheit', words: [expect.stringMatching(/^Linke Hüfte: 0,\d\d$/), expect.stringMatching(/^Rechte Hüfte: 0,\d\d$/)] });
  });

  it('has a certificate whose page shows the German lines, and to whoever reads English what they say', async () => {
    const { serial } = road.screen.documents.find((d) => d.kind === 'certificate')!;
    const checked = async (language: string) => (await request(server.url).get(`/api/certificates/${serial!}`).set('accept-language', language).expect(200)).body as CertificateCheck;
    const [german, english] = [await checked('de-AT,de'), await checked('fr,en;q=0.5')];
    expect([german.language, german.says]).toEqual(['de', 'Dieses Papier gilt. Vergleichen Sie jede Zeile mit dem Papier in Ihrer Hand.']);
    expect(german.printed.filter((line) => line.said)).toEqual([]);
    expect([english.language, english.says]).toEqual(['de', 'This paper is in force. Compare every line with the paper in your hand.']);
    expect(english.printed.map(({ label, value }) => [label, value])).toEqual(german.printed.map(({ label, value }) => [label, value]));
    expect(english.printed).toContainEqual({ label: 'Rasse, Geschlecht', value: expect.stringMatching(/, (Hündin|Rüde)$/), said: { label: 'Breed, sex', value: expect.stringMatching(/, (fe)?male$/) } });
    expect(english.printed).toContainEqual({ label: 'Linke Hüfte', value: expect.stringMatching(/^0,\d\d$/), said: { label: 'Left hip', value: expect.stringMatching(/^0\.\d\d$/) } });
  });

  it('has a code on it that proves the German facts with the published key alone', async () => {
    const { pem } = (await request(server.url).get('/api/certificates/public-key').expect(200)).body as { pem: string };
    const row = await server.look((tx) => tx.document.findFirstOrThrow({ where: { orderId: road.id, kind: 'certificate' } }));
    const snapshot = row.snapshot as unknown as CertificateSnapshot;
    const code = readCode(snapshot.code)!;
    expect(code.language).toBe('de');
    expect(verifyFacts(code, pem)).toEqual(certificateFacts(snapshot));
  });

  it('chooses another language on the page, and is written to in it from then on', async () => {
    const chosen = await owner.send<OwnerPage>('/api/owner/language', { language: 'en' });
    expect(chosen).toMatchObject({ language: 'en', results: [{ study: 'Hips, laxity' }] });
    expect(chosen.documents.map((d) => d.name)).toEqual(expect.arrayContaining(['Hips, laxity, letter to Anselm Rook', 'Hips, laxity, result sheet', 'Going-home sheet', 'What was agreed']));
    await owner.post('/api/owner/language', { language: 'xx' }).expect(400);
    const desk = await road.as('desk');
    await desk.send(`/api/orders/${road.id}/owner-link`, {});
    await expect(server.mail.wait(road.email, /Tolle: your page/)).resolves.toBeDefined();
  });
});
