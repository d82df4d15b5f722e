import { RetryableError } from '#libs/platform/queue/job-errors';
import type { WorkerDeps } from '../worker-deps.js';
import { claimMessage } from './claim-message.js';
import { noteOutcome } from './note-outcome.js';
import { writeMail } from './write-mail.js';

/**
 * Claim, write, send, note. Between claim and note the process may die: then the row stays claimed, and whoever
 * finds it says "outcome not known" on the order, where a person decides. Never two without that, never none unnoticed.
 */
export async function sendMessage(deps: WorkerDeps, id: string): Promise<void> {
  const claim = await deps.db.system('claim a message', (tx) => claimMessage(tx, id, deps.clock.now()));
  if ('left' in claim) return;
  if ('lost' in claim) return noteOutcome(deps, claim.lost, 'unknown', 'The program was stopped while this was being sent.');
  const message = claim.claimed;
  let mail;
  try {
    mail = await writeMail(deps, message);
  } catch (error) {
    await release(deps, id);
    throw error;
  }
  try {
    const { outcome, detail } = await deps.mailer.send(mail);
    await noteOutcome(deps, message, outcome, detail);
  } catch (error) {
    // Only an error that says so was certainly not sent; anything else leaves the row claimed, and so not known.
    if (error instanceof RetryableError) await release(deps, id);
    throw error;
  }
}

/** Nothing left the house: the row may be claimed again. */
async function release(deps: WorkerDeps, id: string): Promise<void> {
  await deps.db.system('release a message', (tx) => tx.$executeRaw`UPDATE message SET state = 'waiting', claimed_at = NULL WHERE id = ${id}::uuid AND state = 'claimed'`);
}
