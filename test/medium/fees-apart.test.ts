import { randomUUID } from 'node:crypto';
import type { BillPreview, CentreBill } from '#libs/contracts/centre-bills';
import type { FeeList, OrderFees } from '#libs/contracts/fees';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { factsOf, type Road } from '#seed/roads/road';
import { belongingsOf } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { openLink, signIn, type Visitor } from './access-support/visitor.js';

let open: OpenApi;
let referred: Road;
let sent: Road;
let home: Visitor;
let asked: Visitor;

// Mallow of Sorn Quay is referred to Weirside; Heron is Weirside's own and has been read.
beforeAll(async () => {
  open = await openApi(['Mallow', 'Heron']);
  [referred, sent] = ['Mallow', 'Heron'].map((dog) => open.roads.find((r) => r.dog.call === dog)!) as [Road, Road];
  [home, asked] = await Promise.all([signIn(open.url, 'ebba@sornquay.example'), signIn(open.url, 'marit@weirside.example')]);
}, 60_000);
afterAll(() => open.close());
afterEach(() => expect(open.broken.splice(0)).toEqual([]));

const fees = async (who: Visitor) => (await who.get(`/api/orders/${referred.order}/fees`)).body as OrderFees;
const entries = async (who: Visitor) => (await fees(who)).visits.flatMap((v) => v.entries);
const charge = (who: Visitor, words: string) => who.post(`/api/orders/${referred.order}/fees/charges`, { key: randomUUID(), visit: referred.visit, added: [{ words, amountMinor: 4_321, why: 'As agreed.' }] });

describe('an order that two practices share', () => {
  it('has an account with each of them, and neither sees the other’s', async () => {
    expect((await charge(home, 'Talk before the referral')).status).toBe(200);
    expect((await charge(asked, 'Films taken for you')).status).toBe(200);
    expect((await entries(home)).map((e) => e.words)).toEqual(['Talk before the referral']);
    expect((await entries(asked)).map((e) => e.words)).toEqual(['Films taken for you']);
    for (const [who, chargedMinor] of [[home, 4_321], [asked, 4_321]] as const) expect(((await who.get('/api/fees')).body as FeeList).rows.find((r) => r.order === referred.order)).toMatchObject({ chargedMinor });
  });

  it('lets neither reverse what the other wrote, nor use its key', async () => {
    const [theirs] = await entries(asked);
    const reverse = await home.post(`/api/orders/${referred.order}/fees/reversals`, { key: randomUUID(), entry: theirs!.id, why: 'Not ours.' });
    expect(reverse.status).toBe(400);
    const again = await home.post(`/api/orders/${referred.order}/fees/charges`, { key: theirs!.id, visit: referred.visit, added: [{ words: 'Same key', amountMinor: 1, why: 'By chance.' }] });
    expect(again.status).toBe(200);
    expect((await entries(home)).map((e) => e.words)).toEqual(['Talk before the referral', 'Same key']);
    expect(await entries(asked)).toHaveLength(1);
  });

  it('tells the other practice nothing of a statement either', async () => {
    expect(await asked.post(`/api/orders/${referred.order}/fees/statements`, { key: randomUUID() })).toMatchObject({ status: 200, body: { statements: [expect.objectContaining({ openMinor: 4_321 })] } });
    expect((await fees(home)).statements).toEqual([]);
    const mails = async (who: Visitor) => ((await who.get(`/api/orders/${referred.order}`)).body as OrderScreen).messages.filter((m) => m.kind === 'bill');
    expect([(await mails(asked)).length, (await mails(home)).length]).toEqual([1, 0]);
  });
});

describe('a centre’s bill', () => {
  it('of one practice knows no number of another’s: it is like a number of nobody', async () => {
    const [film] = factsOf(sent, 'packageSent');
    const number = (film!.detail as { number: string }).number;
    const csv = `reference;study;amount\n${sent.accession};Hips, laxity;58.00\n${number};Hips, laxity;58.00\n`;
    const see = async (who: Visitor) => ((await who.post('/api/centre-bills/preview', { centre: film!.centre, csv })).body as BillPreview).rows.map((r) => r.state);
    expect(await see(asked)).toEqual(['matched', 'unmatched']);
    expect(await see(home)).toEqual(['unmatched', 'unmatched']);
    const rows = ((await home.post('/api/centre-bills/preview', { centre: film!.centre, csv })).body as BillPreview).rows;
    expect(rows.map((r) => r.says)).toEqual([sent.accession, number].map((n) => `“${n}” is no order and no package of yours. Ask the centre which dog it is, then match by hand or dispute it.`));
    const { status, body } = await home.post('/api/centre-bills', { key: randomUUID(), centre: film!.centre, number: '7', day: '2026-01-02', currency: 'ALM', lines: [{ reference: number, study: 'Hips, laxity', amountMinor: 5_800 }] });
    expect(status).toBe(201);
    const bill = body as CentreBill;
    expect((await home.post(`/api/centre-bills/${bill.id}/lines/${bill.lines[0]!.id}/said`, { key: randomUUID(), says: 'matched', study: film!.study })).status).toBe(400);
  });

  it('is nothing that a reader of the centre, the owner or the scheme’s lead sees', async () => {
    const known = await belongingsOf(open, sent);
    const others = [await signIn(open.url, 'noemi@threnfold.example'), await signIn(open.url, 'oda@basin.example'), await openLink(open.url, 'the owner', known.ownerToken), await openLink(open.url, 'the reader', known.readerToken)];
    for (const who of others)
      for (const path of [`/api/orders/${sent.order}/fees`, '/api/fees', '/api/centre-bills', `/api/centre-bills/${known.ids.bill}`, '/api/centre-bills/lines', '/api/centre-bills/unbilled']) {
        const { status } = await who.get(path);
        expect([who.name, path, status === 403 || status === 404]).toEqual([who.name, path, true]);
      }
  });
});
