import dimse from 'dcmjs-dimse';
import type { Dataset, requests } from 'dcmjs-dimse';
import { COMMITMENT, commitmentReport, readCommitmentRequest } from '#libs/dicom/commitment';
import type { FileStore } from '#libs/platform/files/file-store';
import { askCommitment } from '#libs/steps/gateway/ask-commitment';
import { checkCommitment, noteTold } from '#libs/steps/gateway/check-commitment';
import type { Sender } from '#libs/steps/gateway/find-console';
import { reportRequest } from '#libs/steps/gateway/report-to-machine';
import type { StepDeps } from '#libs/steps/record/step-deps';

const { Status } = dimse.constants;

/** What is to be told on the same line, once the question was answered. */
export interface ReportHere { ready: () => Promise<requests.NEventReportRequest>; told: () => Promise<void> }
interface Heard { status: number; words?: string; report?: ReportHere }
interface Asker { deps: StepDeps & { files: FileStore }; sender: Sender; called: string; address: string; most: number }

/** A machine asks which of its images are safe. Where it listens at a port of its own it is called there, else it hears it on this line. */
export async function hearQuestion({ deps, sender, called, address, most }: Asker, request: requests.NActionRequest): Promise<Heard> {
  if (request.getRequestedSopClassUid() !== COMMITMENT.sopClass || request.getRequestedSopInstanceUid() !== COMMITMENT.instance) return { status: Status.NoSuchObjectInstance };
  if (request.getActionTypeId() !== COMMITMENT.request) return { status: Status.NoSuchActionType };
  const asked = readCommitmentRequest((request.getDataset() as Dataset | undefined)?.getElements() ?? {});
  if (!asked) return { status: Status.InvalidArgumentValue, words: 'The question names no transaction or no images' };
  if (asked.images.length > most) return { status: Status.ResourceLimitation, words: `Ask about ${most} images at most` };
  const { commitment, tell } = await askCommitment(deps, sender, asked, { called, address });
  if (tell === 'byCall') return { status: Status.Success };
  const ready = async () => {
    const { failed } = await checkCommitment(deps, sender.practice, commitment);
    return reportRequest({ sopClass: COMMITMENT.sopClass, instance: COMMITMENT.instance, ...commitmentReport(asked, failed) });
  };
  return { status: Status.Success, report: { ready, told: () => noteTold(deps, sender.practice, commitment) } };
}
