const at = (column: string) => `to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

/** Every bill of a practice with its lines and what was said about them, in the order of entering. $1 practice. */
export const BILLS = `SELECT b.id, b.centre_id AS centre, c.name AS "centreName", b.number, to_char(b.day, 'YYYY-MM-DD') AS day, to_char(b.due, 'YYYY-MM-DD') AS due, b.currency, ${at('b.at')} AS at, b.by_name AS by,
  (SELECT jsonb_agg(jsonb_build_object('id', l.id, 'place', l.place, 'reference', l.reference, 'study', l.study, 'amountMinor', l.amount_minor) ORDER BY l.place) FROM centre_bill_line l WHERE l.practice_id = b.practice_id AND l.bill_id = b.id) AS lines,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('line', e.line_id, 'type', e.type, 'study', e.study_id, 'day', e.day, 'words', e.words, 'by', e.by_name, 'at', ${at('e.at')}) ORDER BY e.seq) FROM centre_bill_event e WHERE e.practice_id = b.practice_id AND e.bill_id = b.id), '[]') AS events
FROM centre_bill b JOIN centre c ON c.id = b.centre_id WHERE b.practice_id = $1::uuid ORDER BY b.at, b.id`;

export interface BillEvent { line: string | null; type: 'matched' | 'disputed' | 'undone' | 'paid' | 'unpaid' | 'withdrawn'; study: string | null; day: string | null; words: string | null; by: string; at: string }
export interface BillRecord {
  id: string; centre: string; centreName: string; number: string; day: string; due: string | null; currency: string; at: string; by: string;
  lines: { id: string; place: number; reference: string; study: string; amountMinor: number }[];
  events: BillEvent[];
}

const PLAIN = (text: string) => `upper(regexp_replace(${text}, '[^[:alnum:]]', '', 'g'))`;

/**
 * Studies that this practice has sent, and those of orders that a bill names. $1 practice, $2 numbers that are asked
 * about beside the bills'.
 */
export const STUDIES = `WITH named AS (SELECT ${PLAIN('l.reference')} AS number FROM centre_bill_line l WHERE l.practice_id = $1::uuid UNION SELECT ${PLAIN('x')} FROM unnest($2::text[]) x)
SELECT s.id AS study, o.id AS order, o.accession, d.call_name AS dog, s.protocol, s.version, s.centre_id AS asked,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('centre', f.body->>'centre', 'at', ${at('f.at')}, 'number', f.body->'detail'->>'number') ORDER BY f.seq) FROM fact f WHERE f.type = 'packageSent' AND f.practice = $1::uuid::text AND f.order_id = o.id AND f.body->>'study' = s.id::text), '[]') AS sends,
  COALESCE((SELECT jsonb_agg(${at('f.at')} ORDER BY f.seq) FROM fact f WHERE f.type = 'resultArrived' AND f.order_id = o.id AND f.body->>'study' = s.id::text), '[]') AS read
FROM orders o JOIN study s ON s.order_id = o.id JOIN dog d ON d.id = o.dog_id
WHERE o.id IN (SELECT f.order_id FROM fact f WHERE f.type = 'packageSent' AND f.practice = $1::uuid::text) OR (o.practice_id = $1::uuid AND ${PLAIN('o.accession')} IN (SELECT number FROM named))
ORDER BY o.created_at, s.id`;

export interface StudyRow { study: string; order: string; accession: string; dog: string; protocol: string; version: string; asked: string; sends: { centre: string; at: string; number: string }[]; read: string[] }
