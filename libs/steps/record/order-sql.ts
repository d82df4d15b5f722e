/** What evaluating an order needs, assembled by the database in one answer. */
export const RECORD = `jsonb_build_object(
  'id', o.id, 'practice', o.practice_id, 'accession', o.accession, 'dog', o.dog_id, 'version', o.version, 'closed', o.closed,
  'breed', d.breed, 'breeds', (SELECT breeds FROM scheme LIMIT 1), 'born', jsonb_build_object('earliest', d.born_earliest, 'latest', d.born_latest),
  'facts', COALESCE((SELECT jsonb_agg(f.body || jsonb_build_object('id', f.id, 'type', f.type, 'by', f.by, 'byName', f.by_name, 'role', f.role, 'practice', f.practice,
      'at', to_char(f.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'), 'rec', to_char(f.rec AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY f.seq)
    FROM fact f WHERE f.order_id = o.id), '[]'),
  'practices', app.practice_rules(o.id),
  'centres', (SELECT jsonb_object_agg(c.id, jsonb_build_object('name', c.name, 'email', c.email, 'zone', c.zone, 'region', c.region, 'holidays', c.holidays, 'ackDays', c.ack_days, 'resultDays', c.result_days, 'remindEvery', c.remind_every, 'reminders', c.reminders, 'appealDays', c.appeal_days, 'feeMinor', c.fee_minor, 'protocols', c.protocols)) FROM centre c))`;

export const RECORD_FROM = 'FROM orders o JOIN dog d ON d.id = o.dog_id';
