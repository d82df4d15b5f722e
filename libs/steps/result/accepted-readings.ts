import type { Joint } from '#libs/contracts/common';
import type { Fact } from '#libs/pathway/facts';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { AcceptedReading } from '#libs/science/protocols/counting-reading';
import type { Protocol } from '#libs/science/protocols/types';
import type { Work } from '../record/work.js';
import { jointsOf } from './joints-of.js';

/** An order's readings, without the rest of it. */
export interface OrderReadings {
  order: string;
  accession: string;
  dog: string;
  studies: { id: string; protocol: string; version: string }[];
  facts: Fact[];
}

export interface DogsReading extends AcceptedReading {
  order: string;
  accession: string;
  dog: string;
  protocol: Protocol;
  reader: string;
  readOn: string;
  joints: Joint[];
}

/** Every accepted reading that has not been withdrawn, in the order in which they were accepted. */
export function acceptedReadings({ order, accession, dog, studies, facts: all }: OrderReadings): DogsReading[] {
  const facts: Work['facts'] = (type) => all.filter((f): f is never => f.type === type);
  const withdrawn = new Set(facts('resultWithdrawn').map((f) => f.result));
  return facts('resultAccepted').filter((f) => !withdrawn.has(f.result)).flatMap((accepted) => {
    const study = studies.find((s) => s.id === accepted.study);
    const protocol = study && findProtocol(study.protocol, study.version);
    const arrived = facts('resultArrived').find((f) => f.study === accepted.study && f.result === accepted.result);
    if (!protocol || !arrived) return [];
    const { readOn, reader } = (arrived.detail ?? {}) as { readOn?: string | null; reader?: string | null };
    return [{
      id: accepted.result, study: accepted.study, reading: arrived.reading, acceptedAt: accepted.at, order, accession, dog, protocol,
      reader: reader ?? 'a reader of the centre', readOn: readOn ?? arrived.at.slice(0, 10), joints: jointsOf(facts, arrived),
    }];
  });
}

/** One a study: the reading accepted last, which an amendment or a second reading has put in the place of the others. */
export const currentReadings = (readings: DogsReading[]): DogsReading[] => [...new Map(readings.map((r) => [r.study, r])).values()];

/** The newest reading by the same protocol that was accepted before a moment, of films of another order. */
export function earlierReading(others: OrderReadings[], protocol: string, before: string): DogsReading | undefined {
  const readings = others.flatMap((o) => currentReadings(acceptedReadings(o)));
  return readings.filter((r) => r.protocol.code === protocol && r.acceptedAt < before).sort((a, b) => (a.acceptedAt < b.acceptedAt ? -1 : 1)).at(-1);
}

/** SQL for the OrderReadings of a row of orders, as one JSON value. */
export const readingsOf = (o: string): string => `jsonb_build_object('order', ${o}.id, 'accession', ${o}.accession, 'dog', (SELECT call_name FROM dog WHERE id = ${o}.dog_id),
  'studies', COALESCE((SELECT jsonb_agg(jsonb_build_object('id', s.id, 'protocol', s.protocol, 'version', s.version)) FROM study s WHERE s.order_id = ${o}.id), '[]'),
  'facts', COALESCE((SELECT jsonb_agg(f.body || jsonb_build_object('id', f.id, 'type', f.type, 'by', f.by, 'at', to_char(f.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY f.seq)
    FROM fact f WHERE f.order_id = ${o}.id AND f.type IN ('resultArrived', 'resultKeyed', 'resultAccepted', 'resultWithdrawn', 'letterReleased')), '[]'))`;
