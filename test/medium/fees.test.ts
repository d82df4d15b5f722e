import { randomUUID } from 'node:crypto';
import type { BillPreview, CentreBill, NewBillLine, UnbilledRow, BillLineRow } from '#libs/contracts/centre-bills';
import type { FeeList, GroupFees, OrderFees } from '#libs/contracts/fees';
import type { GroupOptions } from '#libs/contracts/group-booking';
import { addDays } from '#libs/pathway/days';
import { centres } from '#seed/centre';
import { dogNamed } from '#seed/demo-scheme';
import { groupOf, laxity, sevenPups } from '#test/support/litter';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { dispatch, getRead } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

/** Invented, like every amount here. */
const FEE = centres.find((c) => c.key === 'threnfold')!.feeMinor;

let server: RunningServer;
let road: Road;
let desk: Session;
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Gale', studies: [['elbow', 'threnfold'], ['hipLaxity', 'threnfold']], inDays: 0 });
  await throughTheVisit(road);
  desk = await road.as('desk');
}, 90_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const fees = (of = road) => desk.read<OrderFees>(`/api/orders/${of.id}/fees`);
const write = (what: string, body: object, of = road) => desk.send<OrderFees>(`/api/orders/${of.id}/fees/${what}`, { key: randomUUID(), ...body });
const refused = async (what: string, body: object, of = road) => {
  const before = await fees(of);
  const { status, body: answer } = await desk.post(`/api/orders/${of.id}/fees/${what}`, { key: randomUUID(), ...body });
  expect(await fees(of)).toEqual(before);
  return { status, ...(answer as { code: string; message: string; fields?: { path: string; message: string }[] }) };
};
const visitOf = (all: OrderFees) => all.visits[0]!;
const payment = (more: object = {}) => ({ visit: road.visit.id, kind: 'payment', amountMinor: 10_000, day: road.today, how: 'card', person: road.dog.person.id, receipt: 'R-1', ...more });

