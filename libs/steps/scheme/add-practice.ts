import { randomUUID } from 'node:crypto';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import type { NewPractice } from '#libs/contracts/session';
import { audit } from '#libs/platform/audit/audit';
import { hashPassword } from '#libs/platform/passwords/password';
import { t } from '#libs/words/spoken';
import { say } from '../messages/say.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { schemeScreen, type Lead } from './scheme-screen.js';

/** A further practice of the scheme. Its manager chooses a password behind a link that goes to the practice's own address. */
export async function addPractice(deps: StepDeps, lead: Lead, input: NewPractice): Promise<SchemeScreen> {
  const { managerName, managerEmail, ...practice } = input;
  const manager = { name: managerName, email: managerEmail, passwordHash: await hashPassword(randomUUID()) };
  const [added] = await deps.db.door<{ practice: string; manager: string }>('SELECT * FROM app.add_practice($1, $2, $3)', [lead.id, practice, manager]).catch(taken);
  await deps.db.practice(added!.practice, async (tx) => {
    await say(tx, { once: `join:${added!.manager}`, kind: 'join', template: 'joinPractice', order: null, practice: added!.practice, to: { name: practice.name, email: practice.email }, subject: added!.manager, data: { name: managerName, email: managerEmail, lead: lead.name } });
    await audit(tx, { by: lead.id, role: 'lead', action: 'addPractice', practice: added!.practice });
  });
  return schemeScreen(deps, lead);
}

function taken(error: Error & { code?: string; constraint?: string }): never {
  if (error.code !== '23505') throw error;
  throw new StepError('ALREADY_THERE', error.constraint?.includes('letters') ? t('Another practice has these two letters. Choose others.') : t('Somebody signs in with this mail address already. Choose another one.'));
}
