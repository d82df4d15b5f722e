import { settleMail } from '../messages/settle-mail.js';
import { useCase } from '../record/use-case.js';

/** Nobody knew whether the letter came; now a person has asked. */
export const resolveLetter = useCase('resolveLetter', async ({ tx }, on, input) => {
  await settleMail(tx, `letter:${input.letter}:${input.to}`, input.arrived);
  return [{ type: 'letterResolved', study: on, letter: input.letter, to: input.to, arrived: input.arrived }];
});
