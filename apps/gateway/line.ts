import type { Socket } from 'node:net';
import dimse from 'dcmjs-dimse';
import type { association, Dataset, requests, responses } from 'dcmjs-dimse';
import { ImageRefused } from '#libs/dicom/image-refused';
import { part10Header } from '#libs/dicom/part10';
import { isUid } from '#libs/dicom/uids';
import { FileTooLargeError, StorageFullError } from '#libs/platform/files/file-errors';
import type { FileStore } from '#libs/platform/files/file-store';
import { CleanScp } from '#libs/steps/gateway/clean-scp';
import { findConsole, type Sender } from '#libs/steps/gateway/find-console';
import { receiveImage } from '#libs/steps/gateway/receive-image';
import { readWorklist } from '#libs/steps/gateway/worklist';
import type { StepDeps } from '#libs/steps/record/step-deps';
import { hearQuestion, type ReportHere } from './commitment.js';
import { chooseContexts } from './contexts.js';
import { ImageSink } from './image-sink.js';
import type { LinesOf } from './lines-of.js';
import { hearBegin, hearMore } from './performed.js';
import { answersTo, readQuery } from './worklist-query.js';

const { RejectReason, RejectResult, RejectSource, Status } = dimse.constants;
const { CEchoResponse, CFindResponse, CStoreResponse, NActionResponse, NCreateResponse, NSetResponse } = dimse.responses;

export interface LineLimits {
  maxImageBytes: number;
  maxImageMs: number;
  maxImages: number;
  maxAnswers: number;
  maxPdu: number;
  /** Of a question, or of anything else that is no image. */
  maxMessageBytes: number;
  /** Of one machine at once. */
  maxLines: number;
  /** To say who it is, or to hang up once it was turned away. */
  firstWordMs: number;
  idleMs: number;
}

export interface LineOptions {
  deps: StepDeps & { files: FileStore };
  limits: LineLimits;
  lines: LinesOf;
  log: (words: string, error?: unknown) => void;
}

/** DICOM PS3.4 table B.2-1, with what they stand for here. */
const [NO_ROOM, ANOTHER_OBJECT, NOT_UNDERSTOOD, CHANGED] = [0xa700, 0xa900, 0xc000, 0xc111];

/** One connection of a machine, from its first word to its last. */
export class Line extends CleanScp {
  #sender: Sender | undefined;
  #calling = '';
  #called = '';
  #asked = false;
  #sink: ImageSink | undefined;
  #images = 0;
  #gathered = 0;
  /** The machine among whose lines this one counts. */
  #entered: string | undefined;
  readonly #options: LineOptions;
  readonly #socket: Socket;

