import { createHash, randomUUID } from 'node:crypto';
import { addDays } from '#libs/pathway/days';
import type { StoredFact } from '#libs/steps/record/order-record';
import type { Stated } from '#libs/steps/record/work';
import { readingKey } from '#libs/science/protocols/same-reading';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Centre, House } from '../demo-scheme.js';
import type { EarlierDog } from './earlier-dogs.js';

export interface EarlierOrder { id: string; study: string; dogId: string; dog: EarlierDog; opened: Date; facts: StoredFact[] }

interface Cast { house: House; centre: Centre; owner: string }

const VIEWS = ['vdExtended', 'vdCompression', 'vdDistraction'];
const protocol = findProtocol('hipLaxity', '2')!;

/** What an order of a dog read years ago says: booked, imaged, sent, read, told; or imaged and kept at home. */
export function earlierOrder(dog: EarlierDog, dogId: string, cast: Cast): EarlierOrder {
  const [id, study, visit, sealed, send, result, letter] = Array.from({ length: 7 }, randomUUID) as [string, string, string, string, string, string, string];
  const { house, centre, owner } = cast;
  const lane = house.lanes[0]!;
  const exposures = VIEWS.map((view) => ({ view, exposure: randomUUID() }));
  const joints = [{ joint: 'left', value: dog.left }, { joint: 'right', value: dog.right }] as const;
  const said = (days: number, time: string, ...stated: Stated[]) => stated.map((s) => ({ s, at: `${addDays(dog.imaged, days)}T${time}:00.000Z` }));
  const yes = { answer: 'yes' as const, signer: owner, signerRole: 'owner' as const, textVersion: '1' };
  const facts = [
    ...said(-9, '10:00', { type: 'orderOpened', order: id, dog: dogId, birth: { date: dog.born, precision: 'day' }, numbers: [], addressees: [{ person: owner, channel: 'post' }] }, { type: 'studyAdded', study, protocol: protocol.code, version: protocol.version, centre: centre.id },
      { type: 'payerNamed', payer: owner }, { type: 'visitOpened', visit, studies: [study], why: 'first' }, { type: 'visitBooked', visit, day: dog.imaged, start: '09:00', where: house.id, operator: lane.operator.id, room: lane.room }),
    ...said(-8, '10:00', { type: 'consentGiven', purpose: 'sedation', visit, ...yes }, { type: 'consentGiven', purpose: 'study', study, centre: centre.id, ...yes, textVersion: protocol.consentText }, { type: 'consentGiven', purpose: 'sendAll', study, ...yes, answer: dog.unsent ? 'no' : 'yes' }, { type: 'consentGiven', purpose: 'statistics', ...yes }),
    ...exposures.flatMap(({ view, exposure }) => said(0, '09:30', { type: 'exposureTaken', visit, exposure, view, serves: [study], image: createHash('sha256').update(exposure).digest('hex'), imageDay: dog.imaged, people: [lane.operator.id] })),
    ...exposures.flatMap(({ exposure }) => said(0, '09:35', { type: 'verdictGiven', exposure, study, verdict: 'accept', reasons: [] })),
    ...said(0, '09:40', { type: 'imagingEnded', visit, how: 'done' }),
    ...said(0, '10:30', { type: 'recoverySigned', visit, signs: ['walks'] }, { type: 'sheetGiven', visit, document: randomUUID(), to: owner }, { type: 'wentHome', visit, with: owner }),
    ...(dog.unsent
      ? said(3, '09:00', { type: 'studyEnded', study, why: 'ownerDecided' })
      : [
          ...said(1, '09:00', { type: 'packageSealed', study, package: sealed, exposures: exposures.map((e) => e.exposure), manifest: 'of before the program' }),
          ...said(1, '09:05', { type: 'packageSent', study, package: sealed, send, centre: centre.id, channel: 'page' }),
          ...said(2, '09:00', { type: 'sendOutcome', study, send, outcome: 'handedOver' }, { type: 'acknowledged', study, send }),
          ...said(9, '09:00', { type: 'resultArrived', study, result, ref: `E-${result.slice(0, 6)}`, channel: 'page', reading: 'first', valuesHash: createHash('sha256').update(readingKey(protocol, [...joints])).digest('hex'), joints: [...joints], detail: { reader: centre.readers[0]!.name, readOn: addDays(dog.imaged, 9) } }),
          ...said(10, '09:00', { type: 'resultAccepted', study, result }),
          ...said(10, '09:10', { type: 'letterReleased', study, letter, kind: 'result', result, to: [owner] }),
          ...said(13, '09:00', { type: 'letterOutcome', study, letter, to: owner, outcome: 'delivered' }),
        ]),
  ].map(({ s, at }): StoredFact => ({ ...s, id: randomUUID(), at, rec: at, by: house.desk.id, byName: house.desk.name, role: 'desk', practice: house.id }) as StoredFact);
  return { id, study, dogId, dog, opened: new Date(facts[0]!.at), facts };
}
