import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { DataRequestList } from '#libs/contracts/requests';
import { audit } from '#libs/platform/audit/audit';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { managerOnly, todayAt } from './request-record.js';
import { requestOfRow } from './request-of-row.js';
import { REQUEST, type RequestRow } from './request-sql.js';

const PAGE = 50;
const CLOSED = `EXISTS (SELECT 1 FROM data_request_event e WHERE e.request_id = r.id AND e.type IN ('done', 'refused'))`;
/** Open ones by the day on which their clocks began, so that none is pushed off its page by what is done already. $1 rows, $2 rows to skip. */
const LIST = `SELECT ${REQUEST} FROM data_request r ORDER BY ${CLOSED}, CASE WHEN NOT ${CLOSED} THEN r.received END, r.at DESC, r.id LIMIT $1 OFFSET $2`;

/** Open ones first, the nearest last day first. */
export async function listRequests(deps: StepDeps, actor: Actor, page = 1, perPage = PAGE): Promise<DataRequestList> {
  managerOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const day = await todayAt(tx, actor.practice, deps.clock.now());
    const rows = await tx.$queryRawUnsafe<RequestRow[]>(LIST, perPage + 1, (page - 1) * perPage);
    await audit(tx, { by: actor.id, role: 'manager', action: 'listDataRequests', practice: actor.practice });
    const requests = rows.slice(0, perPage).map((row) => requestOfRow(row, day.today));
    return { ...day, more: rows.length > perPage, rows: [...requests.filter((r) => !r.closed).sort((a, b) => a.due.localeCompare(b.due)), ...requests.filter((r) => r.closed)] };
  });
}

/** The register of requests as a file for a spreadsheet. */
export async function requestsAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const { rows, more } = await listRequests(deps, actor, 1, MOST_ROWS);
  return csv(['Person', 'Kind', 'Asked', 'Received', 'Due', 'Overdue', 'Identity checked', 'Outcome', 'Answer', 'Closed', 'By'], rows.map((r) => [
    r.person.name, r.kind, r.asked, r.received, r.due, r.overdue ? 'yes' : 'no', r.verified?.how ?? null, r.closed?.outcome ?? null, r.closed?.words ?? null, r.closed?.at ?? null, r.closed?.by ?? null,
  ]), more);
}
