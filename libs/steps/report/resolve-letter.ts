import { useCase } from '../record/use-case.js';

/** Nobody knew whether the letter came; now a person has asked. */
export const resolveLetter = useCase('resolveLetter', async ({ tx }, on, input) => {
  await tx.message.updateMany({ where: { onceKey: `letter:${input.letter}:${input.to}`, state: 'unknown' }, data: { state: input.arrived ? 'delivered' : 'bounced', detail: 'said by a person' } });
  return [{ type: 'letterResolved', study: on, letter: input.letter, to: input.to, arrived: input.arrived }];
});
