import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { Unmatched, UnmatchedImage } from '#libs/contracts/gateway';
import { staffOnly } from '#libs/register/who-may';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { WHY_NONE, type NoMatch } from './match-order.js';
import { performedWithoutOrder } from './unmatched-performed.js';

interface Row extends Omit<UnmatchedImage, 'why' | 'said'> {
  why: string;
  patientId: string | null;
  said: { patientName?: string; accessionNumber?: string; breed?: string; viewPosition?: string; laterality?: string; procedures?: string[] };
}

const PAGE = 50;
const OPEN = 'r.order_id IS NULL AND r.settled_at IS NULL';
const LIST = `SELECT r.id, to_char(r.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS at, c.name AS "from", r.why, r.preview_sha IS NOT NULL AS previewable, to_char(r.image_day, 'YYYY-MM-DD') AS "imageDay", r.patient_id AS "patientId", r.said
FROM received_image r JOIN console c ON c.id = r.console_id WHERE r.practice_id = $1::uuid AND ${OPEN} ORDER BY r.at, r.id LIMIT $2 OFFSET $3`;
/** Orders that may still get a film, those of the days around now first. */
const ORDERS = `SELECT o.id, d.call_name || ', ' || o.accession || COALESCE(', ' || to_char(v.day, 'YYYY-MM-DD'), '') AS name
FROM orders o JOIN dog d ON d.id = o.dog_id LEFT JOIN LATERAL (SELECT day FROM visit WHERE order_id = o.id ORDER BY open DESC, day DESC LIMIT 1) v ON true
WHERE NOT o.closed ORDER BY abs(v.day - $1::date) NULLS LAST, o.accession LIMIT 300`;

export async function countUnmatched(tx: Tx, practice: string): Promise<number> {
  const [counted] = await tx.$queryRawUnsafe<{ n: number }[]>(`SELECT count(*)::int AS n FROM received_image r WHERE r.practice_id = $1::uuid AND ${OPEN}`, practice);
  return counted?.n ?? 0;
}

/** Images that fit no order of this practice; each waits until a person has said whose it is. */
export async function readUnmatched(deps: StepDeps, actor: Actor, page = 1, perPage = PAGE): Promise<Unmatched> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'viewUnmatched', practice: actor.practice });
    return unmatchedIn(tx, deps, actor.practice, page, perPage);
  });
}

export async function unmatchedIn(tx: Tx, { clock }: StepDeps, practice: string, page = 1, perPage = PAGE): Promise<Unmatched> {
  const rows = await tx.$queryRawUnsafe<Row[]>(LIST, practice, perPage + 1, (page - 1) * perPage);
  const orders = rows.length > 0 ? await tx.$queryRawUnsafe<Unmatched['orders']>(ORDERS, clock.now().toISOString().slice(0, 10)) : [];
  return { more: rows.length > perPage, performed: page === 1 ? await performedWithoutOrder(tx, practice) : [], rows: rows.slice(0, perPage).map(({ patientId, said, why, ...row }) => ({ ...row, why: t.known(WHY_NONE[why as NoMatch] ?? ''), said: told(patientId, said) })), orders };
}

/** The tray as a file for a spreadsheet. */
export async function unmatchedAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const { rows, more } = await readUnmatched(deps, actor, 1, MOST_ROWS);
  return csv(['Came', 'From', 'Why', 'Taken', 'It says of itself'], rows.map((r) => [r.at, r.from, r.why, r.imageDay, r.said.map((s) => `${s.what}: ${s.words}`).join('; ')]), more);
}

function told(patientId: string | null, { patientName, accessionNumber, breed, viewPosition, laterality, procedures = [] }: Row['said']): UnmatchedImage['said'] {
  const lines: [string, string | null | undefined][] = [
    [t('Name'), patientName?.replaceAll('^', ' ').trim()], [t('Animal id'), patientId], [t('Order number'), accessionNumber], [t('Breed'), breed], [t('View'), [viewPosition, laterality, ...procedures].filter(Boolean).join(', ')],
  ];
  return lines.flatMap(([what, words]) => (words ? [{ what, words }] : []));
}

/** An image of the tray that nobody has settled. */
export async function openImage(tx: Tx, image: string) {
  const row = await tx.receivedImage.findFirst({ where: { id: image, orderId: null } });
  if (!row) throw notFound();
  if (row.settledAt) throw new StepError('ALREADY_THERE', t('{settledByName} has settled this image already. Reload the list.', { settledByName: row.settledByName ?? t('Somebody') }));
  return row;
}
