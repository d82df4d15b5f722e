import type { FhirDog, FhirImage, FhirOrder, FhirPerson } from '#libs/fhir/source';
import { evaluate } from '#libs/pathway/evaluate';
import { pictureOf } from '#libs/pathway/picture';
import type { Tx } from '#libs/platform/database/db';
import { DOG } from '#libs/register/dog-sql';
import { withRules, type OrderRow } from '../record/order-record.js';
import { RECORD, RECORD_FROM } from '../record/order-sql.js';
import type { Work } from '../record/work.js';
import { jointsOf } from '../result/joints-of.js';
import { toldStanding } from '../standing/standing-view.js';
import { PEOPLE } from './people-sql.js';

interface Row { record: OrderRow; dog: Omit<FhirDog, 'practiceName'>; practiceName: string | null; people: FhirPerson[]; images: Record<string, FhirImage> }

const IMAGES = `COALESCE((SELECT jsonb_object_agg(i.sha256, jsonb_strip_nulls(jsonb_build_object('kind', i.kind, 'modality', i.said->'modality', 'sopClassUid', i.said->'sopClassUid', 'sopInstanceUid', i.said->'sopInstanceUid', 'seriesInstanceUid', i.said->'seriesInstanceUid'))) FROM image i WHERE i.order_id = o.id), '{}')`;

export interface Reading { base: string; now: Date; owners: boolean }

/** These orders, as far as the practice of this transaction sees them, in no order. */
export async function fhirOrders(tx: Tx, ids: string[], reading: Reading): Promise<Map<string, FhirOrder>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.$queryRawUnsafe<Row[]>(
    `SELECT ${RECORD} AS record, ${DOG} - 'people' AS dog, (SELECT name FROM practice p WHERE p.id = d.practice_id) AS "practiceName", ${reading.owners ? PEOPLE : `'[]'::jsonb`} AS people, ${IMAGES} AS images ${RECORD_FROM} WHERE o.id = ANY($1::uuid[])`, ids);
  return new Map(rows.map((row) => [row.record.id, fhirOrder(row, reading)]));
}

function fhirOrder({ record, dog, practiceName, people, images }: Row, { base, now }: Reading): FhirOrder {
  const { id, accession, facts, practices, centres, rules } = withRules(record);
  const ofType: Work['facts'] = (type) => facts.filter((fact): fact is never => fact.type === type);
  const picture = pictureOf(facts, rules);
  return {
    id, accession, people, practices, centres, base, picture,
    dog: { ...dog, practiceName },
    changed: facts.reduce((last, { rec }) => (rec > last ? rec : last), facts[0]?.rec ?? now.toISOString()),
    images: new Map(Object.entries(images)),
    evaluation: evaluate(facts, now.toISOString(), rules),
    joints: new Map(ofType('resultArrived').map((arrived) => [arrived.result, jointsOf(ofType, arrived)])),
    standings: new Map(picture.studies.flatMap((study) => {
      const told = toldStanding(facts, study.id);
      return told ? [[study.id, told] as const] : [];
    })),
  };
}
