import { COMMITMENT, commitmentReport } from '#libs/dicom/commitment';
import type { FileStore } from '#libs/platform/files/file-store';
import type { StepDeps } from '../record/step-deps.js';
import { checkCommitment, noteTold } from './check-commitment.js';
import { reportToMachine } from './report-to-machine.js';

/** Calls a machine where it listens, and tells it which of its images are safe. One that was taken off the list is not called any more. */
export async function answerCommitment(deps: StepDeps & { files: FileStore }, { practice, commitment }: { practice: string; commitment: string }): Promise<void> {
  const { row, machine } = await deps.db.practice(practice, async (tx) => {
    const row = await tx.commitment.findUniqueOrThrow({ where: { id: commitment }, select: { consoleId: true, called: true, address: true, toldAt: true } });
    return { row, machine: await tx.console.findUniqueOrThrow({ where: { id: row.consoleId }, select: { aeTitle: true, port: true, endedAt: true } }) };
  });
  if (row.toldAt || machine.endedAt || machine.port === null) return;
  const { failed, ...asked } = await checkCommitment(deps, practice, commitment);
  const { event, elements } = commitmentReport(asked, failed);
  const [host] = row.address.split('/') as [string];
  await reportToMachine({ host, port: machine.port, called: machine.aeTitle, calling: row.called }, { sopClass: COMMITMENT.sopClass, instance: COMMITMENT.instance, event, elements });
  await noteTold(deps, practice, commitment);
}
