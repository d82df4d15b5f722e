import request from 'supertest';
import { actionNames } from '#libs/contracts/actions/all';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { readCode, verifyFacts } from '#libs/documents/check-code';
import { addDays } from '#libs/pathway/days';
import { withAKill } from '#test/support/after-a-kill';
import { countedAnew, counts } from '#test/support/counts';
import { readPdf } from '#test/support/read-pdf';
import { printedHips, printedLine } from '#test/support/printed';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { getRead, release } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate, throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let first: Road;
let again: Road;
let serial: string;
let code: string;
let publicKey: string;
const hips = (left: number, right: number) => [{ joint: 'left', value: left }, { joint: 'right', value: right }];

beforeAll(async () => {
  server = await startServer();
  first = await Road.book(server, { dog: 'Hazel', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
  await throughTheVisit(first);
  await getRead(first, first.study().id, { ref: 'F-1', joints: hips(0.58, 0.62) });
  await release(first, first.study().id);
  await server.mail.wait(first.email, /a letter/);
  await server.settled();
  await first.look();
  serial = first.screen.documents.find((d) => d.kind === 'certificate')!.serial!;
  const row = await server.look((tx) => tx.document.findUniqueOrThrow({ where: { serial } }));
  code = (row.snapshot as { code: string }).code;
  publicKey = ((await request(server.url).get('/api/certificates/public-key').expect(200)).body as { pem: string }).pem;
}, 60_000);
afterAll(async () => { await server.close(); });

describe('a certificate on which .62 was changed to .26', () => {
  it('is shown by its page as it was issued, with the transponder', async () => {
    const page = (await request(server.url).get(`/api/certificates/${serial}`).expect(200)).body as CertificateCheck;
    expect(page).toMatchObject({ state: 'valid' });
    expect(printedHips(page)).toEqual(['0.58', '0.62']);
    expect(printedLine(page, 'Transponder').replaceAll(' ', '')).toBe(first.dog.transponder);
    expect(JSON.stringify(page)).not.toContain('0.26');
  });

  it('is told by its signed code to be .62, with no server', () => {
    const facts = verifyFacts(readCode(code)!, publicKey)!;
    const printed = JSON.stringify(facts).replaceAll(/[\s ]/g, '');
    expect(printed).toContain('0.62');
    expect(printed).toContain(first.dog.transponder);
  });

  it('does not verify when the code is changed too', () => {
    const signed = readCode(code)!;
    for (let i = 0; i < signed.payload.length; i += 7) {
      const payload = `${signed.payload.slice(0, i)}${signed.payload[i] === 'A' ? 'B' : 'A'}${signed.payload.slice(i + 1)}`;
      expect(verifyFacts({ ...signed, payload }, publicKey)).toBeNull();
    }
  });
});

describe('the same dog, screened again for a better number', () => {
  beforeAll(async () => {
    await server.until(first.at(190, '09:00'));
    // Accreditations, checks of equipment and this year's free days are the register's; the story is about the dog.
    const later = new Date(`${addDays(first.today, 400)}T00:00:00Z`);
    await server.look(async (tx) => {
      await tx.accreditation.updateMany({ data: { until: later } });
      await tx.equipment.updateMany({ data: { checkedUntil: later } });
    });
    again = await Road.book(server, { dog: 'Hazel', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    await ownerSigns(again, 2);
    await again.untilVisit();
    await admit(again);
    await sedate(again);
    await image(again);
    await goHome(again);
    await getRead(again, again.study().id, { ref: 'F-2', joints: hips(0.5, 0.55) });
    await withAKill(again, () => release(again, again.study().id));
  }, 60_000);

  it('gets a letter that says that the change is within the error of the reading', async () => {
    const mail = await server.mail.wait(first.email, /a letter/, 2);
    const text = (await readPdf(mail.attachments[0]!.content)).text.replace(/\s+/g, ' ');
    expect(text).toContain('Right hip: 0.62 then, 0.55 now. The change is within the error of the reading: two looks at the same joint may differ by up to 0.10.');
    expect(text).toContain('Left hip: 0.58 then, 0.50 now.');
  });

  it('shows both readings on the page, and that the first one counts', () => {
    expect(again.study().earlier).toMatchObject({ accession: first.screen.accession, joints: [{ words: '0.58' }, { words: '0.62' }] });
    expect(again.study().earlier!.changes).toHaveLength(2);
    expect(again.study().earlier!.counts).toContain(`the reading of order ${first.screen.accession} counts`);
  });

  it('is counted in the statistics by the first reading, as if everything were counted anew', async () => {
    const stored = await counts(server);
    expect(stored.dogs.filter((d) => d.dogId === first.dog.id)).toMatchObject([{ state: 'counted', reading: first.study().results[0]!.id, dogValue: 62 }]);
    expect(await countedAnew(server)).toEqual(stored);
  });

  it('leaves both papers in force: each says what was read on its day', async () => {
    const second = again.screen.documents.find((d) => d.kind === 'certificate')!.serial!;
    for (const one of [serial, second]) expect((await request(server.url).get(`/api/certificates/${one}`).expect(200)).body).toMatchObject({ state: 'valid' });
  });

  it('has nothing by which the better reading could be picked', async () => {
    expect(actionNames.filter((name) => /count|prefer|pick|choose.*(result|reading)|standing/i.test(name))).toEqual([]);
    const result = first.study().results[0]!.id;
    for (const who of ['desk', 'nurse', 'operator', 'vet', 'manager'] as const) {
      expect((await again.attempt(who, 'acceptResult', again.study().id, { result })).status).toBeGreaterThanOrEqual(400);
      expect((await again.attempt(who, 'settleConflict', again.study().id, { keep: result, saidBy: 'Nobody', why: 'Better.' })).status).toBeGreaterThanOrEqual(400);
    }
    await again.look();
    expect(again.study().earlier!.counts).toContain(first.screen.accession);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
