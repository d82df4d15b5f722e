import type { AgeException } from '#libs/science/protocols/types';
import type { Birth } from '#libs/contracts/register';
import type { Accreditation } from '#libs/register/practice/accredited';
import { viewed } from '#libs/register/viewed-sql';

/** What the booking form is filled in from; one row of BOOKING. */
export interface BookingSource {
  dog: { breed: string; sex: 'male' | 'female'; neutered: boolean; birth: Birth; died: string | null };
  older: Record<string, AgeException[]> | null;
  currency: string;
  zone: string;
  policy: unknown;
  prices: unknown;
  centres: { id: string; name: string; feeMinor: number; protocols: string[] }[];
  staff: StaffMember[];
  accreditations: Accreditation[];
  equipment: Device[];
  rooms: { id: string; name: string }[];
  /** Who and what is occupied from now on: by id, in milliseconds. */
  occupied: Occupied[];
  advice: { id: string; title: string; forDogs: string; approvedBy: string }[];
  people: { id: string; name: string; roles: string[]; email: string | null }[];
  /** The day of the latest accepted result, by protocol. */
  lastResults: Record<string, string>;
  orders: EarlierOrder[];
}

export interface StaffMember { id: string; name: string; roles: string[] }
export interface Device { kind: string; checkedUntil: string }
export interface Occupied { id: string; from: number; until: number }
export interface EarlierOrder { id: string; accession: string; day: string | null; step: string; closed: boolean; studies: { protocol: string; version: string }[] }

const list = (row: string, from: string, order: string) => `COALESCE((SELECT jsonb_agg(jsonb_build_object(${row}) ORDER BY ${order}) FROM ${from}), '[]')`;
const ms = (bound: string) => `(extract(epoch FROM ${bound}(s.period)) * 1000)::float8`;

/** $1 practice, $2 who, $3 role, $4 dog, $5 now. No row when this practice sees no such dog. */
export const BOOKING = `WITH ${viewed('viewBookingOptions', `jsonb_build_object('dogs', jsonb_build_array($4::uuid))`, 'EXISTS (SELECT 1 FROM dog WHERE id = $4::uuid)')}
SELECT
  jsonb_build_object('breed', d.breed, 'sex', d.sex, 'neutered', d.neutered, 'birth', jsonb_build_object('earliest', d.born_earliest, 'latest', d.born_latest, 'precision', d.born_precision), 'died', d.died) AS dog,
  sc.breeds->'older' AS older, sc.currency, p.zone, p.policy, p.prices,
  ${list(`'id', c.id, 'name', c.name, 'feeMinor', c.fee_minor, 'protocols', c.protocols`, 'centre c WHERE c.scheme_id = p.scheme_id', 'c.name')} AS centres,
  ${list(`'id', s.id, 'name', s.name, 'roles', s.roles`, 'staff s WHERE s.practice_id = p.id AND s.active', 's.name, s.id')} AS staff,
  ${list(`'staff', a.staff_id, 'protocol', a.protocol, 'from', a.valid_from, 'until', a.valid_until`, 'accreditation a WHERE a.practice_id = p.id', 'a.valid_until DESC')} AS accreditations,
  ${list(`'kind', e.kind, 'checkedUntil', e.checked_until`, 'equipment e WHERE e.practice_id = p.id', 'e.checked_until DESC')} AS equipment,
  ${list(`'id', r.id, 'name', r.name`, `room r WHERE r.practice_id = p.id AND r.kind = 'xray'`, 'r.name')} AS rooms,
  ${list(`'id', s.resource_id, 'from', ${ms('lower')}, 'until', ${ms('upper')}`, 'slot s WHERE s.practice_id = p.id AND upper(s.period) > $5::timestamptz', '1')} AS occupied,
  ${list(`'id', t.id, 'title', t.title, 'forDogs', t.for_dogs, 'approvedBy', COALESCE((SELECT name FROM staff WHERE id = t.approved_by), '')`, `(SELECT DISTINCT ON (title, language) * FROM approved_text WHERE practice_id = p.id AND kind = 'advice' ORDER BY title, language, approved_at DESC) t`, 't.title')} AS advice,
  ${list(`'id', q.id, 'name', q.name, 'email', q.email, 'roles', q.roles`, `(SELECT x.id, x.name, x.email, array_agg(r.role ORDER BY r.role) AS roles FROM dog_role r JOIN person x ON x.id = r.person_id
      WHERE r.dog_id = d.id AND r.valid_until IS NULL AND x.erased_at IS NULL GROUP BY x.id, x.name, x.email) q`, `'owner' = ANY(q.roles) DESC, q.name`)} AS people,
  COALESCE((SELECT jsonb_object_agg(l.protocol, l.day) FROM (SELECT s.protocol, to_char(max(f.at), 'YYYY-MM-DD') AS day FROM orders o JOIN study s ON s.order_id = o.id JOIN fact f ON f.order_id = o.id AND f.type = 'resultAccepted' AND f.body->>'study' = s.id::text
    WHERE o.dog_id = d.id GROUP BY s.protocol) l), '{}') AS "lastResults",
  ${list(`'id', o.id, 'accession', o.accession, 'step', o.step, 'closed', o.closed, 'day', (SELECT max(v.day) FROM visit v WHERE v.order_id = o.id), 'studies', COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version)) FROM study s WHERE s.order_id = o.id), '[]')`, 'orders o WHERE o.dog_id = d.id', 'o.created_at DESC')} AS orders
FROM dog d JOIN practice p ON p.id = $1::uuid JOIN scheme sc ON sc.id = p.scheme_id WHERE d.id = $4::uuid`;
