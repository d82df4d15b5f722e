import type { PracticeScreen } from '#libs/contracts/register';

type Accredited = Omit<PracticeScreen['accreditations'][number], 'protocolName'>;

export interface PracticeSource extends Pick<PracticeScreen, 'practice' | 'staff' | 'rooms' | 'equipment' | 'texts' | 'centres'> {
  prices: unknown;
  currency: string;
  accreditations: Accredited[];
}

const rows = (select: string, from: string, order: string) => `COALESCE((SELECT jsonb_agg(${select} ORDER BY ${order}) FROM ${from}), '[]')`;

/** One text of each kind, title and language is in force; of each kind of consent one alone. */
const TEXTS = `(SELECT DISTINCT ON (a.kind, k.title, k.language) a.* FROM approved_text a
  CROSS JOIN LATERAL (SELECT CASE WHEN a.kind NOT LIKE 'consent%' THEN a.title END AS title, CASE WHEN a.kind NOT LIKE 'consent%' THEN a.language END AS language) k
  WHERE a.practice_id = $1::uuid ORDER BY a.kind, k.title, k.language, a.approved_at DESC) t`;

/** Everything that the practice page shows, in one answer. $1 practice. */
export const PRACTICE = `SELECT
  jsonb_build_object('id', p.id, 'name', p.name, 'address', p.address, 'phone', p.phone, 'email', p.email, 'zone', p.zone, 'mayCertify', p.may_certify) AS practice,
  p.prices, (SELECT currency FROM scheme WHERE id = p.scheme_id) AS currency,
  ${rows(`jsonb_build_object('id', s.id, 'name', s.name, 'email', s.email, 'roles', s.roles, 'active', s.active)`, 'staff s WHERE s.practice_id = $1::uuid', 's.name')} AS staff,
  ${rows(`jsonb_build_object('id', r.id, 'name', r.name, 'kind', r.kind)`, 'room r WHERE r.practice_id = $1::uuid', 'r.name')} AS rooms,
  ${rows(`jsonb_build_object('id', e.id, 'name', e.name, 'kind', e.kind, 'checkedUntil', e.checked_until, 'pixels', (SELECT jsonb_build_object('mm', x.pixel_mm, 'on', to_char(x.at AT TIME ZONE p.zone, 'YYYY-MM-DD'), 'by', x.by_name) FROM detector_size x WHERE x.equipment_id = e.id ORDER BY x.seq DESC LIMIT 1))`, 'equipment e WHERE e.practice_id = $1::uuid', 'e.name')} AS equipment,
  ${rows(`jsonb_build_object('id', a.id, 'staff', a.staff_id, 'staffName', s.name, 'protocol', a.protocol, 'from', a.valid_from, 'until', a.valid_until, 'evidence', a.evidence)`, 'accreditation a JOIN staff s ON s.id = a.staff_id WHERE a.practice_id = $1::uuid', 's.name, a.protocol, a.valid_from')} AS accreditations,
  ${rows(`jsonb_build_object('id', t.id, 'kind', t.kind, 'version', t.version, 'title', t.title, 'forDogs', t.for_dogs, 'language', t.language, 'body', t.body, 'approvedBy', COALESCE((SELECT name FROM staff WHERE id = t.approved_by), ''), 'approvedAt', to_char(t.approved_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'))`, TEXTS, 't.kind, t.title, t.language')} AS texts,
  ${rows(`jsonb_strip_nulls(jsonb_build_object('id', c.id, 'name', c.name, 'place', c.place, 'email', c.email, 'zone', c.zone, 'region', c.region, 'holidays', c.holidays, 'ackDays', c.ack_days, 'resultDays', c.result_days, 'remindEvery', c.remind_every, 'reminders', c.reminders, 'appealDays', c.appeal_days, 'feeMinor', c.fee_minor, 'protocols', c.protocols))`, 'centre c WHERE c.scheme_id = p.scheme_id', 'c.name')} AS centres
FROM practice p WHERE p.id = $1::uuid`;

