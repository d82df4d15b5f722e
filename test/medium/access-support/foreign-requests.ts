import { randomUUID } from 'node:crypto';
import { actionInputs, actionNames } from '#libs/contracts/actions/all';
import { actions, type Action } from '#libs/pathway/actions';
import type { Belongings } from './belongings.js';
import type { Route } from './routes.js';
import { sample, shapeOf } from './sample.js';
import type { Request } from './visitor.js';

/** How a route is tried with somebody else's ids; or why there is nothing to try it with. */
export type Case = { asks: (their: Belongings, own: Belongings) => Request[] } | { own: string };

const get = (url: string): Request => ({ method: 'GET', url });
const post = (url: string, body: unknown = {}): Request => ({ method: 'POST', url, body });
const film = (): FormData => {
  const form = new FormData();
  form.append('image', new Blob([new Uint8Array([137, 80, 78, 71])]), 'film.png');
  return form;
};

const birth = { earliest: '2025-01-03', latest: '2025-01-03', precision: 'day' };
const newDog = (owner: string) => ({ name: 'Rust of Nowhere', breed: 'Karsby Spitz', sex: 'male', birth, identifier: { kind: 'none', how: 'scanned' }, owner: { person: owner } });
const person = { name: 'Somebody Else', email: 'else@nowhere.example', channel: 'mail' };
const reading = { joints: [{ joint: 'left', value: 0.3 }, { joint: 'right', value: 0.3 }], signedBy: 'Somebody' };
const signed = { typedName: 'Somebody', studies: [] };

const lists = 'a list of one’s own: looked at for others’ words';
const nobody = 'before anybody is known, and without an id of a practice';
const byKey = 'for other programs, by a key of one practice: tried with another’s by itself';
const register = 'adds to one’s own register and names nothing that is there';