  constructor(socket: Socket, options: LineOptions) {
    const { firstWordMs, idleMs, maxPdu } = options.limits;
    super(socket, { connectTimeout: idleMs, associationTimeout: firstWordMs, pduTimeout: idleMs, datasetReadOptions: { ignoreErrors: true } }, maxPdu + 64);
    this.#options = options;
    this.#socket = socket;
    this.on('networkError', (error: Error) => {
      options.log(`${this.#who()}: ${error.message}`);
      socket.destroy();
    });
    this.on('close', () => {
      this.#sink?.destroy();
      if (this.#entered) options.lines.leave(this.#entered);
    });
    socket.on('data', (chunk: Buffer) => this.#gather(chunk.length));
  }

  /** A whole message has come: who sent it, if that is known. */
  #heard(): Sender | undefined {
    this.#gathered = 0;
    return this.#sender;
  }

  /** The library gathers a message until its end, however long it is; an image is let through as it comes. */
  #gather(bytes: number): void {
    if (this.#sink && !this.#sink.writableEnded) this.#gathered = 0;
    else this.#gathered += bytes;
    if (this.#gathered <= this.#options.limits.maxMessageBytes) return;
    this.#options.log(`${this.#who()}: a message without an end`);
    this.abort();
  }

  override associationRequested(wanted: association.Association): void {
    if (this.#asked) return this.abort();
    this.#asked = true;
    this.#guarded(this.#admit(wanted), () => this.abort());
  }

  async #admit(wanted: association.Association): Promise<void> {
    const [called, calling] = [wanted.getCalledAeTitle().trim(), wanted.getCallingAeTitle().trim()];
    this.#calling = calling;
    this.#called = called;
    const address = this.#address();
    const sender = await findConsole(this.#options.deps, { called, calling, address });
    if (!sender) {
      this.#options.log(`"${calling}" at ${address}, which called "${called}", is no machine of a practice`);
      return this.#turnAway(RejectResult.Permanent, RejectSource.ServiceUser, RejectReason.CalledAeNotRecognized);
    }
    // whoever has hung up meanwhile would never leave again
    if (this.#socket.destroyed) return;
    if (!this.#options.lines.enter(sender.console, this.#options.limits.maxLines)) {
      this.#options.log(`${sender.name} (${calling}) has ${this.#options.limits.maxLines} lines already`);
      return this.#turnAway(RejectResult.Transient, RejectSource.ServiceProviderPresentation, RejectReason.LocalLimitExceeded);
    }
    this.#entered = sender.console;
    this.#sender = sender;
    chooseContexts(wanted);
    const theirs = wanted.getMaxPduLength();
    wanted.setMaxPduLength(this.#options.limits.maxPdu);
    this.sendAssociationAccept();
    // What was said is how much may come; how much may go is for the other side to say.
    wanted.setMaxPduLength(theirs);
  }

  #turnAway(result: number, source: number, reason: number): void {
    this.sendAssociationReject(result, source, reason);
    this.#hangUp();
  }

  override associationReleaseRequested(): void {
    this.sendAssociationReleaseResponse();
    this.#hangUp();
  }

  /** The other side hangs up first; one that does not is not waited for. */
  #hangUp(): void {
    const late = setTimeout(() => this.#socket.destroy(), this.#options.limits.firstWordMs);
    this.#socket.on('close', () => clearTimeout(late));
  }

  override cEchoRequest(request: requests.CEchoRequest, answer: (response: responses.CEchoResponse) => void): void {
    const sender = this.#heard();
    if (!sender) return this.abort();
    const response = CEchoResponse.fromRequest(request);
    response.setStatus(Status.Success);
    answer(response);
  }

  override cFindRequest(request: requests.CFindRequest, answer: (responses: responses.CFindResponse[]) => void): void {
    const failed = (words: string) => answer([failure(CFindResponse.fromRequest(request), ANOTHER_OBJECT, words)]);
    const sender = this.#heard();
    if (!sender) return this.abort();
    this.#guarded(this.#find(request, sender, answer, failed), () => failed('The worklist could not be read'));
  }

  async #find(request: requests.CFindRequest, sender: Sender, answer: (responses: responses.CFindResponse[]) => void, failed: (words: string) => void): Promise<void> {
    const query = readQuery((request.getDataset() as Dataset | undefined)?.getElements() ?? {});
    if (!query) return failed('The question has no scheduled procedure step');
    const { from, until } = query;
    const entries = await readWorklist(this.#options.deps, sender, { ...(from && { from }), ...(until && { until }), most: this.#options.limits.maxAnswers });
    const pending = answersTo(query, entries, this.#calling).map((elements) => {
      const response = CFindResponse.fromRequest(request);
      response.setStatus(Status.Pending);
      response.setDataset(new dimse.Dataset(elements));
      return response;
    });
    const end = CFindResponse.fromRequest(request);
    end.setStatus(Status.Success);
    answer([...pending, end]);
  }

  override createStoreWritableStream(context: association.PresentationContext, request: requests.CStoreRequest): ImageSink {
    const { limits, deps } = this.#options;
    const header = part10Header({ sopClassUid: request.getAffectedSopClassUid(), sopInstanceUid: request.getAffectedSopInstanceUid(), transferSyntax: context.getAcceptedTransferSyntaxUid() ?? '' });
    const taken = this.#sender && ++this.#images <= limits.maxImages;
    const sink = new ImageSink(deps.files, header, taken ? limits.maxImageBytes : 0, this.#socket);
    const late = setTimeout(() => this.abort(), limits.maxImageMs);
    sink.on('close', () => clearTimeout(late));
    sink.kept.catch((error: unknown) => this.#options.log(`${this.#who()}: image ${request.getAffectedSopInstanceUid()} was not kept: ${(error as Error).message}`));
    this.#sink = sink;
    return sink;
  }

  override createDatasetFromStoreWritableStream(_sink: ImageSink, _context: association.PresentationContext, ready: (dataset: Dataset) => void): void {
    // The image is in the file store, or on its way there; the library has no need of it.
    ready(undefined as unknown as Dataset);
  }

  override cStoreRequest(request: requests.CStoreRequest, answer: (response: responses.CStoreResponse) => void): void {
    const [sink, sender] = [this.#sink, this.#heard()];
    if (!sender || !sink) return this.abort();
    const say = (status: number, words: string) => answer(failure(CStoreResponse.fromRequest(request), status, words));
    if (this.#images > this.#options.limits.maxImages) return say(NO_ROOM, 'No more images on this line; open another one');
    this.#guarded(this.#store(request, sink, sender).then(({ status, words }) => say(status, words)), (error) => {
      const { status, words } = refusalOf(error);
      say(status, words);
    });
  }

  /** The answer is a yes only when the file is safe and its row is committed: the machine may then forget the image. */
  async #store(request: requests.CStoreRequest, sink: ImageSink, sender: Sender): Promise<{ status: number; words: string }> {
    const { sha256, size, image } = await sink.kept;
    const { sopInstanceUid, sopClassUid } = image;
    if (!isUid(sopInstanceUid) || sopInstanceUid !== request.getAffectedSopInstanceUid() || sopClassUid !== request.getAffectedSopClassUid())
      return { status: ANOTHER_OBJECT, words: 'The image is another one than was announced' };
    const received = await receiveImage(this.#options.deps, sender, { sha256, size, image: { ...image, sopInstanceUid } });
    this.#options.log(`${this.#who()}: image ${sopInstanceUid} ${OUTCOMES[received]}`);
    return received === 'changed' ? { status: CHANGED, words: 'Another image came under this number before' } : { status: Status.Success, words: '' };
  }

  override nActionRequest(request: requests.NActionRequest, answer: (response: responses.NActionResponse) => void): void {
    const sender = this.#heard();
    if (!sender) return this.abort();
    const say = (status: number, words = '') => answer(failure(NActionResponse.fromRequest(request), status, words));
    const heard = hearQuestion({ deps: this.#options.deps, sender, called: this.#called, address: this.#address(), most: this.#options.limits.maxImages }, request);
    this.#guarded(heard.then(({ status, words, report }) => {
      say(status, words);
      if (report) this.#guarded(this.#report(report), () => undefined);
    }), () => say(Status.ProcessingFailure, NOT_KEPT));
  }

  override nCreateRequest(request: requests.NCreateRequest, answer: (response: responses.NCreateResponse) => void): void {
    const sender = this.#heard();
    if (!sender) return this.abort();
    this.#guarded(hearBegin(this.#options.deps, sender, request).then(answer), () => answer(failure(NCreateResponse.fromRequest(request), Status.ProcessingFailure, NOT_KEPT)));
  }

  override nSetRequest(request: requests.NSetRequest, answer: (response: responses.NSetResponse) => void): void {
    const sender = this.#heard();
    if (!sender) return this.abort();
    this.#guarded(hearMore(this.#options.deps, sender, request).then(answer), () => answer(failure(NSetResponse.fromRequest(request), Status.ProcessingFailure, NOT_KEPT)));
  }

  async #report({ ready, told }: ReportHere): Promise<void> {
    const request = await ready();
    request.on('response', (response: responses.NEventReportResponse) => {
      if (response.getStatus() === Status.Success) this.#guarded(told(), () => undefined);
    });
    if (!this.#socket.destroyed) this.sendRequests(request);
  }

  /** What fails after the library has let go of it would otherwise end the program, or leave the machine waiting. */
  #guarded(work: Promise<void>, failed: (error: unknown) => void): void {
    work.catch((error: unknown) => {
      if (!this.#expected(error)) this.#options.log(this.#who(), error);
      failed(error);
    });
  }

  /** These were told already, and are no fault of the program. */
  #expected(error: unknown): boolean {
    return error instanceof ImageRefused || error instanceof FileTooLargeError || error instanceof StorageFullError;
  }

  override abort(): void {
    this.#socket.destroy();
  }

  #address(): string {
    return this.#socket.remoteAddress?.replace(/^::ffff:/, '') ?? '';
  }

  #who(): string {
    return this.#sender ? `${this.#sender.name} (${this.#calling})` : `${this.#calling || 'somebody'} at ${this.#socket.remoteAddress ?? 'an address that is gone'}`;
  }
}

const NOT_KEPT = 'This could not be kept; say it again';
const OUTCOMES = { changed: 'came once before with other content and was refused', unmatched: 'fits no order and is in the tray', waits: 'is at its order and waits to be named', named: 'is a film of its order' } as const;

function failure<R extends responses.Response>(response: R, status: number, words: string): R {
  response.setStatus(status);
  if (words) response.setErrorComment(words.slice(0, 64));
  return response;
}

function refusalOf(error: unknown): { status: number; words: string } {
  if (error instanceof ImageRefused) return { status: NOT_UNDERSTOOD, words: error.code };
  if (error instanceof FileTooLargeError) return { status: NO_ROOM, words: 'The image is larger than is taken here' };
  if (error instanceof StorageFullError) return { status: NO_ROOM, words: 'There is no room left for images' };
  return { status: Status.ProcessingFailure, words: 'The image could not be kept; send it again' };
}
