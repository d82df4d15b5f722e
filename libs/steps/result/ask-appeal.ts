import { say } from '../messages/say.js';
import { lastSending } from '../dispatch/last-send.js';
import { useCase } from '../record/use-case.js';

/**
 * The rule is fixed beforehand: what the second reader finds stands, whichever way it goes. The centre is asked for
 * another reader, and the first reading leaves its page, so that the second is made without it.
 */
export const askAppeal = useCase('askAppeal', async ({ tx, order, evaluation, ...work }, on, input) => {
  const { package: sealed, send } = lastSending({ tx, order, evaluation, ...work }, on);
  const centre = evaluation.studies[on]!.centre;
  const row = await tx.package.findUniqueOrThrow({ where: { id: sealed } });
  const { study, films } = row.summary as unknown as { study: { name: string }; films: unknown[] };
  await tx.$executeRaw`UPDATE package_access SET reading = NULL WHERE package_id = ${sealed}::uuid AND centre_id = ${centre}::uuid`;
  await say(tx, {
    once: `second-reading:${on}:${send}`, kind: 'secondReading', template: 'secondReading', order: order.id, practice: order.practice, subject: on,
    to: { name: order.centres[centre]!.name, email: order.centres[centre]!.email },
    data: { number: row.number, study: study.name, films: films.length, manifest: row.manifest, package: sealed, centre, studyId: on },
  });
  return [{ type: 'appealAsked', study: on, result: input.result, asker: input.asker }];
});