export const cases: Record<Route, Case> = {
  'GET /api/health': { own: nobody },
  'GET /api/me': { own: 'says who asks' },
  'POST /api/sign-in': { own: nobody },
  'POST /api/sign-out': { own: nobody },
  'POST /api/me/language': { own: 'one’s own language' },
  'POST /api/links/open': { own: nobody },
  'POST /api/join': { own: nobody },
  'GET /api/first-run': { own: nobody },
  'POST /api/first-run': { own: nobody },
  'GET /api/demo-sign-ins': { own: nobody },
  'GET /api/certificates/public-key': { own: nobody },
  'GET /api/certificates/:serial': { own: 'open to whoever holds the paper' },
  'GET /api/live': { own: 'a line that stays open: who hears what is tried by itself' },
  'GET /api/day-board': { own: lists },
  'GET /api/day-sheet.pdf': { own: lists },
  'GET /api/orders': { own: lists },
  'GET /api/orders/export.csv': { own: lists },
  'GET /api/search': { own: lists },
  'GET /api/breeds': { own: lists },
  'GET /api/dogs': { own: lists },
  'GET /api/dogs.csv': { own: lists },
  'GET /api/people.csv': { own: lists },
  'GET /api/dog-twins.csv': { own: lists },
  'GET /api/waiting-list.csv': { own: lists },
  'GET /api/unmatched.csv': { own: lists },
  'GET /api/requests/export.csv': { own: lists },
  'GET /api/mailbox.csv': { own: lists },
  'GET /api/centre-bills/export.csv': { own: lists },
  'GET /api/reader/packages/export.csv': { own: lists },
  'GET /api/people': { own: lists },
  'GET /api/practice': { own: lists },
  'GET /api/mailbox': { own: lists },
  'GET /api/scheme': { own: lists },
  'GET /api/scheme/studies': { own: lists },
  'GET /api/scheme/studies.csv': { own: lists },
  'GET /api/scheme/choosing': { own: lists },
  'POST /api/scheme/choosing': { own: 'the lead’s alone: counts of a frozen set, by its id' },
  'GET /api/scheme/times': { own: lists },
  'GET /api/scheme/reading-round': { own: 'names of the program’s studies' },
  'POST /api/scheme/reading-round': { own: 'computes and reads nothing' },
  'POST /api/scheme/practices': { own: 'the lead’s alone, and names nothing that is there' },
  'GET /api/scheme/breeds': { own: lists },
  'GET /api/scheme/breeds/:set': { own: 'the lead’s alone; frozen counts that name no practice and no dog' },
  'GET /api/scheme/breeds/:set/counts.csv': { own: 'the lead’s alone; the same counts' },
  'POST /api/scheme/breeds/:set/births': { own: 'the lead’s alone: births of a breed, which name no practice and no dog' },
  'POST /api/scheme/breeds/freeze': { own: 'the lead’s alone, and names nothing that is there' },
  'GET /api/reader/packages': { own: lists },
  'GET /api/owner': { own: lists },
  'POST /api/sedation/arithmetic': { own: 'computes and reads nothing' },
  'POST /api/people': { own: register },
  'POST /api/practice/staff': { own: register },
  'POST /api/practice/rooms': { own: register },
  'POST /api/practice/equipment': { own: register },
  'POST /api/practice/texts': { own: register },
  'POST /api/practice/prices': { own: register },
  'POST /api/practice/centres': { own: register },
  'GET /api/practice/machines': { own: lists },
  'POST /api/practice/machines': { own: register },
  'POST /api/practice/machines/:machine/end': { asks: (t) => [post(`/api/practice/machines/${t.machine}/end`)] },
  'GET /api/practice/keys': { own: lists },
  'POST /api/practice/keys': { own: register },
  'POST /api/practice/keys/:key/end': { asks: (t) => [post(`/api/practice/keys/${t.key}/end`)] },
  'GET /api/practice/webhooks': { own: lists },
  'POST /api/practice/webhooks': { own: register },
  'POST /api/practice/webhooks/:webhook/end': { asks: (t) => [post(`/api/practice/webhooks/${t.webhook}/end`)] },
  'POST /api/practice/webhooks/:webhook/secret': { asks: (t) => [post(`/api/practice/webhooks/${t.webhook}/secret`)] },
  'POST /api/practice/webhooks/:webhook/test': { asks: (t) => [post(`/api/practice/webhooks/${t.webhook}/test`)] },
  'POST /api/practice/webhooks/deliveries/:delivery/again': { asks: (t) => [post(`/api/practice/webhooks/deliveries/${t.delivery}/again`)] },
  'GET /fhir/metadata': { own: nobody },
  'GET /fhir/:type': { own: byKey },
  'GET /fhir/:type/:id': { own: byKey },
  'GET /fhir/:type/:id/_history': { own: byKey },
  'GET /fhir/:type/:id/_history/:version': { own: byKey },
  'GET /api/unmatched': { own: lists },
  'GET /api/unmatched/:image/preview': { asks: (t) => [get(`/api/unmatched/${t.received}/preview`)] },
  'POST /api/unmatched/:image/assign': { asks: (t, own) => [post(`/api/unmatched/${t.received}/assign`, { order: own.order }), post(`/api/unmatched/${own.received}/assign`, { order: t.order })] },
  'POST /api/unmatched/performed/:step/set-aside': { asks: (t) => [post(`/api/unmatched/performed/${t.step}/set-aside`, { why: 'A trial.' })] },
  'POST /api/unmatched/:image/set-aside': { asks: (t) => [post(`/api/unmatched/${t.received}/set-aside`, { why: 'A test picture.' })] },
  'POST /api/orders/:order/arrived/:sha/leave-out': { asks: (t, own) => [[t.order, t.image], [own.order, t.image]].map(([order, image]) => post(`/api/orders/${order}/arrived/${image}/leave-out`, { why: 'A test picture.' })) },
  'POST /api/practice/centres/:centre/readers': { own: 'centres are every practice’s; who may add a reader is tried by itself' },

  'GET /api/requests': { own: lists },
  'POST /api/requests': { asks: (t) => [post('/api/requests', { person: t.person, kind: 'access', asked: 'Everything.', received: '2026-01-02' })] },
  'POST /api/requests/:request/verified': { asks: (t) => [post(`/api/requests/${t.request}/verified`, { how: 'Passport.' })] },
  'POST /api/requests/:request/extended': { asks: (t) => [post(`/api/requests/${t.request}/extended`, { until: '2027-01-02', why: 'Many.' })] },
  'POST /api/requests/:request/noted': { asks: (t) => [post(`/api/requests/${t.request}/noted`, { words: 'A note.' })] },
  'POST /api/requests/:request/restricted': { asks: (t) => [post(`/api/requests/${t.request}/restricted`)] },
  'POST /api/requests/:request/restriction-lifted': { asks: (t) => [post(`/api/requests/${t.request}/restriction-lifted`, { words: 'Over.' })] },
  'POST /api/requests/:request/objected': { asks: (t) => [post(`/api/requests/${t.request}/objected`)] },
  'POST /api/requests/:request/erased': { asks: (t) => [post(`/api/requests/${t.request}/erased`)] },
  'POST /api/requests/:request/closed': { asks: (t) => [post(`/api/requests/${t.request}/closed`, { outcome: 'refused', words: 'Not this person.' })] },
  'GET /api/requests/:request/person.zip': { asks: (t) => [get(`/api/requests/${t.request}/person.zip`)] },

  'GET /api/fees': { own: lists },
  'GET /api/fees/export.csv': { own: lists },
  'GET /api/groups/:group/fees': { asks: (t) => [get(`/api/groups/${t.order}/fees`)] },
  'GET /api/orders/:order/fees': { asks: (t) => [get(`/api/orders/${t.order}/fees`)] },
  'GET /api/orders/:order/fees.csv': { asks: (t) => [get(`/api/orders/${t.order}/fees.csv`)] },
  'POST /api/orders/:order/fees/charges': { asks: (t, own) => [t.order, own.order].map((order) => post(`/api/orders/${order}/fees/charges`, { key: randomUUID(), visit: t.visit, added: [{ words: 'A line', amountMinor: 1, why: 'Added.' }] })) },
  'POST /api/orders/:order/fees/payments': {
    asks: (t, own) => [[t.order, t.visit], [own.order, t.visit], [own.order, own.visit]].map(([order, visit]) => post(`/api/orders/${order}/fees/payments`, { key: randomUUID(), visit, kind: 'payment', amountMinor: 1, day: '2026-01-02', how: 'cash', person: t.person, receipt: 'R' })),
  },
  'POST /api/orders/:order/fees/agreements': { asks: (t, own) => [[t.order, t.visit], [own.order, own.visit]].map(([order, visit]) => post(`/api/orders/${order}/fees/agreements`, { key: randomUUID(), visit, amountMinor: 1, person: t.person, how: 'phone' })) },
  'POST /api/orders/:order/fees/reversals': { asks: (t, own) => [t.order, own.order].map((order) => post(`/api/orders/${order}/fees/reversals`, { key: randomUUID(), entry: t.entry, why: 'Wrong.' })) },
  'POST /api/orders/:order/fees/statements': { asks: (t) => [post(`/api/orders/${t.order}/fees/statements`, { key: randomUUID() })] },
  'GET /api/centre-bills': { own: lists },
  'GET /api/centre-bills/lines': { own: lists },
  'GET /api/centre-bills/lines.csv': { own: lists },
  'GET /api/centre-bills/unbilled': { own: lists },
  'GET /api/centre-bills/unbilled.csv': { own: lists },
  'POST /api/centre-bills/preview': { own: 'centres are every practice’s, and nothing is stored; whose numbers it knows is tried by itself' },
  'POST /api/centre-bills': { own: 'adds a bill of one’s own; whose numbers it knows is tried by itself' },
  'GET /api/centre-bills/:bill': { asks: (t) => [get(`/api/centre-bills/${t.bill}`)] },
  'POST /api/centre-bills/:bill/said': { asks: (t) => [post(`/api/centre-bills/${t.bill}/said`, { key: randomUUID(), says: 'withdrawn', words: 'Wrong.' })] },
  'POST /api/centre-bills/:bill/lines/:line/said': {
    asks: (t, own) => [
      ...[t.bill, own.bill].map((bill) => post(`/api/centre-bills/${bill}/lines/${t.line}/said`, { key: randomUUID(), says: 'disputed', words: 'Not ours.' })),
      post(`/api/centre-bills/${own.bill}/lines/${own.line}/said`, { key: randomUUID(), says: 'matched', study: t.study }),
    ],
  },

  'GET /api/orders/:order/record.zip': { asks: (t) => [get(`/api/orders/${t.order}/record.zip`)] },
  'GET /api/dog-twins': { own: lists },
  'GET /api/practice/closing': { own: lists },
  'POST /api/practice/closing': { own: 'about one’s own practice' },
  'GET /api/practice/reachable': { own: lists },
  'POST /api/practice/reachable': { own: register },
  'GET /api/practice/channels': { own: lists },
  'POST /api/practice/centres/:centre/channel/try': { own: 'only one’s own channel is tried: see channel-trials.test.ts' },
  'POST /api/practice/centres/:centre/channel': { own: 'centres are every practice’s; by which way one’s own films go there is one’s own' },
  'GET /api/practice/closures': { own: lists },
  'POST /api/practice/centres/:centre/closures': { own: 'centres are every practice’s; what is heard of one is one’s own' },
  'GET /api/dogs/:dog/authorities': { asks: (t) => [get(`/api/dogs/${t.dog}/authorities`)] },
  'POST /api/dogs/:dog/authorities': { asks: (t, own) => [t.dog, own.dog].map((dog) => post(`/api/dogs/${dog}/authorities`, { agent: t.person, owner: own.person, covers: ['sedation'], from: '2026-01-01', until: '2027-12-01', evidence: 'A letter.' })) },
  'POST /api/dogs/:dog/authorities/:authority/end': { asks: (t, own) => [t.dog, own.dog].map((dog) => post(`/api/dogs/${dog}/authorities/${t.authority}/end`)) },
  'POST /api/dogs/:dog/merge': { asks: (t, own) => [post(`/api/dogs/${t.dog}/merge`, { gone: own.dog, why: 'The same dog.' }), post(`/api/dogs/${own.dog}/merge`, { gone: t.dog, why: 'The same dog.' })] },

  'GET /api/results-in': { own: lists },
  'POST /api/results-in/preview': { own: 'nothing is stored; whose numbers it knows is tried by itself' },
  'POST /api/results-in/take': { own: 'whose numbers it knows is tried by itself' },
  'POST /api/results-in/left/:reading/set-aside': { own: 'the scheme’s lead sees to what its centres sent; another practice is tried by itself' },
  'POST /api/results-in/keys': { own: 'centres are every practice’s; who may make a key is tried by itself' },
  'POST /api/results-in/keys/:key/end': { own: 'who may end a key is tried by itself' },
  'POST /api/results-in/messages': { own: 'signed by a centre; whose numbers it knows is tried by itself' },
  'POST /api/results-in/fhir': { own: 'signed by a centre; whose numbers it knows is tried by itself' },

  'GET /api/orders/:order': { asks: (t) => [get(`/api/orders/${t.order}`)] },
  'POST /api/orders/:order/actions/:action': {
    asks: (t, own) => [
      ...actionNames.map((action) => post(`/api/orders/${t.order}/actions/${action}`, { key: randomUUID(), version: 1, on: t[actions[action as Action].scope], input: sample(shapeOf(actionInputs[action]), t.person) })),
      // An order of one's own, and somebody else's things named in it.
      ...ownOrder(t).map(([action, on, input]) => post(`/api/orders/${own.order}/actions/${action}`, { key: randomUUID(), version: 1, at: '2026-01-01T00:00:00Z', on: on ?? own.order, input })),
    ],
  },
  'POST /api/orders/:order/images': { asks: (t) => [post(`/api/orders/${t.order}/images`, film())] },
  'GET /api/orders/:order/images/:sha/preview': { asks: (t, own) => [get(`/api/orders/${t.order}/images/${t.image}/preview`), get(`/api/orders/${own.order}/images/${t.image}/preview`)] },
  'GET /api/orders/:order/images/:sha/pixels': { asks: (t, own) => [get(`/api/orders/${t.order}/images/${t.image}/pixels`), get(`/api/orders/${own.order}/images/${t.image}/pixels`)] },
  'GET /api/orders/:order/images/:sha/file': { asks: (t, own) => [get(`/api/orders/${t.order}/images/${t.image}/file`), get(`/api/orders/${own.order}/images/${t.image}/file`)] },
  'GET /api/orders/:order/exposures/:exposure/marks': { asks: (t, own) => [t.order, own.order].map((order) => get(`/api/orders/${order}/exposures/${t.exposure}/marks`)) },
  'GET /api/orders/:order/documents/:document': { asks: (t, own) => [get(`/api/orders/${t.order}/documents/${t.document}`), get(`/api/orders/${own.order}/documents/${t.document}`)] },
  'GET /api/orders/results.csv': { own: lists },
  'POST /api/orders/:order/incidents/:incident/close': { asks: (t, own) => [t.order, own.order].map((order) => post(`/api/orders/${order}/incidents/${t.incident}/close`, { words: 'Found and changed.' })) },
  'POST /api/orders/:order/owner-link': { asks: (t) => [post(`/api/orders/${t.order}/owner-link`)] },
  'POST /api/orders/:order/problems/:problem/retry': { asks: (t, own) => [post(`/api/orders/${t.order}/problems/${t.problem}/retry`), post(`/api/orders/${own.order}/problems/${t.problem}/retry`)] },
  'POST /api/orders/:order/messages/:message/resolve': { asks: (t, own) => [t.order, own.order].map((order) => post(`/api/orders/${order}/messages/${t.message}/resolve`, { arrived: false })) },

  'GET /api/help/studies': { own: 'what the program’s studies are' },
  'GET /api/calendar': { own: lists },
  'POST /api/calendar/look': { asks: (t) => [post('/api/calendar/look', { visit: t.visit, day: '2027-03-01', start: '09:00' })] },
  'POST /api/booking/options': { asks: (t) => [post('/api/booking/options', { dog: t.dog, studies: [] })] },
  'POST /api/bookings': {
    asks: (t) => [post('/api/bookings', {
      key: randomUUID(), dog: t.dog, studies: [{ protocol: 'elbow', version: '2', centre: randomUUID() }], slot: { day: '2027-03-01', start: '09:00', minutes: 45, room: t.room, operator: t.staff, nurse: t.staff, vet: t.staff },
      answers: {}, payer: t.person, addressees: [{ person: t.person, channel: 'mail' }], estimateTotalMinor: 0,
    })],
  },
  'POST /api/groups/options': { asks: (t, own) => [[t.dog], [own.dog, t.dog]].map((dogs) => post('/api/groups/options', { dogs, studies: [], day: '2027-03-01' })) },
  'POST /api/groups': {
    asks: (t) => [post('/api/groups', {
      key: randomUUID(), dogs: [{ key: randomUUID(), dog: t.dog, slot: { day: '2027-03-01', start: '09:00', minutes: 45, room: t.room, operator: t.staff, nurse: t.staff, vet: t.staff } }], studies: [{ protocol: 'elbow', version: '2', centre: randomUUID() }],
      answers: {}, caller: t.person, payer: t.person, addressees: [{ person: t.person, channel: 'mail' }], estimateEachMinor: 0,
    })],
  },
  'GET /api/waiting-list': { own: lists },
  'POST /api/orders/:order/waiting': { asks: (t, own) => [t.order, own.order].map((order) => post(`/api/orders/${order}/waiting`, { key: randomUUID(), visit: t.visit })) },
  'POST /api/waiting-list/:entry/leave': { asks: (t) => [post(`/api/waiting-list/${t.visit}/leave`)] },
  'GET /api/owner/offer': { own: lists },
  'POST /api/owner/offer': { asks: (t) => [post('/api/owner/offer', { offer: t.visit, answer: 'yes' })] },
  'GET /api/groups': { own: lists },
  'GET /api/groups/:group': { asks: (t) => [get(`/api/groups/${t.order}`)] },
  'GET /api/dogs/:dog': { asks: (t) => [get(`/api/dogs/${t.dog}`)] },
  'POST /api/dogs': { asks: (t) => [post('/api/dogs', newDog(t.person))] },
  'POST /api/dogs/:dog/names': { asks: (t) => [post(`/api/dogs/${t.dog}/names`, { name: 'Another', from: '2026-01-02' })] },
  'POST /api/dogs/:dog/identifiers': { asks: (t) => [post(`/api/dogs/${t.dog}/identifiers`, { kind: 'tattoo', value: 'AB12', how: 'typedTwice', again: 'AB12', from: '2026-01-02' })] },
  'POST /api/dogs/:dog/people': { asks: (t, own) => [t.dog, own.dog].map((dog) => post(`/api/dogs/${dog}/people`, { person: t.person, role: 'coOwner', from: '2026-01-02' })) },
  'POST /api/people/:person': { asks: (t) => [post(`/api/people/${t.person}`, person)] },
  'POST /api/practice/equipment/:device/checked': { asks: (t) => [post(`/api/practice/equipment/${t.device}/checked`, { checkedUntil: '2027-12-01' })] },
  'POST /api/practice/equipment/:device/pixels': { asks: (t) => [post(`/api/practice/equipment/${t.device}/pixels`, { pixelMm: 0.15 })] },
  'POST /api/practice/accreditations': { asks: (t) => [post('/api/practice/accreditations', { staff: t.staff, protocol: 'hipLaxity', from: '2026-01-01', until: '2027-12-01', evidence: 'Course.' })] },
  'GET /api/mailbox/:id': { asks: (t) => [get(`/api/mailbox/${t.mail}`)] },
  'GET /api/mailbox/:id/files/:n': { asks: (t) => [get(`/api/mailbox/${t.mail}/files/0`)] },

  'GET /api/reader/packages/:package': { asks: (t) => [get(`/api/reader/packages/${t.package}`)] },
  'GET /api/reader/packages/:package/zip': { asks: (t) => [get(`/api/reader/packages/${t.package}/zip`)] },
  'GET /api/reader/packages/:package/images/:sha/preview': { asks: (t, own) => [t.package, own.package].map((p) => get(`/api/reader/packages/${p}/images/${t.image}/preview`)) },
  'GET /api/reader/packages/:package/images/:sha/pixels': { asks: (t, own) => [t.package, own.package].map((p) => get(`/api/reader/packages/${p}/images/${t.image}/pixels`)) },
  'GET /api/reader/packages/:package/images/:sha/file': { asks: (t, own) => [t.package, own.package].map((p) => get(`/api/reader/packages/${p}/images/${t.image}/file`)) },
  'POST /api/reader/packages/:package/acknowledge': { asks: (t) => [post(`/api/reader/packages/${t.package}/acknowledge`)] },
  'POST /api/reader/packages/:package/reject': { asks: (t) => [post(`/api/reader/packages/${t.package}/reject`, { views: ['x'], reasons: ['Too dark.'] })] },
  'POST /api/reader/packages/:package/result': { asks: (t) => [post(`/api/reader/packages/${t.package}/result`, reading)] },

  'POST /api/owner/answers': { asks: (t) => [post('/api/owner/answers', { visit: t.visit, answers: { ill: 'no' } })] },
  'POST /api/owner/estimate': { asks: (t) => [post('/api/owner/estimate', { visit: t.visit, totalMinor: 1 })] },
  'POST /api/owner/consents': {
    asks: (t) => [
      post('/api/owner/consents', { ...signed, studies: [{ study: t.study, answer: 'yes' }] }),
      post('/api/owner/consents', { ...signed, visit: t.visit, sedation: { answer: 'no' } }),
    ],
  },
  'POST /api/owner/transfer': { own: 'about the order of one’s own link' },
  'POST /api/owner/language': { own: 'one’s own language' },
  'POST /api/owner/letter-time': { own: 'about the order of one’s own link' },
  'POST /api/owner/appeal': { asks: (t) => [post('/api/owner/appeal', { study: t.study, result: t.result })] },
  'POST /api/owner/withdraw': { asks: (t) => [post('/api/owner/withdraw', { purpose: 'study', subject: t.study }), post('/api/owner/withdraw', { purpose: 'sedation', subject: t.visit })] },
  'GET /api/owner/documents/:document': { asks: (t) => [get(`/api/owner/documents/${t.document}`)] },
};

