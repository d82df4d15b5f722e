import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from './actor.js';

/** One audit row for a change in the register. Names which fields changed, never their earlier content, which may have to be erased. */
export function noteChange(tx: Tx, actor: Actor, action: string, subject: string, detail: Record<string, unknown> = {}): Promise<void> {
  return audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', practice: actor.practice, action, subject, detail: { name: actor.name, ...detail } });
}
