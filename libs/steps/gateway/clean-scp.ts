import type { Socket } from 'node:net';
import dimse from 'dcmjs-dimse';
import type { association } from 'dcmjs-dimse';
import { cleanDataSet } from '#libs/dicom/clean-data-set';
import { EXPLICIT } from '#libs/dicom/syntaxes';
import { WholeMessages } from './whole-messages.js';

/** What the library does not tell of itself: how it takes one part of a message. Its version is fixed; tests fail where this is not so. */
interface Part { value: Buffer; getValue(): Buffer; isCommand(): boolean; isLastFragment(): boolean; getPresentationContextId(): number }
type Options = NonNullable<ConstructorParameters<typeof dimse.Scp>[1]>;
interface Inner { _processPDataTf(pdu: { getPdvs(): Part[] }): Promise<void>; socket: Socket; dimse?: { getCommandFieldType(): number }; association?: association.Association }

const STORE = 0x0001;
const takeParts = (dimse.Scp.prototype as unknown as Inner)._processPDataTf;

/** The library's side of a line, which is handed whole messages alone, and none before it was made sound. Images pass by as they are. */
export class CleanScp extends dimse.Scp {
  #parts: Buffer[] = [];

  constructor(socket: Socket, options: Options, longestData: number) {
    super(socket, options);
    const [take] = socket.listeners('data') as [(message: Buffer) => void];
    const messages = new WholeMessages(longestData);
    socket.off('data', take).on('data', (chunk: Buffer) => {
      try {
        for (const message of messages.cut(chunk)) take(message);
      } catch (error) {
        socket.destroy(error as Error);
      }
    });
  }

  async _processPDataTf(pdu: { getPdvs(): Part[] }): Promise<void> {
    const taken: Promise<void>[] = [];
    for (const part of pdu.getPdvs()) {
      if (!this.#isImage(part) && !this.#clean(part)) break;
      // One by one, because the library forgets what follows a command in the same message; and without a pause, in which the next message would overtake.
      taken.push(takeParts.call(this as unknown as Inner, { getPdvs: () => [part] }));
    }
    await Promise.all(taken);
  }

  #isImage(part: Part): boolean {
    return !part.isCommand() && (this as unknown as Inner).dimse?.getCommandFieldType() === STORE;
  }

  #clean(part: Part): boolean {
    this.#parts.push(part.getValue());
    part.value = Buffer.alloc(0);
    if (!part.isLastFragment()) return true;
    const whole = Buffer.concat(this.#parts);
    this.#parts = [];
    try {
      const context = (this as unknown as Inner).association?.getPresentationContext(part.getPresentationContextId());
      part.value = cleanDataSet(whole, { explicit: !part.isCommand() && context?.getAcceptedTransferSyntaxUid() === EXPLICIT });
      return true;
    } catch (error) {
      (this as unknown as Inner).socket.destroy(error as Error);
      return false;
    }
  }
}
