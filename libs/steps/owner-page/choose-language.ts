import type { OwnerPage } from '#libs/contracts/screens/owner';
import { noteChange } from '#libs/register/note-change';
import type { Language } from '#libs/words/languages';
import type { StepDeps } from '../record/step-deps.js';
import { ownerActor, type Owner } from './owner.js';
import { readOwnerPage } from './read-owner-page.js';

/** In which language somebody is spoken to from now on: on the page, by mail and on paper. What was written before stays as it was. */
export async function ownerChoosesLanguage(deps: StepDeps, owner: Owner, language: Language): Promise<OwnerPage> {
  await deps.db.practice(owner.practice, async (tx) => {
    const changed = await tx.person.updateMany({ where: { id: owner.person, practiceId: owner.practice, erasedAt: null, NOT: { language } }, data: { language } });
    if (changed.count > 0) await noteChange(tx, ownerActor(owner), 'amendPerson', owner.person, { fields: ['language'] });
  });
  return readOwnerPage(deps, owner);
}