describe('the account of a visit', () => {
  it('begins with the estimate: who accepted it, when and how much', async () => {
    const visit = visitOf(await fees());
    expect(visit.estimate).toMatchObject({ amountMinor: road.visit.estimate!.totalMinor, by: road.dog.person.name, how: 'link' });
    expect(Date.parse(visit.estimate!.at)).toBeLessThanOrEqual(server.clock.now().getTime());
    expect(visit).toMatchObject({ chargedMinor: 0, paidMinor: 0, openMinor: 0, notAgreedMinor: 0, says: ['Nothing is charged yet.'] });
  });

  it('a payment before the visit’s day is prepaid', async () => {
    const after = await write('payments', payment({ day: addDays(road.today, -2), receipt: 'R-0', how: 'transfer' }));
    expect(visitOf(after).entries[0]).toMatchObject({ kind: 'payment', prepaid: true, amountMinor: 10_000, receipt: 'R-0', person: road.dog.person.name, by: road.name('desk') });
    expect(after.says).toMatch(/100\.00 was paid beforehand; nothing is charged yet/);
  });

  it('charges each line of the estimate once, all of a request or nothing', async () => {
    const lines = visitOf(await fees()).estimate!.lines.map((l) => l.line);
    expect(await refused('charges', { visit: road.visit.id, estimateLines: [...lines, 99] })).toMatchObject({ status: 400, fields: [{ path: `estimateLines.${lines.length}` }] });
    expect(await refused('charges', { visit: road.visit.id, estimateLines: [0, 0] })).toMatchObject({ status: 400 });
    const key = randomUUID();
    const after = await write('charges', { key, visit: road.visit.id, estimateLines: lines });
    expect(visitOf(after)).toMatchObject({ chargedMinor: road.visit.estimate!.totalMinor, notAgreedMinor: 0, openMinor: road.visit.estimate!.totalMinor - 10_000 });
    expect(visitOf(after).estimate!.lines.every((l) => l.charged)).toBe(true);
    // The answer got lost and the same was sent again.
    expect(await write('charges', { key, visit: road.visit.id, estimateLines: lines })).toEqual(after);
    expect((await refused('charges', { visit: road.visit.id, estimateLines: [0] })).message).toMatch(/is charged already\. Reverse that line first/);
  });

  it('a line beside the estimate has a reason, and shows that nobody has agreed to it, and what the limit for an emergency is', async () => {
    expect((await refused('charges', { visit: road.visit.id, added: [{ words: 'Extra hour', amountMinor: 2_500, why: '' }] })).status).toBe(400);
    const after = await write('charges', { visit: road.visit.id, added: [{ words: 'Clipping a nail', amountMinor: 2_500, why: 'Torn on arrival.' }] });
    expect(visitOf(after).notAgreedMinor).toBe(2_500);
    expect(visitOf(after).says.join(' ')).toMatch(/25\.00 is charged that nobody has agreed to\..*For an emergency in sedation .* allowed ALM 600\.00 without being asked/);
    const agreed = await write('agreements', { visit: road.visit.id, amountMinor: visitOf(after).chargedMinor, person: road.dog.person.id, how: 'phone' });
    expect(visitOf(agreed)).toMatchObject({ notAgreedMinor: 0, agreedMinor: visitOf(after).chargedMinor });
  });

  it('is never edited: a wrong entry is reversed with a reason, stays to be read and is written anew', async () => {
    const wrong = visitOf(await fees()).entries.find((e) => e.words === 'Clipping a nail')!;
    const after = await write('reversals', { entry: wrong.id, why: 'It was two nails.' });
    expect(visitOf(after).entries.find((e) => e.id === wrong.id)!.reversed).toMatchObject({ why: 'It was two nails.', by: road.name('desk') });
    expect(visitOf(after).chargedMinor).toBe(road.visit.estimate!.totalMinor);
    expect(await refused('reversals', { entry: wrong.id, why: 'Again.' })).toMatchObject({ status: 409, code: 'ALREADY_THERE' });
    await write('charges', { visit: road.visit.id, added: [{ words: 'Clipping two nails', amountMinor: 3_000, why: 'Torn on arrival.' }] });
    await expect(server.look((tx) => tx.$executeRaw`UPDATE fee_entry SET amount_minor = 1`)).rejects.toThrow();
  });

  it('knows a receipt that is written down twice, and gives back no more than was paid', async () => {
    expect(await refused('payments', payment({ receipt: 'R-0' }))).toMatchObject({ status: 409, code: 'ALREADY_THERE' });
    expect((await refused('payments', payment({ kind: 'refund', amountMinor: 10_001, receipt: 'R-9' }))).message).toMatch(/Only ALM 100\.00 was paid/);
    const back = await write('payments', payment({ kind: 'refund', amountMinor: 4_000, receipt: 'R-9' }));
    expect(visitOf(back).paidMinor).toBe(6_000);
  });

  it.each([
    ['half a coin', 'payments', { amountMinor: 10.5 }], ['less than nothing', 'payments', { amountMinor: -1 }], ['nothing', 'payments', { amountMinor: 0 }], ['more than anybody has', 'payments', { amountMinor: 2_147_483_648 }],
    ['words for an amount', 'payments', { amountMinor: '10' }], ['a day to come', 'payments', { day: '2199-01-01' }], ['no receipt', 'payments', { receipt: ' ' }], ['a person of nobody', 'payments', { person: randomUUID() }],
    ['a visit of nobody', 'payments', { visit: randomUUID() }], ['an entry of nobody', 'reversals', { entry: randomUUID(), why: 'Wrong.' }], ['nothing to charge', 'charges', { estimateLines: [], added: [] }],
  ])('refuses %s and stores nothing', async (_, what, more) => {
    const body = what === 'payments' ? payment({ receipt: 'R-bad' }) : { visit: road.visit.id };
    const { status, code, fields } = await refused(what, { ...body, ...more });
    expect([status, code]).toEqual([400, 'BAD_INPUT']);
    expect(fields!.length).toBeGreaterThan(0);
  });

  it('is for the desk and the manager', async () => {
    for (const who of ['nurse', 'vet'] as const) {
      const session = await road.as(who);
      for (const path of [`/api/orders/${road.id}/fees`, '/api/fees', '/api/centre-bills', '/api/centre-bills/unbilled']) expect([who, path, (await session.get(path)).status]).toEqual([who, path, 403]);
      expect((await session.post(`/api/orders/${road.id}/fees/payments`, { key: randomUUID(), ...payment({ receipt: 'R-3' }) })).status).toBe(403);
    }
    expect((await (await road.as('manager')).get(`/api/orders/${road.id}/fees`)).status).toBe(200);
  });

  it('is in the list of what is open, and in files for a spreadsheet', async () => {
    const { openMinor } = await fees();
    const row = { order: road.id, accession: road.screen.accession, payer: road.dog.person.name, openMinor };
    expect((await desk.read<FeeList>('/api/fees')).rows).toEqual([expect.objectContaining(row)]);
    expect((await desk.read<FeeList>('/api/fees?show=uncharged')).rows).toEqual([]);
    expect((await desk.read<FeeList>('/api/fees?show=all&q=Nobody')).rows).toEqual([]);
    expect((await desk.get('/api/fees/export.csv?show=all')).text).toContain(`,${(openMinor / 100).toFixed(2)}`);
    expect((await desk.get(`/api/orders/${road.id}/fees.csv`)).text).toMatch(/Clipping a nail.*It was two nails/);
  });
});

