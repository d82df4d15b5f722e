import { TEST_EVENT, type OrderEvent } from '#libs/contracts/integrations';
import type { LineAnswer } from '#libs/contracts/line';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Tx } from '#libs/platform/database/db';
import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
import { lineFault } from '#libs/platform/outgoing/line-fault';
import { saidBy } from '#libs/platform/outgoing/said-by';
import { aboutSecret } from '#libs/platform/secrets/about';
import type { SecretBox } from '#libs/platform/secrets/secret-box';
import { SecretLostError } from '#libs/platform/secrets/secret-lost-error';
import type { WorkerDeps } from '../worker-deps.js';
import { signature } from './sign.js';

/** Minutes between one try and the next, our own choice: a receiver that is away for a night still hears. */
export const PAUSES = [1, 5, 30, 120, 360, 720];
/** A call that began so long ago belongs to a worker that died. */
export const LOST_MINUTES = 2;
const PATIENCE_MS = 10_000;

interface Claimed { id: string; webhook: string; practice: string; accession: string | null; event: OrderEvent | typeof TEST_EVENT; eventId: string; eventAt: Date; tries: number; lost: boolean; address: string; secret: string; earlier: string | null; ended: boolean }
interface Try { status: number | null; words: string; answer?: LineAnswer; detail?: string | null }
interface Outcome extends Try { became: 'delivered' | 'again' | 'never' }

/** Claim, call, note. A call whose worker died is made again: its receiver knows it by its id. */
export async function sendWebhook(deps: WorkerDeps, delivery: string): Promise<void> {
  const claimed = await deps.db.system('claim a call', (tx) => claim(tx, delivery, deps.clock.now()));
  if (!claimed) return;
  const outcome = claimed.ended ? { status: null, words: 'This address is told no more.', became: 'never' as const } : await call(deps, claimed);
  await deps.db.system('note a call', (tx) => note(tx, claimed, outcome, deps.clock.now()));
}

async function claim(tx: Tx, delivery: string, now: Date): Promise<Claimed | undefined> {
  const lost = new Date(now.getTime() - LOST_MINUTES * 60_000);
  const [row] = await tx.$queryRaw<Claimed[]>`
    WITH found AS (SELECT id, state FROM webhook_delivery WHERE id = ${delivery}::uuid AND (state = 'waiting' AND due_at <= ${now} OR state = 'sending' AND claimed_at <= ${lost}) FOR UPDATE)
    UPDATE webhook_delivery d SET state = 'sending', claimed_at = ${now}, tries = d.tries + 1 FROM found, webhook w WHERE d.id = found.id AND w.id = d.webhook_id
    RETURNING d.id, w.id AS webhook, d.practice_id AS practice, d.accession, d.event, d.event_id AS "eventId", d.event_at AS "eventAt", d.tries, found.state = 'sending' AS lost, w.address, w.ended_at IS NOT NULL AS ended,
      w.secret, CASE WHEN w.earlier_until > ${now} THEN w.earlier_secret END AS earlier`;
  if (row?.lost) await addTry(tx, row, { status: null, words: 'The program was stopped while it called; whether it was heard is not known.' }, now);
  return row;
}

async function call({ outgoing, clock, secrets: box }: WorkerDeps, claimed: Claimed): Promise<Outcome> {
  const { accession, event, eventId, eventAt, address } = claimed;
  const secrets = secretsOf(box, claimed);
  // an unsigned call would be refused over there, or worse, believed; the key may come back meanwhile
  if (!secrets) return { status: null, words: 'The secret of this address cannot be read any more, so nothing can be signed.', answer: 'secretLost', became: 'again' };
  const at = eventAt.toISOString();
  const body = JSON.stringify(event === TEST_EVENT ? { id: eventId, event, test: true, at } : { id: eventId, event, order: accession, at });
  const timestamp = Math.floor(clock.now().getTime() / 1000);
  const headers = { 'content-type': 'application/json', 'webhook-id': eventId, 'webhook-timestamp': String(timestamp), 'webhook-signature': signature(secrets, timestamp, body) };
  try {
    const answer = await outgoing.fetch(address, { method: 'POST', body, headers, signal: AbortSignal.timeout(PATIENCE_MS) });
    await answer.body?.cancel();
    return said(answer.status);
  } catch (error) {
    const { fault, detail } = lineFault(error);
    const words = error instanceof AddressRefusedError ? error.message : fault === 'noAnswer' ? `No answer within ${PATIENCE_MS / 1000} seconds.` : 'Nobody answers there.';
    return { status: null, words, answer: fault, detail, became: error instanceof AddressRefusedError ? 'never' : 'again' };
  }
}

/** Undefined where the secret in force cannot be read; the one before it is not waited for. */
function secretsOf(box: SecretBox, { webhook, secret, earlier }: Claimed): string[] | undefined {
  const open = (stored: string | null): string[] => {
    try {
      return stored === null ? [] : [box.open(stored, aboutSecret.webhook(webhook))];
    } catch (error) {
      if (error instanceof SecretLostError) return [];
      throw error;
    }
  };
  const now = open(secret);
  return now.length === 0 ? undefined : [...now, ...open(earlier)];
}

function said(status: number): Outcome {
  if (status >= 200 && status <= 299) return { status, words: `Taken (${status}).`, answer: 'taken', became: 'delivered' };
  if (status === 410) return { status, words: 'It says that nothing is wanted there any more (410).', answer: 'gone', became: 'never' };
  return { status, words: `It answered ${status}.`, answer: saidBy(status), became: 'again' };
}

async function note(tx: Tx, claimed: Claimed, outcome: Outcome, now: Date): Promise<void> {
  await addTry(tx, claimed, outcome, now);
  const pause = outcome.became === 'again' && claimed.event !== TEST_EVENT ? PAUSES[claimed.tries - 1] : undefined;
  const state = outcome.became === 'delivered' ? 'delivered' : pause === undefined ? 'givenUp' : 'waiting';
  const due = new Date(now.getTime() + (pause ?? 0) * 60_000);
  await tx.$executeRaw`UPDATE webhook_delivery SET state = ${state}, due_at = ${due}, claimed_at = NULL WHERE id = ${claimed.id}::uuid AND state = 'sending'`;
  if (state === 'waiting') await addToOutbox(tx, 'send-webhook', { delivery: claimed.id }, { dedupe: claimed.id, notBefore: due });
}

async function addTry(tx: Tx, { id, practice }: Claimed, { status, words, answer, detail }: Try, now: Date): Promise<void> {
  await tx.$executeRaw`INSERT INTO webhook_try (delivery_id, practice_id, at, status, words, answer, detail) VALUES (${id}::uuid, ${practice}::uuid, ${now}, ${status}, ${words}, ${answer ?? null}, ${detail ?? null})`;
}
