import { connect, createServer, type AddressInfo, type Server } from 'node:net';
import dimse from 'dcmjs-dimse';
import type { requests, responses } from 'dcmjs-dimse';
import { COMMITMENT } from '#libs/dicom/commitment';
import { PERFORMED_STEP } from '#libs/dicom/performed-step';
import { EXPLICIT, IMPLICIT } from '#libs/dicom/syntaxes';
import { Happenings } from '#test/medium/queue-support/until';
import type { ConsoleRoom } from './console.js';

const { NActionRequest, NCreateRequest, NSetRequest } = dimse.requests;
const { NEventReportResponse } = dimse.responses;
const { PresentationContextResult, Status } = dimse.constants;

export type Elements = Record<string, unknown>;
type Asks = requests.NActionRequest | requests.NCreateRequest | requests.NSetRequest;
export interface Reported { event: number; elements: Elements; from: { calling: string; called: string } }

const DX = '1.2.840.10008.5.1.4.1.1.1.1';
const reference = (instance: string, sopClass = DX) => ({ ReferencedSOPClassUID: sopClass, ReferencedSOPInstanceUID: instance });

/** The side of a machine that no program of dcmtk plays: it asks, and hears which of its images are safe. */
export class Modality {
  readonly reports = new Happenings<Reported>();
  readonly #calls = new Set<dimse.Scp>();
  #server: Server | undefined;

  constructor(private readonly room: ConsoleRoom) {}

  /** Sends each on one line that stays open, and gives their answers. */
  call(...asked: Asks[]): Promise<{ status: number; words: string }[]> {
    return new Promise((resolve, reject) => {
      const socket = connect(this.room.gateway.port, '127.0.0.1');
      const line = this.#line(socket);
      const wanted = new dimse.association.Association(this.room.calling, this.room.called);
      for (const request of asked) wanted.addPresentationContextFromRequest(request, [IMPLICIT, EXPLICIT]);
      const answers: { status: number; words: string }[] = [];
      for (const request of asked) request.on('response', (response: responses.Response) => {
        answers.push({ status: response.getStatus(), words: response.getErrorComment() });
        if (answers.length === asked.length) resolve(answers);
      });
      line.on('connect', () => line.sendAssociationRequest(wanted));
      line.on('associationAccepted', () => line.sendRequests(asked));
      for (const event of ['associationRejected', 'networkError', 'close']) line.on(event, () => reject(new Error(event)));
    });
  }

  ask(transaction: string, instances: string[], { type = COMMITMENT.request as number, sopClass = DX } = {}) {
    const request = new NActionRequest(COMMITMENT.sopClass, COMMITMENT.instance, type);
    request.setDataset(new dimse.Dataset({ TransactionUID: transaction, ReferencedSOPSequence: instances.map((instance) => reference(instance, sopClass)) }));
    return this.call(request);
  }

  /** "I have begun"; without a number the gateway gives one. */
  begin(step: string, elements: Elements) {
    const request = new NCreateRequest(PERFORMED_STEP, step);
    request.setDataset(new dimse.Dataset({ PerformedProcedureStepStatus: 'IN PROGRESS', ...elements }));
    return this.call(request);
  }

  goOn(step: string, elements: Elements) {
    const request = new NSetRequest(PERFORMED_STEP, step);
    request.setDataset(new dimse.Dataset(elements));
    return this.call(request);
  }

  /** Listens for word of its images; gives the port. With `answers`, it says that to the first ones instead of yes. */
  listen(answers: number[] = []): Promise<number> {
    this.#server = createServer((socket) => this.#line(socket, answers));
    return new Promise((resolve) => this.#server!.listen(0, '127.0.0.1', () => resolve((this.#server!.address() as AddressInfo).port)));
  }

  async close(): Promise<void> {
    this.hangUp();
    if (this.#server) await new Promise((resolve) => this.#server!.close(resolve));
  }

  hangUp(): void {
    for (const call of this.#calls) (call as unknown as { socket: { destroy(): void } }).socket.destroy();
  }

  #line(socket: ReturnType<typeof connect>, answers: number[] = []): dimse.Scp {
    const { reports } = this;
    class Line extends dimse.Scp {
      #from = { calling: '', called: '' };
      override associationRequested(wanted: dimse.association.Association): void {
        this.#from = { calling: wanted.getCallingAeTitle().trim(), called: wanted.getCalledAeTitle().trim() };
        for (const { context } of wanted.getPresentationContexts()) context.setResult(PresentationContextResult.Accept, IMPLICIT);
        this.sendAssociationAccept();
      }
      override associationReleaseRequested(): void {
        this.sendAssociationReleaseResponse();
      }
      override nEventReportRequest(request: requests.NEventReportRequest, answer: (response: responses.NEventReportResponse) => void): void {
        const response = NEventReportResponse.fromRequest(request);
        const status = answers.shift() ?? Status.Success;
        response.setStatus(status);
        answer(response);
        if (status === Status.Success) reports.add({ event: request.getEventTypeId(), elements: request.getDataset()!.getElements() as Elements, from: this.#from });
      }
    }
    const line = new Line(socket, {});
    this.#calls.add(line);
    line.on('close', () => this.#calls.delete(line));
    return line;
  }
}
