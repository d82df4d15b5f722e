import { randomUUID } from 'node:crypto';
import type { Dog, Person } from '#libs/contracts/register';
import type { GroupOptions } from '#libs/contracts/group-booking';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { RunningServer } from './running-server.js';
import type { Session } from './session.js';

export const CALLS = ['Reed', 'Rush', 'Sallow', 'Osier', 'Teasel', 'Bur', 'Tansy'];

/** Seven pups of one breeder, entered at the front desk; the last was born after midnight. Invented. */
export async function sevenPups(desk: Session, born: string, bornLast: string): Promise<{ pups: Dog[]; breeder: Person }> {
  const { body } = await desk.post('/api/people', { name: 'Orla Quist', email: 'orla@quist.example', phone: '0470 66 12', channel: 'mail' }).expect(201);
  const breeder = body as Person;
  const pups: Dog[] = [];
  for (const [i, call] of CALLS.entries()) {
    const day = i === CALLS.length - 1 ? bornLast : born;
    const answer = await desk.post('/api/dogs', {
      name: `${call} of Quist’s Holm`, callName: call, breed: 'Aldra Water Hound', sex: i % 2 ? 'male' : 'female', birth: { earliest: day, latest: day, precision: 'day' }, damName: 'Merle of Eel Weir',
      identifier: { kind: 'transponder', value: numberOf(i), how: 'scanned' }, owner: { person: breeder.id },
    }).expect(201);
    pups.push(answer.body as Dog);
  }
  return { pups, breeder };
}

export const numberOf = (i: number): string => `9990000077000${10 + i}`;

export const laxity = (server: RunningServer) => [{ protocol: 'hipLaxity', version: currentProtocols().find((p) => p.code === 'hipLaxity')!.version, centre: server.scheme.centres.threnfold.id }];

/** One pup after the other, from the first time of the day that is free. */
export function groupOf(options: GroupOptions, breeder: Person, more: object = {}) {
  const addressees = [{ person: breeder.id, channel: 'mail' as const }];
  return {
    key: randomUUID(), caller: breeder.id, payer: breeder.id, addressees, estimateEachMinor: options.estimate.total.amountMinor, answers: Object.fromEntries(options.questions.map((q) => [q.question, 'no'])),
    dogs: options.dogs.map(({ dog }, i) => {
      const { room, operator, nurse, vet, ...when } = options.slots[i]!;
      return { key: randomUUID(), dog, slot: { ...when, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id } };
    }),
    ...more,
  };
}
