import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { ResultsInScreen } from '#libs/contracts/results-in';
import { lead } from '#seed/practices';
import { CentreComputer, example, exampleWorkbook, inFile, looks, packageOf, takes } from '#test/support/results-in';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { dispatch } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';
import { partsOf, sheetOf, workbookOf, zipOf } from '#test/support/workbook';

const STUDIES = ['hipLaxity', 'hipExtended', 'elbow'] as const;
let server: RunningServer;
let road: Road;
let desk: Session;
let reader: Session;
let scheme: Session;
let threnfold: string;
let packages: Record<string, string>;
beforeAll(async () => {
  server = await startServer();
  threnfold = server.scheme.centres.threnfold.id;
  ({ road, packages } = await sent('Gale'));
  [desk, reader, scheme] = await Promise.all([road.as('desk'), server.as('Noemi Haskel'), server.as(lead.name)]);
}, 90_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

/** Three studies of one dog at one centre, under the numbers that the documentation has for them. */
async function sent(dog: string) {
  const on = await Road.book(server, { dog, studies: STUDIES.map((s) => [s, 'threnfold']), inDays: 1 });
  await throughTheVisit(on);
  const numbers: string[] = [];
  for (const protocol of STUDIES) {
    await (await dispatch(on, on.study(protocol).id)).acknowledge();
    await on.look();
    numbers.push(await packageOf(on, protocol));
  }
  return { road: on, packages: { 'P-1A2B3C4D': numbers[0]!, 'P-2B3C4D5E': numbers[1]!, 'P-3C4D5E6F': numbers[2]! } };
}

const facts = () => server.look((tx) => tx.fact.count());
const file = () => inFile(example('readings.csv', packages, road.today), { centre: threnfold });
const rows = (...lines: string[]) => inFile(['order;package;study;number;read by;read on;dog number;left;left reason;right;right reason', ...lines].join('\n'), { centre: threnfold });

describe('a file of readings', () => {
  it('is looked at first: each row with its order, dog, study and values, and nothing is stored', async () => {
    const before = await facts();
    const preview = await looks(desk, file());
    expect(preview.rows).toMatchObject([
      { row: 2, state: 'ready', reference: packages['P-1A2B3C4D'], number: 'R-2031', order: { id: road.id, accession: road.screen.accession, dog: 'Gale' }, study: 'Hip laxity by stress radiography', joints: [{ name: 'Left hip', words: '0.38' }, { name: 'Right hip', words: '0.44' }] },
      { row: 3, state: 'ready', study: 'Hip grading on the extended view', joints: [{ words: expect.stringContaining('grade B1; Criteria of: criteria of 2022') }, { words: 'not readable: the dog lay turned, so the joint could not be graded' }], dog: expect.stringContaining('at least') },
      { row: 4, state: 'ready', study: 'Elbow grading', joints: [{ words: expect.stringContaining('grade 0') }, { words: expect.stringContaining('grade 1') }] },
    ]);
    expect(await facts()).toBe(before);
  });

  it('tells of each row that is wrong what to do, beside those that are right', async () => {
    const { accession } = road.screen;
    const spoilt = rows(
      `${accession};;elbow;R-1;N. Haskel;;;0;;1;`, `${accession};;;R-2;N. Haskel;;;0,3;;0,4;`, `${accession};;spine;R-3;N. Haskel;;;0;;0;`, `${accession.slice(0, -1)}X;;elbow;R-4;N. Haskel;;;0;;0;`,
      `;P-00000000;;R-5;N. Haskel;;;0;;0;`, `${accession};${packages['P-3C4D5E6F']!};;R-6;N. Haskel;;;4;;0;`, `${accession};;elbow;R-7;N. Haskel;;;0;position;0;`, `${accession};;elbow;R-8;N. Haskel;;;0;;;`,
      `${accession};;hipLaxity;R-9;N. Haskel;2020-01-01;900000000000001;1,3;;0,4;`, `${accession};;elbow;R-1;N. Haskel;;;0;;1;`,
    );
    const preview = await looks(desk, spoilt);
    expect(preview.rows.map((r) => [r.row, r.state, r.words])).toEqual([
      [2, 'ready', 'It can be taken.'],
      [3, 'wrong', expect.stringContaining('Name the study or the package.')],
      [4, 'wrong', expect.stringContaining('the reading says “spine”')],
      [5, 'wrong', expect.stringMatching(/does not fit the others|is not an order number/)],
      [6, 'wrong', expect.stringContaining('Nothing under package P-00000000 was sent to this centre.')],
      [7, 'wrong', 'Left elbow: “4” is no grade here. Use one of 0, BL, 1, 2, 3.'],
      [8, 'wrong', expect.stringContaining('never both')],
      [9, 'wrong', 'Right elbow: give a value, or the reason why there is none.'],
      [10, 'ready', 'It can be taken.'],
      [11, 'alreadyThere', 'This row stands in the file before. It is not taken twice.'],
    ]);
    expect(preview.rows[8]!.asks).toEqual([expect.stringContaining('1.30 is possible but high'), expect.stringContaining('dog’s number'), expect.stringContaining('Read on 2020-01-01')]);
    await desk.send('/api/me/language', { language: 'de' });
    const german = await looks(desk, spoilt);
    await desk.send('/api/me/language', { language: 'en' });
    expect(german.rows.flatMap((r) => [r.words, ...r.asks]).filter((words) => /\b(the|this|that|with|and|is|of)\b/i.test(words))).toEqual([]);
    expect([german.rows[5]!.words, german.rows[8]!.asks[0]]).toEqual(['Linker Ellbogen: „4“ ist hier kein Grad. Möglich sind 0, BL, 1, 2, 3.', expect.stringContaining('1,30 ist möglich, aber hoch.')]);
  });

  it('knows nothing of what the centre was not sent, nor of other practices’ orders', async () => {
    const sluice = await looks(desk, { ...file(), centre: server.scheme.centres.sluiceGreen.id });
    const pell = await looks(await server.as('Pell Vantry'), file());
    for (const { rows: all } of [sluice, pell]) for (const row of all) expect(row).toMatchObject({ state: 'wrong', order: null, study: null, words: expect.stringContaining('was sent to this centre') });
    const vera = await looks(await server.as('Vera Castine'), inFile(example('readings.csv', packages, road.today)));
    for (const row of vera.rows) expect(row.state).toBe('wrong');
  });

  it('is no matter of a nurse, and needs its centre', async () => {
    const nurse = await (await road.as('nurse')).post('/api/results-in/preview', file());
    expect([nurse.status, nurse.body]).toEqual([403, expect.objectContaining({ code: 'NOT_YOUR_ROLE' })]);
    expect((await desk.post('/api/results-in/preview', { ...file(), centre: undefined })).body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'centre' }] });
    expect((await desk.post('/api/results-in/preview', { ...file(), content: 'not base64!' })).body).toMatchObject({ code: 'BAD_INPUT' });
  });

  it('is taken only as it was looked at', async () => {
    const before = await facts();
    expect((await desk.post('/api/results-in/take', { ...file(), hash: 'a'.repeat(64) })).body).toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('Look at it again') });
    expect(await facts()).toBe(before);
  });

  it('shows a centre’s reader what each row would be, and no order and no dog', async () => {
    const { rows: all } = await looks(reader, inFile(example('readings.csv', packages, road.today)));
    expect(all.map((r) => [r.state, r.order])).toEqual([['ready', null], ['ready', null], ['ready', null]]);
    expect(JSON.stringify(all)).not.toMatch(/Gale|Weirside/);
  });

  it('is taken row by row, each whole or not at all, and waits for the vet', async () => {
    const taken = await takes(desk, rows(`;${packages['P-1A2B3C4D']!};;R-2031;Noemi Haskel;${road.today};;0,38;;0,44;`, `;${packages['P-3C4D5E6F']!};;R-9;Noemi Haskel;;;0;;9;`));
    expect(taken.readings.map((r) => [r.place, r.outcome])).toEqual([[2, 'taken'], [3, 'notTaken']]);
    await road.look('vet');
    expect(road.study('hipLaxity')).toMatchObject({ step: 'answered', results: [{ ref: 'R-2031', channel: 'file', by: 'Noemi Haskel', state: 'waiting' }] });
    expect(road.study('elbow')).toMatchObject({ step: 'withCentre', results: [] });
  });

  it('takes nothing twice, whoever sends it again', async () => {
    const first = await takes(reader, inFile(example('readings.csv', packages, road.today)));
    expect(first.readings.map((r) => r.outcome)).toEqual(['alreadyThere', 'taken', 'taken']);
    const before = await facts();
    for (const [who, as] of [[desk, ''], [reader, ''], [scheme, '?as=lead']] as const) expect((await takes(who, file(), as)).readings.map((r) => r.outcome)).toEqual(['alreadyThere', 'alreadyThere', 'alreadyThere']);
    expect((await looks(desk, file())).rows.map((r) => r.state)).toEqual(['alreadyThere', 'alreadyThere', 'alreadyThere']);
    expect(await facts()).toBe(before);
    await road.look('vet');
    for (const protocol of STUDIES) expect(road.study(protocol).results).toHaveLength(1);
  });

  it('is kept with who brought it and what became of each row', async () => {
    const kept = await server.look((tx) => tx.resultDelivery.findMany({ where: { way: 'file' }, orderBy: { at: 'asc' } }));
    expect(kept).toHaveLength(5);
    expect(kept[0]).toMatchObject({ name: 'readings.csv', byName: road.name('desk'), centreId: threnfold, answer: [{ place: 2, outcome: 'taken' }, { place: 3, outcome: 'notTaken' }] });
    expect(await server.look((tx) => tx.audit.count({ where: { action: 'bringReadings', role: 'lead' } }))).toBe(1);
  });

  it('in Latin-1 is read as it was written', async () => {
    const latin = Buffer.from(`package;number;read by;left;right\n${packages['P-1A2B3C4D']!};R-3;Jörg Weiß;0,38;0,44`, 'latin1');
    expect((await looks(desk, inFile(latin, { centre: threnfold }))).rows).toMatchObject([{ state: 'ready', readBy: 'Jörg Weiß' }]);
  });
});

