import { say } from '../messages/say.js';
import type { Work } from '../record/work.js';
import type { PackageSummary } from './seal-package.js';
import type { Sending } from './start-delivery.js';

/** A mail with a link, at most once. */
export function mailPackage({ tx, order }: Pick<Work, 'tx' | 'order'>, sending: Sending, manifest: string, summary: PackageSummary): Promise<void> {
  const { name, email } = order.centres[sending.centre]!;
  return say(tx, {
    once: `package:${sending.send}`, kind: 'package', template: 'package', order: order.id, practice: order.practice, subject: sending.send,
    to: { name, email },
    data: { number: summary.number, study: summary.study.name, films: summary.films.length, manifest, package: sending.package, centre: sending.centre, studyId: sending.study },
  });
}
