import { DOG } from '#libs/register/dog-sql';
import { RECORD, RECORD_FROM } from '../record/order-sql.js';
import { readingsOf } from '../result/accepted-readings.js';

const at = (column: string) => `to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

/**
 * Everything that the order's page shows, in one answer, and the audit row that says who looked.
 * $1 order, $2 who, $3 role, $4 practice.
 */
export const SCREEN = `WITH looked AS (
  INSERT INTO audit (practice_id, order_id, by, role, action)
  SELECT $4::uuid, o.id, $2, $3, 'view' FROM orders o WHERE o.id = $1::uuid
)
SELECT ${RECORD} AS record, ${DOG} AS dog,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', x.id, 'kind', x.kind, 'name', x.name, 'named', x.named, 'at', ${at('x.at')}, 'serial', x.serial, 'state', x.state) ORDER BY x.at DESC) FROM document x WHERE x.order_id = o.id), '[]') AS documents,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', m.id, 'kind', m.kind, 'to', m.to_name, 'subject', m.subject, 'state', m.state, 'detail', m.detail, 'at', ${at('COALESCE(m.done_at, m.created_at)')}) ORDER BY m.created_at DESC) FROM message m WHERE m.order_id = o.id AND (m.kind <> 'bill' OR m.practice_id = $4::uuid)), '[]') AS messages,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', p.id, 'job', p.job, 'words', p.words, 'sentences', p.sentences, 'at', ${at('p.at')}) ORDER BY p.at DESC) FROM problem p WHERE p.order_id = o.id AND p.resolved_at IS NULL), '[]') AS problems,
  COALESCE((SELECT jsonb_object_agg(v.send_id, jsonb_build_object('channel', v.kind, 'state', v.state, 'words', v.words, 'sentences', v.sentences, 'films', (SELECT jsonb_agg(jsonb_build_object('name', i.name, 'named', i.named, 'state', i.state, 'words', i.words, 'sentences', i.sentences) ORDER BY i.place) FROM delivery_item i WHERE i.send_id = v.send_id),
      'notes', COALESCE((SELECT jsonb_agg(jsonb_build_object('id', n.send_id, 'words', n.note->>'words', 'reasons', COALESCE(n.note->'reasons', '[]'), 'films', jsonb_array_length(n.note->'films'), 'state', n.state, 'said', jsonb_build_object('words', n.words, 'sentences', n.sentences),
          'told', (SELECT jsonb_build_object('at', ${at('f.at')}, 'by', f.by_name, 'how', f.body->>'how', 'whom', f.body->'detail'->>'whom') FROM fact f WHERE f.order_id = o.id AND f.type = 'noteTold' AND f.body->>'note' = n.send_id::text LIMIT 1)) ORDER BY n.touched_at) FROM delivery n WHERE n.order_id = o.id AND n.note->>'of' = v.send_id::text), '[]')))
    FROM delivery v WHERE v.order_id = o.id AND v.note IS NULL), '{}') AS deliveries,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('sha', i.sha256, 'kind', i.kind, 'preview', i.preview_sha, 'width', i.width, 'height', i.height, 'rowMm', i.row_mm, 'columnMm', i.column_mm, 'said', i.said)) FROM image i WHERE i.order_id = o.id), '[]') AS images,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('image', i.sha256, 'at', ${at('r.at')}, 'from', c.name, 'previewable', i.preview_sha IS NOT NULL, 'imageDay', i.image_day, 'patientId', i.patient_id, 'said', r.said, 'width', i.width, 'height', i.height) ORDER BY r.at, r.id)
    FROM received_image r JOIN console c ON c.id = r.console_id JOIN image i ON i.order_id = o.id AND i.sha256 = r.sha256 WHERE COALESCE(r.order_id, r.settled_order) = o.id AND r.left_out_at IS NULL), '[]') AS arrived,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('step', p.sop_uid, 'at', ${at('p.at')}, 'from', c.name, 'state', p.state, 'said', p.said,
      'here', COALESCE((SELECT jsonb_agg(r.sha256) FROM received_image r WHERE r.practice_id = p.practice_id AND r.sop_uid IN (SELECT jsonb_array_elements_text(p.said->'images'))), '[]')) ORDER BY p.at, p.sop_uid, p.place)
    FROM performed_step p JOIN console c ON c.id = p.console_id WHERE p.sop_uid IN (SELECT m.sop_uid FROM performed_step m WHERE m.order_id = o.id AND m.practice_id = p.practice_id UNION ALL SELECT s.sop_uid FROM performed_settled s WHERE s.order_id = o.id AND s.practice_id = p.practice_id)), '[]') AS performed,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('exposure', k.exposure, 'picture', k.picture, 'marks', k.marks, 'at', ${at('k.at')}) ORDER BY k.at) FROM room_mark k WHERE k.order_id = o.id), '[]') AS marks,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', s.id, 'name', s.name, 'roles', s.roles) ORDER BY s.name) FROM staff s WHERE s.practice_id = $4::uuid AND s.active), '[]') AS staff,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', r.id, 'name', r.name) ORDER BY r.name) FROM room r WHERE r.practice_id = $4::uuid), '[]') AS rooms,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', e.id, 'name', e.name, 'pixelMm', z.pixel_mm) ORDER BY e.name) FROM equipment e
    CROSS JOIN LATERAL (SELECT x.pixel_mm FROM detector_size x WHERE x.equipment_id = e.id ORDER BY x.seq DESC LIMIT 1) z WHERE e.practice_id = $4::uuid AND z.pixel_mm IS NOT NULL), '[]') AS detectors,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', q.id, 'name', q.name, 'place', q.place)) FROM app.practice_directory() q), '[]') AS directory,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', u.id, 'agent', a.name, 'owner', w.name, 'covers', u.covers, 'until', u.valid_until) ORDER BY a.name) FROM authority u JOIN person a ON a.id = u.agent_id JOIN person w ON w.id = u.owner_id WHERE u.dog_id = o.dog_id AND u.ended_at IS NULL), '[]') AS authorities,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', n.id, 'kind', n.kind, 'openedAt', ${at('n.opened_at')}, 'openedBy', n.opened_by, 'closedAt', ${at('n.closed_at')}, 'closedBy', n.closed_by, 'words', n.words) ORDER BY n.opened_at) FROM incident n WHERE n.order_id = o.id), '[]') AS incidents,
  COALESCE((SELECT jsonb_agg(x.readings) FROM (SELECT ${readingsOf('other')} AS readings FROM orders other WHERE other.dog_id = o.dog_id AND other.id <> o.id) x), '[]') AS others,
  (SELECT prices FROM practice WHERE id = o.practice_id) AS prices
${RECORD_FROM} WHERE o.id = $1::uuid`;