describe('a statement of charges', () => {
  it('goes to the payer by mail, with every line that counts and none that was reversed', async () => {
    const after = await write('statements', {});
    await server.settled();
    const mail = await server.mail.wait(road.email, /statement of charges/);
    expect(mail.text).toMatch(/Clipping two nails: ALM 30\.00 \(Torn on arrival\.\)/);
    expect(mail.text).not.toContain('Clipping a nail');
    expect(mail.text).toMatch(/Paid on .* by transfer, receipt R-0: ALM 100\.00/);
    expect(mail.text).toContain(after.says);
    expect(mail.text).not.toMatch(/\d+\.\d\d\d/);
    expect((await fees()).statements).toEqual([expect.objectContaining({ to: road.dog.person.name, by: road.name('desk'), openMinor: after.openMinor, says: 'Delivered.' })]);
    expect((await road.look()).messages.find((m) => m.kind === 'bill')).toMatchObject({ state: 'delivered' });
  });

  it('is not sent twice when nothing has changed, and is sent anew when something has', async () => {
    expect(await refused('statements', {})).toMatchObject({ status: 409, code: 'ALREADY_THERE' });
    await write('payments', payment({ receipt: 'R-2', amountMinor: 500 }));
    expect((await write('statements', {})).statements).toHaveLength(2);
    await server.settled();
  });

  it('needs something that was charged', async () => {
    const other = await Road.book(server, { dog: 'Corrie', studies: [['elbow', 'threnfold']] });
    expect(await refused('statements', {}, other)).toMatchObject({ status: 422, code: 'NOT_AT_THIS_STEP' });
  });

  it('that waits for the morning is silenced by a death in the night, and no new one is written', async () => {
    const other = await Road.book(server, { dog: 'Moss', studies: [['elbow', 'threnfold']], inDays: 3 });
    await write('charges', { visit: other.visit.id, added: [{ words: 'Advice', amountMinor: 2_000, why: 'Asked for on the phone.' }] }, other);
    await (await other.as('manager')).send('/api/practice/reachable', { weekdays: [1, 2, 3, 4, 5, 6, 7], closed: [], quietFrom: 20, quietTo: 8 });
    await server.until(other.at(-1, '23:30'));
    await write('statements', {}, other);
    await server.settled();
    expect((await fees(other)).statements[0]!.says).toBe('Waits for the morning.');
    await other.look('vet');
    await other.act('vet', 'recordDeath', other.id, { day: other.today, inCare: false, cause: 'At home.' });
    await server.until(other.at(0, '10:00'));
    await server.sweep();
    expect(server.mail.to(other.email).filter((m) => /statement/.test(m.subject) && m.subject.includes('Moss'))).toEqual([]);
    expect(await fees(other)).toMatchObject({ silent: expect.stringMatching(/The dog died\. No bill is sent/) as string, statements: [{ says: expect.stringMatching(/^Silenced, because the dog died/) as string }] });
    expect(await refused('statements', {}, other)).toMatchObject({ status: 422, code: 'HELD', message: expect.stringContaining('until a vet lifts the silence') as string });
  });
});

