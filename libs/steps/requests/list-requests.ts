import type { DataRequestList } from '#libs/contracts/requests';
import { audit } from '#libs/platform/audit/audit';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { managerOnly, todayAt } from './request-record.js';
import { requestOfRow } from './request-of-row.js';
import { REQUEST, type RequestRow } from './request-sql.js';

const MOST = 200;

/** Open ones first, the nearest last day first. */
export async function listRequests(deps: StepDeps, actor: Actor): Promise<DataRequestList> {
  managerOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const day = await todayAt(tx, actor.practice, deps.clock.now());
    const rows = await tx.$queryRawUnsafe<RequestRow[]>(`SELECT ${REQUEST} FROM data_request r ORDER BY r.at DESC LIMIT ${MOST}`);
    await audit(tx, { by: actor.id, role: 'manager', action: 'listDataRequests', practice: actor.practice });
    const requests = rows.map((row) => requestOfRow(row, day.today));
    return { ...day, rows: [...requests.filter((r) => !r.closed).sort((a, b) => a.due.localeCompare(b.due)), ...requests.filter((r) => r.closed)] };
  });
}
