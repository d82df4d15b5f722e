import { useCase } from '../record/use-case.js';

/** Takes the person's name and ways to reach them out of the register; papers already issued stay as they are. */
export const erasePerson = useCase('erasePerson', async ({ tx, order, now }, _on, input) => {
  await tx.person.updateMany({
    where: { id: input.person, practiceId: order.practice },
    data: { name: 'Erased on request', latinName: null, email: null, phone: null, address: null, channel: 'none', erasedAt: now },
  });
  return [{ type: 'personErased', person: input.person }];
});
