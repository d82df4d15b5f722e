/** The entries of one practice about one order, oldest first; a reversal is told with what it reverses. $1 order, $2 practice. */
export const ENTRIES = `SELECT e.id, e.seq::text AS seq, e.visit_id AS visit, e.kind, e.words, e.amount_minor AS "amountMinor", e.currency, e.why, e.estimate_id AS "estimateId", e.estimate_line AS "estimateLine",
  e.day, e.how, e.person_id AS "personId", p.name AS person, e.receipt, to_char(e.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at, e.by_name AS by,
  (SELECT jsonb_build_object('why', r.why, 'by', r.by_name, 'at', to_char(r.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) FROM fee_entry r WHERE r.practice_id = e.practice_id AND r.reverses = e.id) AS reversed
FROM fee_entry e LEFT JOIN person p ON p.id = e.person_id WHERE e.order_id = $1::uuid AND e.practice_id = $2::uuid AND e.kind <> 'reversal' ORDER BY e.seq`;

export interface EntryRow {
  id: string; seq: string; visit: string; kind: 'charge' | 'payment' | 'refund' | 'agreement'; words: string; amountMinor: number; currency: string; why: string | null;
  estimateId: string | null; estimateLine: number | null; day: string | null; how: string | null; personId: string | null; person: string | null; receipt: string | null; at: string; by: string;
  reversed: { why: string; by: string; at: string } | null;
}

/**
 * What was accepted, charged and paid for an order, with the alias `o`; $1 is the practice that looks.
 * Beyond what an integer of the database holds, but not beyond what a number of ours counts exactly.
 */
export const SUMS = `LATERAL (
  SELECT COALESCE(sum(e.amount_minor) FILTER (WHERE e.kind = 'charge'), 0)::float8 AS charged, COALESCE(sum(CASE e.kind WHEN 'payment' THEN e.amount_minor WHEN 'refund' THEN -e.amount_minor END), 0)::float8 AS paid, count(*) > 0 AS has
  FROM fee_entry e WHERE e.order_id = o.id AND e.practice_id = $1::uuid AND e.kind <> 'reversal' AND NOT EXISTS (SELECT 1 FROM fee_entry r WHERE r.practice_id = e.practice_id AND r.reverses = e.id)) m
CROSS JOIN LATERAL (
  SELECT COALESCE(sum(x.amount), 0)::float8 AS accepted FROM (SELECT DISTINCT ON (f.body->>'visit') f.body->>'visit' AS visit, (f.body->>'amountMinor')::bigint AS amount FROM fact f WHERE f.order_id = o.id AND f.type = 'estimateAccepted' ORDER BY f.body->>'visit', f.seq DESC) x
  JOIN visit v ON v.id::text = x.visit AND v.step NOT IN ('cancelled', 'missed', 'turnedAway')) a`;
