import { addToOutbox } from '#libs/platform/database/outbox';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { refuseHeld } from '../requests/erase-requester.js';

/**
 * Takes the person's name and ways to reach them out of the register; papers already issued stay as they are.
 * The person's other orders hear of it from the worker, and a legal hold on any of them keeps the person.
 */
export const erasePerson = useCase('erasePerson', async (work, _on, input) => {
  const { tx, order, now } = work;
  const held = await tx.$queryRaw<{ accession: string }[]>`
    SELECT o.accession FROM orders o WHERE o.practice_id = ${order.practice}::uuid AND o.evaluation->'order'->>'legalHold' = 'true'
      AND EXISTS (SELECT 1 FROM dog_role r WHERE r.dog_id = o.dog_id AND r.person_id = ${input.person}::uuid) ORDER BY o.accession`;
  refuseHeld(held.map((o) => o.accession));
  const [answer] = await tx.$queryRaw<{ erased: boolean }[]>`SELECT app.erase_person(${input.person}::uuid, ${now}) AS erased`;
  if (!answer!.erased) throw badInput('person', t('This person is not in your register.'));
  await addToOutbox(tx, 'note-erased', { person: input.person }, { dedupe: input.person });
  await addToOutbox(tx, 'write-tombstones', {}, { dedupe: 'tombstones' });
  return [{ type: 'personErased', person: input.person }];
});
