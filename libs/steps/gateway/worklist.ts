import type { DicomDog } from '#libs/dicom/dog-attributes';
import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { StepDeps } from '../record/step-deps.js';
import type { Sender } from './find-console.js';

/** One visit that is to be imaged, as a machine lists it. */
export interface WorklistEntry {
  visit: string;
  accession: string;
  day: string;
  /** HH:MM on the practice's clock. */
  start: string;
  dog: DicomDog;
  practiceName: string;
  /** The studies' names, for people. */
  studies: string[];
  views: { code: string; label: string }[];
}

/** Dogs here and dogs that are booked, unless a machine asks for other days: yesterday's visit may still be open after midnight. */
const AROUND = { before: 1, after: 14 };

interface Row {
  visit: string; accession: string; day: string; start: string | null;
  animalId: string; sex: DicomDog['sex']; neutered: boolean; breed: string; born: string | null;
  name: string; owner: string | null; transponders: string[]; studBook: DicomDog['studBook'];
  practiceName: string; protocols: { protocol: string; version: string }[];
}

const WORKLIST = `SELECT v.id AS visit, o.accession, v.day, v.start,
  d.animal_id AS "animalId", d.sex, d.neutered, d.breed, CASE WHEN d.born_precision = 'day' AND d.born_earliest = d.born_latest THEN d.born_latest END AS born,
  COALESCE((SELECT COALESCE(n.latin_name, n.name) FROM dog_name n WHERE n.dog_id = d.id ORDER BY n.valid_from DESC LIMIT 1), d.call_name) AS name,
  (SELECT COALESCE(p.latin_name, p.name) FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id AND r.role = 'owner' AND (r.valid_until IS NULL OR r.valid_until >= v.day) ORDER BY r.valid_from DESC LIMIT 1) AS owner,
  COALESCE((SELECT jsonb_agg(i.value ORDER BY i.valid_from DESC) FROM dog_identifier i WHERE i.dog_id = d.id AND i.valid_until IS NULL AND i.kind IN ('transponder', 'olderTransponder') AND i.value <> ''), '[]') AS transponders,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('book', b.book, 'number', b.number)) FROM stud_book_number b WHERE b.dog_id = d.id), '[]') AS "studBook",
  h.name AS "practiceName",
  COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version) ORDER BY s.protocol) FROM study s WHERE s.order_id = o.id AND s.open AND s.step IN ('asked', 'imaging', 'ready')), '[]') AS protocols
FROM visit v JOIN orders o ON o.id = v.order_id JOIN dog d ON d.id = o.dog_id JOIN practice h ON h.id = $1::uuid
WHERE v.practice_id = $1::uuid AND v.step IN ('booked', 'admitted', 'sedated') AND v.day BETWEEN $2::date AND $3::date
ORDER BY v.day, v.start, o.accession LIMIT $4`;

/** The visits of one practice that a machine may choose from. */
export async function readWorklist({ db, clock }: StepDeps, { practice }: Sender, asked: { from?: string; until?: string; most: number }): Promise<WorklistEntry[]> {
  const [home] = await db.read<{ zone: string }>({ practice }, 'SELECT zone FROM practice WHERE id = $1::uuid', [practice]);
  const today = localDay(clock.now().toISOString(), home?.zone ?? 'UTC');
  const rows = await db.read<Row>({ practice }, WORKLIST, [practice, asked.from ?? addDays(today, -AROUND.before), asked.until ?? addDays(today, AROUND.after), asked.most]);
  return rows.map(entryOf).filter((entry) => entry.views.length > 0);
}

function entryOf({ visit, accession, day, start, practiceName, protocols, born, owner, ...dog }: Row): WorklistEntry {
  const studies = protocols.flatMap(({ protocol, version }) => findProtocol(protocol, version) ?? []);
  const views = new Map(studies.flatMap((s) => s.views).map(({ code, label }) => [code as string, { code, label }]));
  return {
    visit, accession, day, start: start ?? '00:00', practiceName, studies: studies.map((s) => s.deskName), views: [...views.values()],
    dog: { ...dog, owner: owner ?? '', issuer: 'COTYLA', ...(born && { born }) },
  };
}