describe('a workbook of readings', () => {
  it('is looked at, taken, and accepted as the same file of text would be, and taken once whichever of them comes', async () => {
    const dog = await sent('Heron');
    const book = inFile(await exampleWorkbook(dog.packages, dog.road.today), { centre: threnfold });
    const text = inFile(example('readings.csv', dog.packages, dog.road.today), { centre: threnfold });
    const [fromBook, fromText] = [await looks(desk, book), await looks(desk, text)];
    expect(fromBook.rows).toEqual(fromText.rows);
    expect([fromBook.sheet, fromText.sheet]).toEqual([{ name: 'Readings', others: 0 }, null]);
    expect((await takes(desk, book)).readings.map((r) => r.outcome)).toEqual(['taken', 'taken', 'taken']);
    expect((await takes(desk, text)).readings.map((r) => r.outcome)).toEqual(['alreadyThere', 'alreadyThere', 'alreadyThere']);
    await dog.road.look('vet');
    const hips = dog.road.study('hipLaxity');
    expect(hips.results).toMatchObject([{ ref: 'R-2031', channel: 'file', state: 'waiting', joints: [{ words: '0.38' }, { words: '0.44' }] }]);
    await dog.road.act('vet', 'acceptResult', hips.id, { result: hips.results[0]!.id });
    expect(dog.road.study('hipLaxity').results).toMatchObject([{ state: 'accepted' }]);
  });

  it('tells of each row what the spreadsheet has changed, beside those that are right, and of sheets that were not looked at', async () => {
    const heads = ['package', 'number', 'read by', 'dog number', 'left', 'right'];
    const row = (number: string, dog: number | null, left: string | number | { number: number; shown: 'day' }) => [packages['P-3C4D5E6F']!, number, 'Noemi Haskel', dog, left, 0];
    const rows = sheetOf([heads, row('W-1', null, 1), row('W-2', 40981000000001, 1), row('W-3', null, { number: 46026, shown: 'day' }), row('W-4', null, 9)]);
    const preview = await looks(desk, inFile(await zipOf(partsOf({ March: rows, April: rows })), { centre: threnfold }));
    expect(preview.sheet).toEqual({ name: 'March', others: 1 });
    expect(preview.rows.map((r) => [r.row, r.state, r.words])).toEqual([
      [2, 'ready', 'It can be taken.'], [3, 'wrong', expect.stringContaining('of 14 digits')], [4, 'wrong', expect.stringContaining('holds the day 2026-01-04')], [5, 'wrong', expect.stringContaining('“9” is no grade here')],
    ]);
  });

  it('that cannot be read is told what to do, and changes nothing', async () => {
    const whole = await workbookOf([['package', 'number', 'read by', 'left', 'right'], [packages['P-3C4D5E6F']!, 'W-9', 'Noemi Haskel', 0, 0]]);
    const old = Buffer.concat([Buffer.from('d0cf11e0a1b11ae1', 'hex'), Buffer.alloc(600)]);
    const before = await facts();
    for (const [content, words] of [
      [whole.subarray(0, -20), 'is damaged, or did not come whole'], [await zipOf({ 'xl/a.xml': ' '.repeat(6_000_000) }), 'too large inside'], [await zipOf({ 'a.txt': 'a' }), 'no workbook of the kind xlsx'],
      [old, 'old kind (xls)'], [Buffer.concat([old, Buffer.from('EncryptedPackage', 'utf16le')]), 'locked with a password'], [Buffer.from('%PDF-1.7\0'), 'no file of text and no workbook'],
    ] as const) {
      const file = inFile(content, { centre: threnfold });
      expect((await looks(desk, file)).rows).toMatchObject([{ row: 1, state: 'wrong', words: expect.stringContaining(words) }]);
      expect((await takes(desk, file)).readings).toMatchObject([{ place: 1, outcome: 'notTaken', words: expect.stringContaining(words) }]);
    }
    expect(await facts()).toBe(before);
  });
});

