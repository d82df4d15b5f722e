import type { DataRequest, RequestKind } from '#libs/contracts/requests';
import { answerAtLatest, answerBy } from '#libs/science/request-clock';
import { keptAfterErasure } from './kept-after-erasure.js';
import type { RequestRow } from './request-sql.js';

/** Where a request stands, read off what was done about it. */
export function requestOfRow(row: RequestRow, today: string): DataRequest {
  const last = (...types: string[]) => row.events.findLast((e) => types.includes(e.type));
  const verified = last('verified');
  const end = last('done', 'refused');
  const due = last('extended')?.until ?? answerBy(row.received);
  return {
    id: row.id, kind: row.kind as RequestKind, asked: row.asked, received: row.received, due, latest: answerAtLatest(row.received),
    overdue: !end && due < today,
    person: row.person,
    verified: verified ? { how: verified.words, by: verified.by, at: verified.at } : null,
    restricted: last('restricted', 'restrictionLifted')?.type === 'restricted',
    objected: last('objected') !== undefined,
    closed: end ? { outcome: end.type as 'done' | 'refused', words: end.words, by: end.by, at: end.at } : null,
    events: row.events,
    heldBy: row.orders.filter((o) => o.legalHold === true).map(({ order, accession }) => ({ order, accession })),
    kept: row.kind === 'erasure' ? keptAfterErasure({ orders: row.orders.length, papers: row.papers, films: row.films }) : [],
  };
}
