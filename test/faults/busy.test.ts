import { complaintOf } from '#test/medium/access-support/complaint';
import { openApi, type OpenApi } from '#test/medium/access-support/open-api';
import { signIn } from '#test/medium/access-support/visitor';

let open: OpenApi;
beforeAll(async () => {
  open = await openApi(['Nettle']);
}, 60_000);
afterAll(() => open.close());

it('who waits too long for the database is told so, changes nothing, and is served when it is free again', async () => {
  const desk = await signIn(open.url, 'marit@weirside.example');
  const order = open.roads[0]!.order;
  const askForLink = () => desk.post(`/api/orders/${order}/owner-link`);
  const mails = async () => (await open.owner.query<{ n: string }>("SELECT count(*) AS n FROM message WHERE order_id = $1 AND once_key LIKE 'owner-link:%'", [order])).rows[0]!.n;
  const before = Number(await mails());
  await open.owner.query('BEGIN');
  await open.owner.query('LOCK TABLE message IN SHARE MODE');
  const complaint = complaintOf(await askForLink(), 'a mail that waits');
  await open.owner.query('COMMIT');
  expect(complaint.code).toBe('BUSY');
  expect(open.broken.splice(0)).toHaveLength(1);
  expect(Number(await mails())).toBe(before);
  expect((await askForLink()).status).toBe(200);
  expect(Number(await mails())).toBeGreaterThan(before);
}, 90_000);