describe('a second reading by file', () => {
  it('is not made by the reader of the first', async () => {
    const dog = await sent('Hazel');
    await takes(scheme, inFile(example('readings.csv', dog.packages, dog.road.today), { centre: threnfold }), '?as=lead');
    await dog.road.look('vet');
    const hips = dog.road.study('hipLaxity');
    await dog.road.act('vet', 'acceptResult', hips.id, { result: hips.results[0]!.id });
    await dog.road.act('vet', 'releaseLetter', hips.id, {});
    await dog.road.look('desk');
    await dog.road.act('desk', 'askAppeal', hips.id, { result: hips.results[0]!.id, asker: dog.road.dog.person.id });
    const line = (by: string, left = '0,40') => rows(`;${dog.packages['P-1A2B3C4D']};;R-2031;${by};;;${left};;0,44;`);
    expect((await takes(desk, line('Noemi Haskel'))).readings[0]).toMatchObject({ outcome: 'notTaken', words: 'A second reading is made by another reader than the first.' });
    // Even where the second reader finds the same, under the same number.
    expect((await takes(desk, line('Tobin Arkwell', '0,38'))).readings[0]).toMatchObject({ outcome: 'taken' });
  });
});

describe('a FHIR Bundle', () => {
  it('is signed and answered like any message, in FHIR’s own words, and its readings wait for the vet', async () => {
    const dog = await sent('Alder');
    const computer = await CentreComputer.of(server, scheme, threnfold);
    const body = example('bundle.json', dog.packages, dog.road.today);
    const forged = await computer.send(body, { way: 'fhir', secret: 'another' });
    expect(forged.status).toBe(401);
    const answer = await computer.send(body, { way: 'fhir' });
    expect([answer.status, answer.get('content-type')]).toEqual([200, 'application/fhir+json; charset=utf-8']);
    expect(JSON.parse(answer.text)).toEqual({ resourceType: 'OperationOutcome', issue: [{ severity: 'information', code: 'informational', diagnostics: expect.stringMatching(/^Report 1 \(R-2031\): It waits/) }, expect.objectContaining({ severity: 'information' })] });
    await dog.road.look('vet');
    expect(dog.road.study('hipLaxity').results).toMatchObject([{ channel: 'webhook', by: 'Noemi Haskel', joints: [{ words: '0.38' }, { words: '0.44' }] }]);
    expect(dog.road.study('hipExtended').results[0]!.dog).toContain('at least');
    const wrong = await computer.send(body.replaceAll('0.38', '3.8'), { way: 'fhir' });
    expect([wrong.status, JSON.parse(wrong.text)]).toEqual([422, expect.objectContaining({ issue: [expect.objectContaining({ severity: 'error', code: 'invalid' }), expect.objectContaining({ code: 'duplicate' })] })]);
    expect((await (await dog.road.as('desk')).read<ResultsInScreen>('/api/results-in')).left.rows).toMatchObject([{ order: { id: dog.road.id } }]);
  });
});

it('the documentation shows the examples that these tests send', () => {
  const docs = path.resolve(import.meta.dirname, '../../docs');
  const page = readFileSync(path.join(docs, 'results-in.md'), 'utf8');
  for (const name of ['readings.csv', 'readings.xlsx', 'message.json', 'bundle.json']) expect(page).toContain(`results-in/${name}`);
});
