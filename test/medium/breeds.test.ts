import { parse } from 'csv-parse/sync';
import type { BreedList, BreedPicture } from '#libs/contracts/screens/breeds';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { Db, Tx } from '#libs/platform/database/db';
import { wilson } from '#libs/science/population/wilson';
import { earlierResults } from '#seed/earlier/earlier-results';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { getRead, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

/** Over HTTP, with the worker and mail, beside the invented dogs of past years. */
let server: RunningServer;
let lead: Session;
let road: Road;
let owner: Session;

beforeAll(async () => {
  server = await startServer();
  const db = { system: <T>(_reason: string, work: (tx: Tx) => Promise<T>) => server.look(work) } as unknown as Db;
  await earlierResults(db, server.scheme, server.clock.now());
  lead = await server.as('Oda Fering');
}, 120_000);
afterAll(async () => { await server.close(); });

const list = () => lead.read<BreedList>('/api/scheme/breeds');
const picture = async (breed: string) => lead.read<BreedPicture>(`/api/scheme/breeds/${(await list()).sets.find((s) => s.breed === breed)!.id}`);
const flat = (words: string) => words.replaceAll('**', '').replace(/\s+/g, ' ');

describe('the lead', () => {
  it('reads a breed with its intervals, and first of all who is missing', async () => {
    const breed = await picture('Aldra Water Hound');
    expect(breed).toMatchObject({ n: 186, warning: false, unsent: 19, senders: { litter: 36, chosen: 150 } });
    expect(breed.values!.quantiles).toHaveLength(5);
    expect(breed.values!.curve.at(-1)).toMatchObject({ share: 1, upper: 1 });
    expect(breed.values!.years.every((year) => year.n >= 20)).toBe(true);
    expect(breed.values!.trend).toMatchObject({ n: 186 });
  });

  it('gets a warning for few, and for fewer than twenty the number alone', async () => {
    expect(await picture('Karsby Spitz')).toMatchObject({ n: 64, warning: true });
    expect(await picture('Upland Pointer')).toMatchObject({ n: 13, values: null, grades: null, senders: null, unsent: null, sent: null });
  });

  it('takes the counts along for a spreadsheet, with what is hidden on the page hidden there', async () => {
    const table = async (breed: string) => {
      const answer = await lead.get(`/api/scheme/breeds/${(await picture(breed)).id}/counts.csv`).expect(200);
      expect(answer.headers['content-disposition']).toMatch(/^attachment; filename="[a-z-]+-\d{4}-01-01\.csv"$/);
      return (parse(answer.text, { bom: true }) as string[][]).slice(1);
    };
    const large = await table('Aldra Water Hound');
    const { values } = await picture('Aldra Water Hound');
    const curve = large.filter(([what]) => what!.startsWith('at distraction index'));
    expect(curve.map(([, of, , share]) => [Number(of), Number(share)])).toEqual(values!.curve.map(({ value, share }) => [value, share]));
    expect(curve.reduce((sum, [, , dogs]) => sum + Number(dogs), 0)).toBe(186);
    expect(large).toContainEqual(['X-rayed, never sent', '', '19', '', '', '']);
    const few = await table('Upland Pointer');
    expect(few.filter(([what]) => what !== 'pups born, as written down').map(([what, of, dogs]) => [what, of!.replace(/^Upland Pointer.*/, 'its name'), dogs])).toEqual([
      ['set', 'its name', '13'], ['X-rayed, never sent', 'fewer than 5', ''], ['who sent the films', 'not shown: one of the groups is so small that it could be told', ''], ['values', 'not shown for 13 dogs, fewer than 20', ''],
    ]);
  });

  it('and nobody else', async () => {
    const { sets } = await list();
    const desk = await server.as('Marit Oskar');
    for (const path of ['/api/scheme/breeds', `/api/scheme/breeds/${sets[0]!.id}`, `/api/scheme/breeds/${sets[0]!.id}/counts.csv`]) expect((await desk.get(path)).status).toBe(403);
    expect((await desk.post('/api/scheme/breeds/freeze')).status).toBe(403);
    for (const id of ['7f1d2c7e-6a4b-4c1e-9f0a-2b3c4d5e6f70', 'no-id']) expect((await lead.get(`/api/scheme/breeds/${id}`)).status).toBe(404);
  });
});

describe('how many were born', () => {
  const say = async (breed: string, body: object) => lead.post(`/api/scheme/breeds/${(await picture(breed)).id}/births`, body);
  const year = () => server.clock.now().getUTCFullYear();

  it('stands beside the birth years, with the interval of the share that is in the set', async () => {
    const { births, values } = await picture('Aldra Water Hound');
    expect(births[0]).toMatchObject({ year: year() - 3, born: 171, byName: 'Oda Fering', before: [{ born: 166 }] });
    for (const part of values!.years) {
      const born = births.filter((b) => b.year >= part.from && b.year <= part.to).reduce((sum, b) => sum + b.born!, 0);
      expect(part.screened).toEqual({ kind: 'known', born, share: part.n / born, interval: wilson(part.n, born) });
    }
    expect(values!.trend!.screened).toMatchObject({ kind: 'known', share: 186 / (141 + 152 + 149 + 163 + 158 + 170 + 171) });
  });

  it('is not known for years of which nobody has said it', async () => {
    const { years } = (await picture('Karsby Spitz')).values!;
    expect(years[0]!.screened).toEqual({ kind: 'notKnown', years: [year() - 9] });
    expect(years.at(-1)!.screened.kind).toBe('known');
  });

  it('is corrected by what is said later, and taken back; nothing that was said is lost', async () => {
    const breed = 'Aldra Water Hound';
    const of = async () => (await picture(breed)).births.find((b) => b.year === year() - 9);
    const oldest = async () => (await picture(breed)).values!.years[0]!.screened.kind;
    expect((await say(breed, { year: year() - 9, born: 5, source: 'Invented, first' })).status).toBe(201);
    expect(await oldest()).toBe('moreThanBorn');
    await say(breed, { year: year() - 9, born: 157, source: 'Invented, counted again' });
    expect(await oldest()).toBe('known');
    await say(breed, { year: year() - 9, born: null, source: 'The book was of another breed' });
    expect(await of()).toMatchObject({ born: null, source: 'The book was of another breed', before: [{ born: 157, source: 'Invented, counted again' }, { born: 5 }, { born: 141 }] });
    expect(await oldest()).toBe('notKnown');
    const audited = await server.look((tx) => tx.audit.count({ where: { action: 'sayBirths', role: 'lead' } }));
    expect(audited).toBe(3);
  });

  it('tells nothing of a set below twenty dogs', async () => expect(await picture('Upland Pointer')).toMatchObject({ values: null, births: expect.arrayContaining([expect.objectContaining({ born: 38 })]) as unknown }));

  it.each([
    [() => ({ year: year() + 1, born: 5, source: 'Invented' }), 400, 'still to come'],
    [() => ({ year: year() - 1, born: null, source: 'Invented' }), 400, 'none to take back'],
    [() => ({ year: year() - 3, born: 171, source: 'Invented for the demo: there is no such book; a litter of five came in late.' }), 409, 'already'],
    [() => ({ year: year() - 3, born: -1, source: 'Invented' }), 400, 'not right'],
    [() => ({ year: year() - 3, born: 10.5, source: 'Invented' }), 400, 'not right'],
    [() => ({ year: year() - 3, born: 10, source: ' ' }), 400, 'not right'],
  ])('refuses %# in words, and writes nothing', async (body, status, words) => {
    const before = (await picture('Aldra Water Hound')).births;
    const answer = await say('Aldra Water Hound', body());
    expect([answer.status, (answer.body as { message: string }).message]).toEqual([status, expect.stringContaining(words)]);
    expect((await picture('Aldra Water Hound')).births).toEqual(before);
  });

  it('is said by the lead alone, of a set in force', async () => {
    const body = { year: year() - 3, born: 10, source: 'Invented' };
    const desk = await server.as('Marit Oskar');
    expect((await desk.post(`/api/scheme/breeds/${(await picture('Aldra Water Hound')).id}/births`, body)).status).toBe(403);
    expect((await lead.post('/api/scheme/breeds/7f1d2c7e-6a4b-4c1e-9f0a-2b3c4d5e6f70/births', body)).status).toBe(404);
  });
});

describe('a dog that is read now', () => {
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Sedge', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
    owner = await throughTheVisit(road);
    await getRead(road, road.study().id, { joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }] });
    await release(road, road.study().id);
  }, 120_000);

  it('has one place in its letter, on its owner’s page, on the order’s page and in the table', async () => {
    const { lead: words, line, small } = road.study().standing!;
    expect(line).not.toBeNull();
    expect(words).toContain(`${line!.from} to ${line!.to} of every 20`);
    const { text } = await readPdf((await server.mail.wait(road.email, /Sedge: a letter/)).attachments.find((a) => a.filename?.includes('letter'))!.content);
    for (const told of [words, ...small]) expect(flat(text)).toContain(flat(told));
    expect((await owner.read<OwnerPage>('/api/owner')).results[0]!.standing).toEqual(road.study().standing);
    const table = (await (await road.as('vet')).get('/api/orders/results.csv').expect(200)).text;
    expect(table).toContain(`${line!.from} to ${line!.to} of every 20`);
  });

  it('keeps its place on paper when the lead has new sets frozen, and one newcomer makes none', async () => {
    const before = (await list()).sets;
    const told = road.study().standing;
    await lead.post('/api/scheme/breeds/freeze').expect(202);
    await server.settled();
    const after = await list();
    expect(after.last).toMatchObject({ day: road.today, byName: 'Oda Fering', frozen: 0 });
    expect(after.sets).toEqual(before);
    await road.look('vet');
    expect(road.study().standing).toEqual(told);
  });

  it('leaves the counts with its owner’s yes, at once', async () => {
    const counted = () => server.look((tx) => tx.countingRow.count({ where: { dogId: road.dog.id } }));
    expect(await counted()).toBe(1);
    await owner.send('/api/owner/withdraw', { purpose: 'statistics' });
    expect(await counted()).toBe(0);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
