import { settleMail } from '../messages/settle-mail.js';
import { useCase } from '../record/use-case.js';

/** A person says what became of a sending whose outcome nobody knows: never two without that, never none unnoticed. What was still under way stops. */
export const resolveSend = useCase('resolveSend', async ({ tx, now }, on, input) => {
  await tx.$executeRaw`UPDATE delivery SET state = 'ended', touched_at = ${now} WHERE send_id = ${input.send}::uuid AND study_id = ${on}::uuid AND state IN ('open', 'stopped')`;
  await settleMail(tx, `package:${input.send}`, input.arrived);
  return [{ type: 'sendResolved', study: on, send: input.send, arrived: input.arrived }];
});