/** Actions that name a person, a film or a paper, on an order of one's own. */
function ownOrder(t: Belongings): [action: string, on: string | undefined, input: Record<string, unknown>][] {
  return [
    ['namePayer', undefined, { payer: t.person }],
    ['confirmAddressees', undefined, { people: [t.person] }],
    ['nameCaseOwner', undefined, { person: t.staff }],
    ['answerStatistics', undefined, { answer: 'yes', signer: t.person }],
    ['openVisit', undefined, { studies: [t.study], reason: 'lost' }],
    ['erasePerson', undefined, { person: t.person }],
    ['admit', t.visit, { weightKg: 20, bodyCondition: 5, fastedHours: 10 }],
    ['recordReading', t.visit, { heartRate: 80 }],
    ['takeView', t.study, { view: 'pelvis', serves: [t.study], image: t.image, people: [t.staff], marker: 'L' }],
    ['markFilm', t.visit, { exposure: t.exposure, marks: [{ kind: 'midline', points: [{ x: 1, y: 1 }, { x: 2, y: 2 }] }] }],
    ['assignFilm', t.visit, { exposure: t.exposure, serves: [t.study] }],
    ['stateSize', t.visit, { exposure: t.exposure }],
    ['disownFilm', t.visit, { exposure: t.exposure, reason: 'testFilm' }],
    ['logRoom', t.visit, { exposure: t.exposure, people: [t.staff] }],
    ['judgeView', t.study, { exposure: t.exposure, verdict: 'accept' }],
    ['enterResult', t.study, { ref: 'X-1', channel: 'phone', joints: reading.joints }],
    ['acceptResult', t.study, { result: t.result }],
    ['resolveLetter', t.study, { letter: t.letter, to: t.person, arrived: true }],
    ['resolveSend', t.study, { send: t.send, arrived: true }],
  ];
}
