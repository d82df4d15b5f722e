import { randomBytes, randomUUID } from 'node:crypto';
import { newToken } from '#libs/platform/passwords/token';
import { factsOf, type Road } from '#seed/roads/road';
import type { OpenApi } from './open-api.js';

/** One of everything that hangs on an order that was reported, by its id, and what it is known by. */
export interface Belongings {
  order: string; visit: string; study: string; dog: string; person: string; staff: string; room: string; device: string; image: string; exposure: string;
  document: string; package: string; message: string; problem: string; mail: string; result: string; letter: string; send: string; plan: string; authority: string; request: string; incident: string; bill: string; line: string; entry: string; machine: string; received: string; key: string; webhook: string; delivery: string; step: string;
}

export interface Known {
  ids: Belongings;
  practice: string;
  day: string;
  /** Words that tell whose it is: none of them is seen by anybody else. */
  words: string[];
  accession: string;
  /** Tokens of the emailed links. */
  ownerToken: string;
  readerToken: string;
}

const FIRST = (table: string, key: string) => `SELECT id FROM ${table} WHERE ${key} = $1 ORDER BY 1 LIMIT 1`;

export async function belongingsOf({ owner, everywhere }: OpenApi, road: Road): Promise<Known> {
  const { order, house, dog } = road;
  const one = async (sql: string, value: string) => (await owner.query<{ id: string }>(sql, [value])).rows[0]!.id;
  const fact = <T extends Parameters<typeof factsOf>[1]>(type: T) => factsOf(road, type)[0]!;
  const film = fact('exposureTaken');
  const sent = fact('packageSent');
  const parcel = await one(FIRST('package', 'order_id'), order);
  const [links, problem, mail, request, authority, incident, bill, line, entry, machine, received, key, webhook, delivery, step] = await everywhere(async (tx) => {
    const [ownerLink, readerLink] = [newToken(), newToken()];
    const soon = new Date(Date.now() + 3_600_000);
    const link = { practiceId: house.id, orderId: order, expiresAt: soon };
    await tx.link.create({ data: { ...link, tokenHash: ownerLink.hash, kind: 'owner', personId: dog.person.id } });
    await tx.link.create({ data: { ...link, tokenHash: readerLink.hash, kind: 'reader', packageId: parcel, centreId: sent.centre } });
    const made = await tx.problem.create({ data: { orderId: order, job: 'wake-order', payload: { order }, words: 'This order could not be brought up to date.' } });
    const caught = await tx.capturedMail.create({ data: { messageId: `<${randomUUID()}@x.example>`, practiceId: house.id, from: 'a@x.example', to: 'b@x.example', subject: `About ${dog.call}`, text: 'Words.', raw: Buffer.from('raw'), files: [{ name: 'a.txt', type: 'text/plain', size: 1, content: 'YQ==' }] } });
    const by = { practiceId: house.id, at: new Date(), by: road.house.manager.id, byName: road.house.manager.name };
    const asked = await tx.dataRequest.create({ data: { ...by, personId: dog.person.id, kind: 'erasure', asked: 'To be erased.', received: new Date() } });
    await tx.dataRequestEvent.create({ data: { ...by, requestId: asked.id, type: 'noted', words: 'A note.' } });
    await tx.tombstone.create({ data: { personId: randomUUID(), practiceId: house.id, at: new Date() } });
    const days = { from: new Date('2026-01-01'), until: new Date('2027-12-01') };
    const given = await tx.authority.create({ data: { practiceId: house.id, dogId: dog.id, agentId: dog.person.id, ownerId: dog.person.id, covers: ['sedation'], evidence: 'A letter.', ...days } });
    await tx.dogMerge.create({ data: { ...by, goneId: randomUUID(), keptId: dog.id, animalId: `XX-${order}`, why: 'Entered twice.' } });
    await tx.centreClosure.create({ data: { practiceId: house.id, centreId: sent.centre, ...days, how: 'By phone.', byName: by.byName, at: by.at } });
    const opened = await tx.incident.create({ data: { orderId: order, practiceId: house.id, studyId: film.serves[0]!, kind: 'wrongDogTold', openedAt: by.at, openedBy: by.byName } });
    const written = { practiceId: house.id, at: by.at, by: by.by, byName: by.byName };
    const [bill, line, entry] = [randomUUID(), randomUUID(), randomUUID()];
    await tx.feeEntry.create({ data: { ...written, id: entry, orderId: order, visitId: road.visit, kind: 'charge', words: 'A line', amountMinor: 1_234, currency: 'ALM', why: 'Added.' } });
    await tx.feeStatement.create({ data: { ...written, id: randomUUID(), orderId: order, personId: dog.person.id, upTo: 1, told: {} } });
    await tx.centreBill.create({ data: { ...written, id: bill, centreId: sent.centre, number: `B-${order}`, day: new Date('2026-01-01'), currency: 'ALM' } });
    await tx.centreBillLine.create({ data: { practiceId: house.id, id: line, billId: bill, place: 1, reference: road.accession, study: 'elbow', amountMinor: 1 } });
    await tx.centreBillEvent.create({ data: { ...written, id: randomUUID(), billId: bill, lineId: line, type: 'disputed', words: 'Not ours.' } });
    const machine = await tx.console.create({ data: { ...written, name: `Room of ${dog.call}`, aeTitle: 'DXROOM1', address: '127.0.0.1' } });
    const received = await tx.receivedImage.create({ data: { practiceId: house.id, consoleId: machine.id, sopUid: '1.2.3', sha256: 'a'.repeat(64), size: 1, width: 1, height: 1, said: { patientName: dog.person.name }, why: 'noNumber', at: new Date() } });
    const worked = await tx.performedStep.create({ data: { practiceId: house.id, consoleId: machine.id, sopUid: '1.2.4', place: 0, state: 'inProgress', why: 'noNumber', said: { patientId: `Of ${dog.call}` }, at: new Date() } });
    const came = { centreId: sent.centre, at: new Date() };
    const arrival = await tx.resultDelivery.create({ data: { ...came, practiceId: house.id, way: 'file', key: randomUUID(), hash: 'x', by: by.by, byName: by.byName } });
    await tx.resultLeft.create({ data: { ...came, deliveryId: arrival.id, place: 1, orderId: order, said: [], words: 'Nothing.' } });
    const key = await tx.apiKey.create({ data: { ...written, name: `Software of ${dog.call}`, hash: newToken().hash, scopes: ['orders'] }, select: { id: true } });
    const webhook = await tx.webhook.create({ data: { ...written, name: `Software of ${dog.call}`, address: 'https://software.example/', secret: newToken().token, events: ['letter.released'] }, select: { id: true } });
    const told = { webhookId: webhook.id, practiceId: house.id, orderId: order, accession: road.accession, event: 'letter.released', eventId: fact('letterReleased').id, eventAt: by.at, dueAt: by.at, createdAt: by.at };
    const called = await tx.webhookDelivery.create({ data: { ...told, state: 'givenUp' }, select: { id: true } });
    return [{ ownerToken: ownerLink.token, readerToken: readerLink.token }, made.id, caught.id, asked.id, given.id, opened.id, bill, line, entry, machine.id, received.id, key.id, webhook.id, called.id, worked.id] as const;
  });
  const ids: Belongings = {
    order, visit: road.visit, study: film.serves[0]!, dog: dog.id, person: dog.person.id, staff: road.lane.vet.id, room: road.lane.room, image: film.image, exposure: film.exposure, package: parcel, problem, mail, request, authority, incident, bill, line, entry, machine, received, key, webhook, delivery, step,
    device: await one(FIRST('equipment', 'practice_id'), house.id), document: await one("SELECT id FROM document WHERE order_id = $1 AND kind = 'letter' LIMIT 1", order), message: await one(FIRST('message', 'order_id'), order),
    result: fact('resultArrived').result, letter: fact('letterReleased').letter, send: sent.send, plan: fact('planSigned').plan,
  };
  return { ids, practice: house.id, day: fact('visitBooked').day, accession: road.accession, words: [...Object.values(ids), road.accession, dog.call, dog.person.name, dog.transponder, house.lanes[0]!.vet.name], ...links };
}

/** Ids of the same shape that belong to nobody. */
export function nobodys(): Belongings {
  const keys: (keyof Belongings)[] = ['order', 'visit', 'study', 'dog', 'person', 'staff', 'room', 'device', 'image', 'exposure', 'document', 'package', 'message', 'problem', 'mail', 'result', 'letter', 'send', 'plan', 'authority', 'request', 'incident', 'bill', 'line', 'entry', 'machine', 'received', 'key', 'webhook', 'delivery', 'step'];
  return Object.fromEntries(keys.map((k) => [k, k === 'image' ? randomBytes(32).toString('hex') : randomUUID()])) as unknown as Belongings;
}
