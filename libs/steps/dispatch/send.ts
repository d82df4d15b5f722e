import { t } from '#libs/words/spoken';
import { randomUUID } from 'node:crypto';
import { pictureOf } from '#libs/pathway/picture';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { mailPackage } from './mail-package.js';
import type { PackageSummary } from './seal-package.js';
import { startDelivery, wayTo, type Sending } from './start-delivery.js';

/** One try to bring the first unsent package to the study's present centre, by the practice's channel to it. */
export const send = useCase('send', async (work, on) => {
  const { tx, order, now } = work;
  const centre = work.evaluation.studies[on]!.centre;
  const [sealed] = pictureOf(order.facts, order.rules).studies.find(({ id }) => id === on)!.packages.unsent;
  if (!sealed) throw new StepError('NOT_AT_THIS_STEP', t('Nothing is sealed for this study yet.'));
  const sending: Sending = { send: randomUUID(), package: sealed.package, study: on, centre };
  const row = await tx.package.findUniqueOrThrow({ where: { id: sealed.package } });
  await tx.$executeRaw`INSERT INTO package_access (package_id, centre_id, send_id, sent_at) VALUES (${sealed.package}::uuid, ${centre}::uuid, ${sending.send}::uuid, ${now}) ON CONFLICT (package_id, centre_id) DO NOTHING`;
  const summary = row.summary as unknown as PackageSummary;
  const way = await wayTo(work, centre);
  if (way) await startDelivery(work, way, sending, summary.films);
  else await mailPackage(work, sending, row.manifest, summary);
  return [{ type: 'packageSent', study: on, package: sealed.package, send: sending.send, centre, channel: way?.kind ?? 'link', detail: { number: row.number, centreName: order.centres[centre]!.name } }];
});
