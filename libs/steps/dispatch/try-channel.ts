import type { LineAnswer } from '#libs/contracts/line';
import { lineFault } from '#libs/platform/outgoing/line-fault';
import { SecretLostError } from '#libs/platform/secrets/secret-lost-error';
import type { Tx } from '#libs/platform/database/db';
import type { WorkerDeps } from '../worker-deps.js';
import { openLine, type Line } from './channels/open-channel.js';

const PATIENCE_MS = 15_000;

interface Trial extends Line { kind: 'dicomweb' | 'objectStore' }
interface Answer { answer: LineAnswer; status: number | null; detail: string | null }

/** Greets the centre's server by the channel as it was entered, and notes what it said. Asking twice does no harm, so a dead worker's question is asked again. */
export async function tryChannel(deps: WorkerDeps, trial: string, { signal }: { signal: AbortSignal }): Promise<void> {
  const line = await deps.db.system('read a channel that is tried', (tx) => read(tx, trial));
  if (!line) return;
  const { answer, status, detail } = await greet(deps, line, signal);
  await deps.db.system('note what a trial gave', (tx) => tx.$executeRaw`
    UPDATE channel_trial SET answer = ${answer}, status = ${status}, detail = ${detail}, answered_at = ${deps.clock.now()} WHERE id = ${trial}::uuid AND answer IS NULL`);
}

async function greet(deps: WorkerDeps, line: Trial, signal: AbortSignal): Promise<Answer> {
  try {
    const channel = await openLine(deps, line.kind, line, '');
    return { ...(await channel.greet!(AbortSignal.any([signal, AbortSignal.timeout(PATIENCE_MS)]))), detail: null };
  } catch (error) {
    signal.throwIfAborted(); // the worker is being stopped: another one asks
    if (error instanceof SecretLostError) return { answer: 'secretLost', status: null, detail: null };
    const { fault, detail } = lineFault(error);
    return { answer: fault, status: null, detail };
  }
}

async function read(tx: Tx, trial: string): Promise<Trial | undefined> {
  const [row] = await tx.$queryRaw<Trial[]>`
    SELECT c.id AS channel, c.kind, c.address, c.bucket, c.region, c.account, s.secret FROM channel_trial r JOIN centre_channel c ON c.id = r.channel_id LEFT JOIN centre_channel_secret s ON s.channel_id = c.id
    WHERE r.id = ${trial}::uuid AND r.answer IS NULL`;
  return row;
}