describe('dogs booked in one call', () => {
  it('have one payer and one sum', async () => {
    const house = dogNamed(server.scheme, 'Gale').house;
    const day = addDays(road.today, 14);
    const session = await server.as(house.desk.name);
    const { pups, breeder } = await sevenPups(session, addDays(day, -112), addDays(day, -112));
    const options = await session.send<GroupOptions>('/api/groups/options', { dogs: pups.map((p) => p.id), studies: laxity(server), day });
    const group = (await session.post('/api/groups', groupOf(options, breeder, { studies: laxity(server), advice: options.advice[0]!.id, litter: { whole: true, born: 7, alive: 7 } })).expect(201)).body as { id: string; dogs: { order: string | null }[] };
    const orders = group.dogs.flatMap((d) => (d.order ? [d.order] : []));
    for (const order of orders.slice(0, 2)) {
      const { visits } = await session.read<OrderFees>(`/api/orders/${order}/fees`);
      await session.send(`/api/orders/${order}/fees/charges`, { key: randomUUID(), visit: visits[0]!.visit, added: [{ words: 'Deposit kept', amountMinor: 1_500, why: 'As agreed.' }] });
    }
    const sum = await session.read<GroupFees>(`/api/groups/${group.id}/fees`);
    expect(sum.rows).toHaveLength(orders.length);
    expect(sum.sum).toMatchObject({ chargedMinor: 3_000, paidMinor: 0, openMinor: 3_000, acceptedMinor: sum.rows.reduce((all, r) => all + r.acceptedMinor, 0) });
    expect(await session.read<OrderFees>(`/api/orders/${orders[0]!}/fees`)).toMatchObject({ group: { id: group.id, dogs: orders.length } });
  }, 60_000);
});

