import type { SearchReply } from '#libs/contracts/screens/board';
import { stepLabels } from '#libs/pathway/words';
import { ScienceError } from '#libs/science/error';
import { parseAccession } from '#libs/science/identifiers/accession';
import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import { stepName, studyName } from '../spoken-names.js';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { shown } from '../dog-of-row.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';
import { asked } from './asked.js';
import { DOG_HITS, DOG_LINE, type DogLine } from './dog-hits-sql.js';

interface OrderLine { id: string; accession: string; dog: string; step: keyof typeof stepLabels; day: string | null; studies: { protocol: string; version: string }[] }

/** $4 text, $5 digits or null, $6 a whole accession number or null, $7 its beginning without dashes or null. */
const FOUND = `WITH ${DOG_HITS}, nearest AS (
  SELECT id, score FROM near ORDER BY score DESC FETCH FIRST 8 ROWS WITH TIES
), dogs AS (
  SELECT ${DOG_LINE}, nearest.score FROM nearest JOIN dog d ON d.id = nearest.id ORDER BY nearest.score DESC, lower(d.call_name), d.id LIMIT 8
), found AS (
  SELECT o.id, o.accession, o.step, d.call_name AS dog, o.created_at,
    (SELECT max(v.day)::text FROM visit v WHERE v.order_id = o.id) AS day,
    COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version)) FROM study s WHERE s.order_id = o.id), '[]') AS studies
  FROM order_access a JOIN orders o ON o.id = a.order_id JOIN dog d ON d.id = o.dog_id
  WHERE ($6::text IS NOT NULL OR $7::text IS NOT NULL) AND a.practice_id = $1::uuid AND (o.accession = $6 OR starts_with(replace(o.accession, '-', ''), $7)) ORDER BY o.created_at DESC LIMIT 8
), ${viewed('search', `jsonb_build_object('dogs', (SELECT jsonb_agg(id) FROM dogs), 'orders', (SELECT jsonb_agg(id) FROM found))`, 'EXISTS (SELECT 1 FROM dogs) OR EXISTS (SELECT 1 FROM found)')}
SELECT COALESCE((SELECT jsonb_agg(to_jsonb(dogs) ORDER BY score DESC, lower("callName"), id) FROM dogs), '[]') AS dogs,
  COALESCE((SELECT jsonb_agg(to_jsonb(found) ORDER BY created_at DESC) FROM found), '[]') AS orders`;

/** One box for everything: dogs by name, number, owner or phone, orders by their number; slips of typing are borne. */
export async function search(deps: RegisterDeps, actor: Actor, { q }: { q?: string }): Promise<SearchReply> {
  staffOnly(actor);
  const { text, digits } = asked(q);
  if (text.length < 2) return { dogs: [], orders: [] };
  const [found] = await deps.db.read<{ dogs: DogLine[]; orders: OrderLine[] }>({ practice: actor.practice }, FOUND, [...viewer(actor), text, digits, wholeNumber(text), beginning(text)]);
  return { dogs: found!.dogs.map(dogWords), orders: found!.orders.map(orderWords) };
}

/** O and I read as 0 and 1, dashes left out or not: what is printed as this number. Null when it is none. */
function wholeNumber(text: string): string | null {
  try {
    return parseAccession(text).text;
  } catch (error) {
    if (error instanceof ScienceError) return null;
    throw error;
  }
}

function beginning(text: string): string | null {
  const plain = normaliseScan(text);
  return /^[A-Z]{2,4}\d{2}/.test(plain) ? plain : null;
}

const dogWords = ({ id, name, callName, breed, sex, number, owner }: DogLine) => ({
  id,
  name: name === callName ? name : `${callName}, ${name}`,
  line: [breed, sex, number && shown(number.kind, number.value), owner?.name, owner?.phone].filter(Boolean).join(', '),
});

const orderWords = ({ id, accession, dog, day, step, studies }: OrderLine) => ({
  id,
  accession,
  line: [dog, ...studies.map(studyName), day, stepName(step)].filter(Boolean).join(', '),
});
