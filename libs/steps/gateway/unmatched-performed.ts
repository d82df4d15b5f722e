import type { UnmatchedPerformed } from '#libs/contracts/gateway';
import type { PerformedSaid, PerformedState } from '#libs/dicom/performed-step';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { WHY_NONE, type NoMatch } from './match-order.js';
import { grouped } from '../order-screen/performed-view.js';

interface Row { step: string; id: string; at: string; from: string; state: PerformedState; why: NoMatch | null; said: PerformedSaid }

/** As many as a person looks through; the others follow as these are set aside. */
const SHOWN = 50;
const LIST = `WITH waiting AS (
  SELECT p.sop_uid, max(p.at) AS last FROM performed_step p WHERE p.practice_id = $1::uuid AND p.order_id IS NULL
    AND NOT EXISTS (SELECT 1 FROM performed_step o WHERE o.practice_id = p.practice_id AND o.sop_uid = p.sop_uid AND o.order_id IS NOT NULL)
    AND NOT EXISTS (SELECT 1 FROM performed_settled s WHERE s.practice_id = p.practice_id AND s.sop_uid = p.sop_uid)
  GROUP BY p.sop_uid ORDER BY last DESC, p.sop_uid LIMIT ${SHOWN}
)
SELECT p.sop_uid AS step, p.id, to_char(p.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS at, c.name AS "from", p.state, p.why, p.said
FROM waiting w JOIN performed_step p ON p.practice_id = $1::uuid AND p.sop_uid = w.sop_uid JOIN console c ON c.id = p.console_id ORDER BY w.last DESC, p.sop_uid, p.place`;

/** What machines say of work that fits no order of this practice: the newest first, each step with its last word. */
export async function performedWithoutOrder(tx: Tx, practice: string): Promise<UnmatchedPerformed[]> {
  const rows = await tx.$queryRawUnsafe<Row[]>(LIST, practice);
  return [...grouped(rows).values()].map((said) => {
    const [first, last] = [said[0]!, said.at(-1)!];
    return { id: first.id, at: last.at, from: first.from, state: last.state, why: t.known(first.why ? WHY_NONE[first.why] : 'Its numbers led to no order.'), said: told(Object.assign({}, ...said.map((row) => row.said)) as PerformedSaid) };
  });
}

function told({ started, ended, what, reason, patientId, accessionNumber, exposures, images = [] }: PerformedSaid): UnmatchedPerformed['said'] {
  const lines: [string, string | number | undefined][] = [
    [t('Protocol'), what], [t('Begun, on its own clock'), spaced(started)], [t('Ended, on its own clock'), spaced(ended)], [t('Why it was broken off'), reason],
    [t('Animal id'), patientId], [t('Order number'), accessionNumber], [t('Exposures'), exposures], [t('Images'), images.length || undefined],
  ];
  return lines.flatMap(([name, words]) => (words === undefined ? [] : [{ what: name, words: String(words) }]));
}

const spaced = (moment: string | undefined): string | undefined => moment?.replace('T', ' ');