describe('a centre’s bill', () => {
  let bill: CentreBill;
  const centre = () => server.scheme.centres.threnfold.id;
  const line = (study: string, amountMinor = FEE, reference = road.screen.accession): NewBillLine => ({ reference, study, amountMinor });
  const enter = (lines: NewBillLine[], more: object = {}) => desk.post('/api/centre-bills', { key: randomUUID(), centre: centre(), number: 'T 2026/11', day: road.today, currency: 'ALM', lines, ...more });
  const said = (place: number, body: object) => desk.post(`/api/centre-bills/${bill.id}/lines/${bill.lines.find((l) => l.place === place)!.id}/said`, { key: randomUUID(), ...body });
  const look = async () => (bill = await desk.read<CentreBill>(`/api/centre-bills/${bill.id}`));
  const lines = async (show = 'unmatched') => (await desk.read<{ rows: BillLineRow[] }>(`/api/centre-bills/lines?show=${show}`)).rows;
  const unbilled = async () => (await desk.read<{ rows: UnbilledRow[] }>('/api/centre-bills/unbilled')).rows;
  let package_: string;

  beforeAll(async () => {
    await road.look();
    await getRead(road, road.study('elbow').id);
    const sent = await dispatch(road, road.study('hipLaxity').id);
    package_ = sent.screen.number;
  }, 60_000);

  it('leaves what was read and not billed on a list', async () => {
    expect(await unbilled()).toEqual([expect.objectContaining({ accession: road.screen.accession, name: 'Elbows', readOn: road.today, feeMinor: FEE })]);
    expect((await desk.get('/api/centre-bills/unbilled.csv')).text).toContain(road.screen.accession);
  });

  it('from a file is seen before it is entered, and a wrong row is told by its number', async () => {
    const csv = `reference;study;amount\n${road.screen.accession};Elbows;58,00\nP-00000000;Elbows;58,00\n${road.screen.accession};Elbows;fifty\n`;
    const preview = await desk.send<BillPreview>('/api/centre-bills/preview', { centre: centre(), csv });
    expect(preview.errors).toEqual([{ row: 4, words: expect.stringMatching(/“fifty” is no amount/) as string }]);
    expect(preview.rows.map((r) => [r.row, r.state])).toEqual([[2, 'matched'], [3, 'unmatched']]);
    expect((await desk.read<{ rows: unknown[] }>('/api/centre-bills')).rows).toEqual([]);
  });

  it.each([
    ['another currency', { currency: 'XBC' }, /agreed in ALM/], ['a day to come', { day: '2199-01-01' }, /still to come/], ['due before its day', { due: '2000-01-01' }, /before the day of the bill/],
    ['a centre of nobody', { centre: randomUUID() }, /not known/], ['no line', { lines: [] }, /at least one line/], ['half a coin in a line', { lines: [{ reference: 'x', study: 'y', amountMinor: 0.5 }] }, /smallest coins/],
    ['less than nothing in the second line', { lines: [{ reference: 'x', study: 'y', amountMinor: 5 }, { reference: 'x', study: 'y', amountMinor: -5 }] }, /more than nothing/],
    ['a huge amount', { lines: [{ reference: 'x', study: 'y', amountMinor: 1e12 }] }, /decimal sign/],
  ])('with %s is refused, and nothing of it is stored', async (_, more, words) => {
    const { status, body } = await enter([line('Elbows')], more);
    expect([status, (body as { code: string }).code]).toEqual([400, 'BAD_INPUT']);
    expect(JSON.stringify(body)).toMatch(words);
    expect(await server.look(async (tx) => (await tx.centreBill.count()) + (await tx.centreBillLine.count()))).toBe(0);
  });

  it('is matched line by line, each study once, and says of the others why not', async () => {
    const wrongSign = road.screen.accession.replace(/.$/, (c) => (c === 'A' ? 'B' : 'A'));
    const { body } = await enter([line('Elbows'), line('elbow'), line('Hips, laxity', FEE + 500, package_), line('Hips, laxity', FEE, wrongSign), line('Hips, extended')], { due: addDays(road.today, 14) }).expect(201);
    bill = body as CentreBill;
    expect(bill.lines.map((l) => l.state)).toEqual(['matched', 'unmatched', 'unmatched', 'unmatched', 'unmatched']);
    expect(bill.lines.map((l) => l.says)).toEqual([
      expect.stringContaining(road.screen.accession), expect.stringMatching(/billed already, bill T 2026\/11, line 1/), expect.stringMatching(/ALM 63\.00 is asked for, agreed are ALM 58\.00/),
      expect.stringMatching(/does not fit the others/), expect.stringMatching(/no study of it/),
    ]);
    expect(bill).toMatchObject({ sumMinor: 5 * FEE + 500, matchedMinor: FEE, paid: null, says: 'Not paid yet.' });
    expect(await lines()).toHaveLength(4);
    expect(await unbilled()).toEqual([]);
    expect((await fees()).sent.find((s) => s.name === 'Elbows')!.bill).toEqual({ id: bill.id, number: 'T 2026/11' });
  });

  it('entered twice is recognised, however its number is written', async () => {
    for (const number of ['T 2026/11', 't2026-11', ' T-2026 11 ']) expect((await enter([line('Elbows')], { number })).body).toMatchObject({ code: 'ALREADY_THERE', message: expect.stringContaining('T 2026/11') as string });
  });

  it('takes what a person says: for this study after all, or disputed with a reason, and takes that back', async () => {
    const hips = road.study('hipLaxity').id;
    expect((await said(3, { says: 'matched', study: road.study('elbow').id })).body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'study' }] });
    expect((await said(3, { says: 'matched', study: randomUUID() })).status).toBe(400);
    expect((await said(3, { says: 'disputed', words: ' ' })).status).toBe(400);
    expect((await said(3, { says: 'undone', words: 'Nothing.' })).status).toBe(422);
    bill = (await said(3, { says: 'matched', study: hips, words: 'The higher fee was agreed by phone.' }).expect(200)).body as CentreBill;
    expect(bill.lines[2]).toMatchObject({ state: 'matched', byHand: true, of: { study: hips } });
    expect((await said(4, { says: 'matched', study: hips })).body).toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('billed already') as string });
    await said(1, { says: 'disputed', words: 'Not legible, asked for anew.' }).expect(200);
    await look();
    // The study that the first line no longer bills is billed by the second.
    expect(bill.lines.map((l) => l.state)).toEqual(['disputed', 'matched', 'matched', 'unmatched', 'unmatched']);
    expect((await lines('disputed')).map((l) => l.place)).toEqual([1]);
    await said(1, { says: 'undone', words: 'It came.' }).expect(200);
    await look();
    expect(bill.lines.map((l) => l.state)).toEqual(['matched', 'unmatched', 'matched', 'unmatched', 'unmatched']);
    expect(bill.events.map((e) => [e.place, e.type])).toEqual([[1, 'undone'], [1, 'disputed'], [3, 'matched']]);
    expect((await desk.get('/api/centre-bills/lines.csv?show=all')).text.split('\r\n')).toHaveLength(7);
  });

  it('that is paid ends that the centre waits for payment; unpaid past its day it raises nothing by itself', async () => {
    const hips = road.study('hipLaxity').id;
    server.clock.advance({ days: 20 });
    await look();
    expect(bill.says).toMatch(/^Not paid, and was due on /);
    await server.sweep();
    await road.look();
    expect(road.screen.holds.map((h) => h.code)).not.toContain('UNPAID');
    await road.act('manager', 'recordCause', hips, { cause: 'unpaid' });
    expect(road.screen.holds.map((h) => h.code)).toContain('UNPAID');
    const bad = await desk.post(`/api/centre-bills/${bill.id}/said`, { key: randomUUID(), says: 'paid', day: '2199-01-01' });
    expect(bad.status).toBe(400);
    bill = await desk.send<CentreBill>(`/api/centre-bills/${bill.id}/said`, { key: randomUUID(), says: 'paid', day: road.today });
    expect(bill.events[0]!.words).toContain(`Hips, laxity of Gale, ${road.screen.accession}`);
    await road.look();
    expect(road.screen.holds.map((h) => h.code)).not.toContain('UNPAID');
    expect(road.screen.happened[0]).toMatchObject({ what: 'Cleared: unpaid', by: road.name('desk') });
    expect((await desk.post(`/api/centre-bills/${bill.id}/said`, { key: randomUUID(), says: 'paid', day: road.today })).status).toBe(409);
  });

  it('that was entered wrongly is withdrawn, counts nowhere, and may be entered anew', async () => {
    const say = (body: object) => desk.post(`/api/centre-bills/${bill.id}/said`, { key: randomUUID(), ...body });
    expect((await say({ says: 'withdrawn', words: 'Typed wrongly.' })).status).toBe(422);
    await say({ says: 'unpaid', words: 'The transfer came back.' }).expect(200);
    await say({ says: 'withdrawn', words: 'Typed wrongly.' }).expect(200);
    expect((await say({ says: 'paid', day: road.today })).status).toBe(422);
    expect(await lines('all')).toEqual([]);
    expect(await unbilled()).toHaveLength(1);
    const { body } = await enter([line('Elbows')]).expect(201);
    expect((body as CentreBill).lines[0]!.state).toBe('matched');
  });
});
