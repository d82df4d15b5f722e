import type { DataRequest } from '#libs/contracts/requests';
import { localDay } from '#libs/pathway/zones';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { requestOfRow } from './request-of-row.js';
import { REQUEST, type RequestRow } from './request-sql.js';

export type EventType = 'verified' | 'extended' | 'exported' | 'restricted' | 'restrictionLifted' | 'objected' | 'erased' | 'noted' | 'done' | 'refused';

/** Requests about people's data are the manager's. */
export function managerOnly(actor: Actor): void {
  if (!actor.roles.includes('manager')) throw new StepError('NOT_YOUR_ROLE', t('Requests about people’s data are answered by the practice manager.'));
}

export async function todayAt(tx: Tx, practice: string, now: Date): Promise<{ today: string; zone: string }> {
  const { zone } = await tx.practice.findUniqueOrThrow({ where: { id: practice }, select: { zone: true } });
  return { today: localDay(now.toISOString(), zone), zone };
}

/** The request, locked until the transaction ends: two managers answer it one after the other. */
export async function lockRequest(tx: Tx, deps: StepDeps, actor: Actor, id: string): Promise<DataRequest> {
  const found = await tx.$queryRaw<{ person_id: string }[]>`SELECT person_id FROM data_request WHERE id = ${id}::uuid`;
  if (!found[0]) throw notFound();
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`data request ${id}`}, 0))`;
  const [row] = await tx.$queryRawUnsafe<RequestRow[]>(`SELECT ${REQUEST} FROM data_request r WHERE r.id = $1::uuid`, id);
  return requestOfRow(row!, (await todayAt(tx, actor.practice, deps.clock.now())).today);
}

export function stillOpen(request: DataRequest): void {
  if (request.closed) throw new StepError('NOT_AT_THIS_STEP', t('This request is closed. Enter a new one if the person asks again.'));
}

/** Nothing is handed out, changed or erased for somebody who only says who they are. */
export function verifiedFirst(request: DataRequest): void {
  stillOpen(request);
  if (!request.verified) throw new StepError('NOT_AT_THIS_STEP', t('First write down how you made sure that the person who asks is the person whose data they are.'));
}

export function ofKind(request: DataRequest, kind: DataRequest['kind'], words: string): void {
  if (request.kind !== kind) throw new StepError('NOT_AT_THIS_STEP', words);
}

export async function addEvent(tx: Tx, deps: StepDeps, actor: Actor, request: string, type: EventType, words: string, until?: string): Promise<void> {
  const at = deps.clock.now();
  await tx.dataRequestEvent.create({ data: { practiceId: actor.practice, requestId: request, type, at, by: actor.id, byName: actor.name, words, ...(until ? { until: new Date(`${until}T00:00:00Z`) } : {}) } });
  await audit(tx, { at, by: actor.id, role: 'manager', action: `dataRequest.${type}`, practice: actor.practice, subject: request, detail: { name: actor.name } });
}
