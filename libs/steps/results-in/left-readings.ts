import type { LeftReading, ResultsInScreen } from '#libs/contracts/results-in';
import { t } from '#libs/words/spoken';
import { sayStored, type Stored } from '#libs/words/stored';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import { look, personOf, type Onlooker } from './onlooker.js';
import { utc } from './utc.js';

interface Row extends Omit<LeftReading, 'order' | 'words'>, Stored { order: string | null; accession: string | null }

const LEFT = `SELECT l.id, ${utc('l.at')} AS at, c.name AS centre, l.said, l.words, l.sentences, o.id AS "order", o.accession
FROM result_left l JOIN centre c ON c.id = l.centre_id LEFT JOIN orders o ON o.id = l.order_id WHERE l.settled_at IS NULL ORDER BY l.at, l.delivery_id, l.place LIMIT $1`;
const PAGE = 50;

/** A page of the readings of messages that led nowhere, the oldest first; each waits until a person has seen to it. */
export async function leftReadings(deps: StepDeps, who: Onlooker, page = 1): Promise<ResultsInScreen['left']> {
  // The lead's list comes centre by centre, and only all of them together have an order.
  const upTo = (await look(deps, who, (tx) => tx.$queryRawUnsafe<Row[]>(LEFT, page * PAGE + 1))).flat().sort((a, b) => Number(a.at > b.at) - Number(a.at < b.at));
  const rows = upTo.slice((page - 1) * PAGE, page * PAGE);
  return { more: upTo.length > page * PAGE, rows: rows.map(({ order, accession, words, sentences, ...row }) => ({ ...row, words: sayStored({ words, sentences }, t), order: order && accession ? { id: order, accession } : null })) };
}

export async function countLeft(tx: Tx): Promise<number> {
  const [counted] = await tx.$queryRaw<{ n: number }[]>`SELECT count(*)::int AS n FROM result_left WHERE settled_at IS NULL`;
  return counted?.n ?? 0;
}

/** Seen to: the centre was asked, or it was sent again under the right number. It is kept, and leaves the list. */
export async function setAside(deps: StepDeps, who: Onlooker, reading: string, why: string): Promise<void> {
  const { id, name, role, practice } = personOf(who);
  const done = await look(deps, who, async (tx) => {
    const count = await tx.$executeRaw`UPDATE result_left SET settled_at = ${deps.clock.now()}, settled_by = ${id}, settled_by_name = ${name}, settled_why = ${why} WHERE id = ${reading}::uuid AND settled_at IS NULL`;
    if (count > 0) await audit(tx, { by: id, role, action: 'setReadingAside', practice, subject: reading, detail: { why } });
    return count;
  });
  if (!done.includes(1)) throw notFound();
}
