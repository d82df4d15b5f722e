import { connect } from 'node:net';
import dimse from 'dcmjs-dimse';
import { EXPLICIT, IMPLICIT } from '#libs/dicom/syntaxes';
import { IMPLEMENTATION } from '#libs/dicom/uids';
import { CleanScp } from './clean-scp.js';

const { Association } = dimse.association;
const { Dataset } = dimse;
const { NEventReportRequest } = dimse.requests;
const { PresentationContextResult } = dimse.constants;
const LIMIT_MS = 60_000;
const LONGEST = 256 * 1024;

export interface Report { sopClass: string; instance: string; event: number; elements: Record<string, unknown> }

export function reportRequest({ sopClass, instance, event, elements }: Report) {
  const request = new NEventReportRequest(sopClass, instance, event);
  request.setDataset(new Dataset(elements));
  return request;
}

/** Calls a machine, tells it one thing, and hangs up. Resolves when it has said that it heard. */
export function reportToMachine(at: { host: string; port: number; called: string; calling: string }, report: Report, { limitMs = LIMIT_MS } = {}): Promise<void> {
  dimse.log.setLevel('silent');
  dimse.Implementation.setImplementationClassUid(IMPLEMENTATION.uid);
  dimse.Implementation.setImplementationVersion(IMPLEMENTATION.version);
  return new Promise((resolve, reject) => {
    const socket = connect({ host: at.host, port: at.port });
    const call = new CleanScp(socket, {}, LONGEST + 64);
    const failed = (words: string) => {
      reject(new Error(`The machine ${at.called} at ${at.host}, port ${at.port}, ${words}`));
      socket.destroy();
    };
    const late = setTimeout(() => failed('did not answer in time'), limitMs);
    const request = reportRequest(report);
    const wanted = new Association(at.calling, at.called);
    const context = wanted.getPresentationContext(wanted.addPresentationContext(report.sopClass));
    for (const syntax of [EXPLICIT, IMPLICIT]) context.addTransferSyntaxUid(syntax);
    // It is asked nothing: this side is the one that provides.
    context.setUserRole(false);
    context.setProviderRole(true);
    request.on('response', (response: dimse.responses.NEventReportResponse) => {
      if (response.getStatus() !== 0) return failed(`did not accept what it was told (status ${response.getStatus().toString(16)})`);
      resolve();
      call.sendAssociationReleaseRequest();
    });
    call.on('connect', () => call.sendAssociationRequest(wanted));
    call.on('associationAccepted', () => (context.getResult() === PresentationContextResult.Accept ? call.sendRequests(request) : failed('does not want to hear it')));
    call.on('associationRejected', () => failed('turned the call away'));
    call.on('associationReleaseResponse', () => socket.end());
    call.on('abort', () => failed('broke off'));
    call.on('networkError', (error: Error) => failed(`could not be reached: ${error.message}`));
    call.on('close', () => {
      clearTimeout(late);
      failed('hung up');
    });
  });
}
