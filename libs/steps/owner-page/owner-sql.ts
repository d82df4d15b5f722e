import { DOG } from '#libs/register/dog-sql';
import { RECORD, RECORD_FROM } from '../record/order-sql.js';

/** The order, and of the practice only the texts in force and the advice that was chosen. $1 order, $2 who, $3 practice. */
export const OWNER = `WITH looked AS (
  INSERT INTO audit (practice_id, order_id, by, role, action) SELECT $3::uuid, o.id, $2::text, 'owner', 'view' FROM orders o WHERE o.id = $1::uuid
)
SELECT ${RECORD} AS record, ${DOG} AS dog,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('kind', t.kind, 'version', t.version, 'title', t.title, 'body', t.body, 'language', t.language, 'id', t.id, 'by', s.name)) FROM approved_text t LEFT JOIN staff s ON s.id = t.approved_by WHERE t.practice_id = o.practice_id AND t.kind <> 'goingHome'), '[]') AS texts,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', x.id, 'kind', x.kind, 'name', x.name, 'named', x.named, 'subject', x.subject, 'printed', x.pdf_sha IS NOT NULL, 'at', to_char(x.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY x.at DESC) FROM document x WHERE x.order_id = o.id AND x.for_owner), '[]') AS documents,
  (SELECT prices FROM practice WHERE id = o.practice_id) AS prices, (SELECT language FROM person WHERE id = $2::text::uuid) AS language
${RECORD_FROM} WHERE o.id = $1::uuid`;
