/** A request with its events and whom it is about. Expects the alias `r`. */
export const REQUEST = `r.id, r.kind, r.asked, to_char(r.received, 'YYYY-MM-DD') AS received,
  (SELECT jsonb_build_object('id', p.id, 'name', p.name, 'email', p.email, 'phone', p.phone, 'erased', p.erased_at IS NOT NULL) FROM person p WHERE p.id = r.person_id) AS person,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('type', e.type, 'words', e.words, 'by', e.by_name, 'at', to_char(e.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'), 'until', e.until) ORDER BY e.seq)
    FROM data_request_event e WHERE e.request_id = r.id), '[]') AS events,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('order', o.id, 'accession', o.accession, 'legalHold', o.evaluation->'order'->'legalHold') ORDER BY o.accession)
    FROM orders o WHERE o.practice_id = r.practice_id AND EXISTS (SELECT 1 FROM dog_role x WHERE x.dog_id = o.dog_id AND x.person_id = r.person_id)), '[]') AS orders,
  (SELECT count(*)::int FROM document d JOIN orders o ON o.id = d.order_id WHERE EXISTS (SELECT 1 FROM dog_role x WHERE x.dog_id = o.dog_id AND x.person_id = r.person_id)) AS papers,
  (SELECT count(*)::int FROM image i JOIN orders o ON o.id = i.order_id WHERE EXISTS (SELECT 1 FROM dog_role x WHERE x.dog_id = o.dog_id AND x.person_id = r.person_id)) AS films`;

export interface RequestRow {
  id: string; kind: string; asked: string; received: string;
  person: { id: string; name: string; email: string | null; phone: string | null; erased: boolean };
  events: { type: string; words: string; by: string; at: string; until: string | null }[];
  orders: { order: string; accession: string; legalHold: boolean | null }[];
  papers: number; films: number;
}
