import dimse from 'dcmjs-dimse';
import type { Dataset, requests, responses } from 'dcmjs-dimse';
import { PERFORMED_STEP } from '#libs/dicom/performed-step';
import { isUid, newUid } from '#libs/dicom/uids';
import type { Sender } from '#libs/steps/gateway/find-console';
import { beginPerformed, continuePerformed, type Refused } from '#libs/steps/gateway/hear-performed';
import type { StepDeps } from '#libs/steps/record/step-deps';

const { NCreateResponse, NSetResponse } = dimse.responses;
const { Status } = dimse.constants;

/** DICOM PS3.4 section F.7.2: what a machine is told whose word cannot be taken. */
const REFUSED: Record<Refused, { status: number; words: string; error?: number }> = {
  notBegun: { status: Status.InvalidAttributeValue, words: 'A step begins as IN PROGRESS' },
  thereAlready: { status: Status.DuplicateSOPInstance, words: 'There is a step of this number' },
  unknown: { status: Status.NoSuchObjectInstance, words: 'There is no step of this number' },
  noState: { status: Status.InvalidAttributeValue, words: 'There is no such state of a step' },
  ended: { status: Status.ProcessingFailure, words: 'The step has ended and may not be changed', error: 0xa710 },
};

const elementsOf = (request: requests.NCreateRequest | requests.NSetRequest) => (request.getDataset() as Dataset | undefined)?.getElements() ?? {};

export async function hearBegin(deps: StepDeps, sender: Sender, request: requests.NCreateRequest): Promise<responses.NCreateResponse> {
  const said = request.getAffectedSopInstanceUid() as string | undefined;
  const number = said ? said : newUid();
  const response = NCreateResponse.fromRequest(request);
  if (!isUid(number) || request.getAffectedSopClassUid() !== PERFORMED_STEP) return answered(response, { status: Status.NoSuchSopClass, words: 'This is no number of a performed step' });
  const refused = await beginPerformed(deps, sender, number, elementsOf(request));
  response.setAffectedSopInstanceUid(number);
  return answered(response, refused && REFUSED[refused]);
}

export async function hearMore(deps: StepDeps, sender: Sender, request: requests.NSetRequest): Promise<responses.NSetResponse> {
  const refused = await continuePerformed(deps, sender, request.getRequestedSopInstanceUid(), elementsOf(request));
  return answered(NSetResponse.fromRequest(request), refused && REFUSED[refused]);
}

function answered<R extends responses.Response>(response: R, refused?: { status: number; words: string; error?: number }): R {
  response.setStatus(refused?.status ?? Status.Success);
  if (refused) response.setErrorComment(refused.words);
  if (refused?.error) Object.assign(response.getCommandDataset().getElements(), { ErrorID: refused.error });
  return response;
}
