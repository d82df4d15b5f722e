import { belongingsOf, type Known } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { signIn, type Visitor } from './access-support/visitor.js';

/** Rows enough for a second page of each list, in one practice; each row says its number. */
const MORE = 120;

let open: OpenApi;
let known: Known;
let hedda: Visitor;
let stranger: Visitor;

beforeAll(async () => {
  open = await openApi(['Heron', 'Kestrel']);
  known = await belongingsOf(open, open.roads.find((r) => r.dog.call === 'Heron')!);
  const fill = (sql: string) => open.owner.query(sql.replaceAll('PRACTICE', `'${known.practice}'::uuid`).replaceAll('MANY', `generate_series(1, ${MORE}) n`));
  await fill(`INSERT INTO person (practice_id, name, phone, channel, language) SELECT PRACTICE, '=Person ' || n, '+49 170 ' || n, 'none', 'en' FROM MANY`);
  await fill(`INSERT INTO dog (practice_id, animal_id, call_name, breed, sex, neutered, born_earliest, born_latest, born_precision)
    SELECT PRACTICE, 'ZZ' || n || '-' || twin, '=Dog ' || n, 'Karsby Spitz', 'male', false, '2025-01-01', '2025-01-01', 'day' FROM MANY, generate_series(1, 2) twin`);
  await fill(`INSERT INTO dog_name (dog_id, practice_id, name, valid_from) SELECT id, practice_id, call_name, '2025-01-01' FROM dog WHERE animal_id LIKE 'ZZ%'`);
  await fill(`INSERT INTO captured_mail (message_id, practice_id, "from", "to", subject, text, raw) SELECT '<m' || n || '>', PRACTICE, 'a@x.example', 'b@x.example', '=Mail ' || n, 'Words.', '' FROM MANY`);
  await fill(`INSERT INTO data_request (practice_id, person_id, kind, asked, received, at, by, by_name) SELECT PRACTICE, '${known.ids.person}', 'access', '=Asked ' || n, '2026-01-01', now(), 'x', 'X' FROM MANY`);
  await fill(`INSERT INTO received_image (practice_id, console_id, sop_uid, sha256, size, width, height, said, why, at)
    SELECT PRACTICE, '${known.ids.machine}', '1.2.9.' || n, md5(n::text) || md5(n::text), 1, 1, 1, jsonb_build_object('patientName', '=Image ' || n), 'noNumber', now() FROM MANY`);
  hedda = await signIn(open.url, 'hedda@weirside.example');
  stranger = await signIn(open.url, 'pell@hillfoot.example');
}, 60_000);
afterAll(() => open.close());

type List = { rows: unknown[]; more: boolean };
const lists: [list: string, file: string, page: number][] = [
  ['/api/dogs', '/api/dogs.csv', 50], ['/api/people', '/api/people.csv', 50], ['/api/dog-twins', '/api/dog-twins.csv', 50],
  ['/api/requests', '/api/requests/export.csv', 50], ['/api/unmatched', '/api/unmatched.csv', 50], ['/api/mailbox', '/api/mailbox.csv', 100],
];

/** The lines of a file, without its head. */
async function linesOf(who: Visitor, file: string): Promise<string[]> {
  const { status, body, headers } = await who.get(file);
  expect([file, status, headers.get('content-type'), headers.get('content-disposition')?.startsWith('attachment')]).toEqual([file, 200, 'text/csv; charset=utf-8', true]);
  return (body as string).trimEnd().split('\r\n').slice(1);
}

describe.each(lists)('%s', (list, file, page) => {
  it('comes page by page, each row once, to the end', async () => {
    const seen = new Set<string>();
    for (let n = 1, more = true; more; n++) {
      const { rows, more: further } = (await hedda.get(`${list}?page=${n}`)).body as List;
      expect([n, rows.length]).toEqual([n, further ? page : expect.any(Number)]);
      for (const row of rows) seen.add(JSON.stringify(row));
      more = further;
    }
    expect(seen.size).toBe((await linesOf(hedda, file)).length);
    expect(seen.size).toBeGreaterThanOrEqual(MORE);
  });

  it('is a file of all of it, in which no spreadsheet finds a formula', async () => {
    const lines = await linesOf(hedda, file);
    expect(lines.filter((line) => /=(Dog|Person|Mail|Asked|Image) \d/.test(line)).length).toBeGreaterThanOrEqual(MORE);
    expect(lines.filter((line) => /(^|,|")[=+@-](?!\d+\.\d\d)/.test(line))).toEqual([]);
  });

  it('has nothing of it for another practice', async () => {
    for (const line of await linesOf(stranger, file)) expect(line).not.toMatch(/=(Dog|Person|Mail|Asked|Image) \d/);
  });
});

it('an open request is never pushed off its page by what is closed', async () => {
  await open.owner.query(`INSERT INTO data_request_event (request_id, practice_id, type, words, at, by, by_name) SELECT id, practice_id, 'done', 'Sent.', now(), 'x', 'X' FROM data_request WHERE asked LIKE '=Asked%' AND asked <> '=Asked 7'`);
  const { rows } = (await hedda.get('/api/requests')).body as { rows: { asked: string; closed: unknown }[] };
  expect(rows.filter((r) => !r.closed).map((r) => r.asked).sort()).toEqual(['=Asked 7', 'To be erased.']);
});
