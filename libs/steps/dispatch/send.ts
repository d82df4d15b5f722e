import { randomUUID } from 'node:crypto';
import { say } from '../messages/say.js';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** One try to bring the newest unsent package to the study's present centre: a mail with a link, at most once. */
export const send = useCase('send', async (work, on) => {
  const { tx, order, now } = work;
  const centre = work.evaluation.studies[on]!.centre;
  const sent = new Set(work.facts('packageSent').filter((f) => f.study === on && f.centre === centre).map((f) => f.package));
  const packages = work.facts('packageSealed').filter((f) => f.study === on);
  const sealed = packages.filter((f) => !sent.has(f.package)).at(-1) ?? packages.at(-1);
  if (!sealed) throw new StepError('NOT_AT_THIS_STEP', 'Nothing is sealed for this study yet.');
  const sendId = randomUUID();
  const row = await tx.package.findUniqueOrThrow({ where: { id: sealed.package } });
  await tx.$executeRaw`INSERT INTO package_access (package_id, centre_id, send_id, sent_at) VALUES (${sealed.package}::uuid, ${centre}::uuid, ${sendId}::uuid, ${now}) ON CONFLICT (package_id, centre_id) DO NOTHING`;
  const summary = row.summary as unknown as { study: { name: string }; films: unknown[] };
  await say(tx, {
    once: `package:${sendId}`, kind: 'package', template: 'package', order: order.id, practice: order.practice, subject: sendId,
    to: { name: order.centres[centre]!.name, email: order.centres[centre]!.email },
    data: { number: row.number, study: summary.study.name, films: summary.films.length, manifest: row.manifest, package: sealed.package, centre, studyId: on },
  });
  return [{ type: 'packageSent', study: on, package: sealed.package, send: sendId, centre, channel: 'link', detail: { number: row.number, centreName: order.centres[centre]!.name } }];
});
