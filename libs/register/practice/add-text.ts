import type { z } from 'zod';
import { newText, type PracticeScreen } from '#libs/contracts/register';
import { dosesIn } from '#libs/documents/doses';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { oneAtATime } from '../one-at-a-time.js';
import { parseInput } from '../parse-input.js';
import { badInput } from '../refusal.js';
import { vetsOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

type Wanted = z.output<typeof newText>;

const PREFIX: Record<Wanted['kind'], string> = { advice: 'advice', goingHome: 'home', consentSedation: 'sedation', consentSendAll: 'films', consentStatistics: 'statistics' };

/** A text in the practice's own words, approved by the vet who adds it. An earlier version stays as it was signed or given out. */
export async function addText(deps: RegisterDeps, actor: Actor, input: z.input<typeof newText>): Promise<PracticeScreen> {
  vetsOnly(actor);
  const wanted = parseInput(newText, input);
  for (const field of ['title', 'body'] as const) {
    const doses = dosesIn(wanted[field]);
    if (doses.length > 0) throw badInput(field, t('This names a dose ({join}). Take it out: a vet gives doses by prescription, never in a text for every dog.', { join: doses.map((words) => `“${words.trim()}”`).join(', ') }));
  }
  return changePractice(deps, actor, async ({ tx, practice, now }) => {
    const version = await nextVersion(tx, practice.id, wanted);
    const row = await tx.approvedText.create({ data: { ...wanted, practiceId: practice.id, version, approvedBy: actor.id, approvedAt: now } });
    await noteChange(tx, actor, 'addText', row.id, { kind: wanted.kind, version });
  });
}

/** A consent names its version alone, so each kind of consent counts on over all its titles and languages. */
async function nextVersion(tx: Tx, practiceId: string, { kind, title, language }: Wanted): Promise<string> {
  await oneAtATime(tx, practiceId, `text ${kind}`);
  const earlier = await tx.approvedText.count({ where: kind.startsWith('consent') ? { practiceId, kind } : { practiceId, kind, title, language } });
  return `${PREFIX[kind]}-${earlier + 1}`;
}
