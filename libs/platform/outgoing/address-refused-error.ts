import { SaidError, type Tellable } from '#libs/words/said-error';

/** Why an address is not called: it leads inside, on to another address, is written in the clear, or is no address. */
export type Refusal = 'inside' | 'redirect' | 'clear' | 'noAddress' | 'nameNotFound';

/** An address that is not called, now or on another try. The sentence is for the person who entered it. */
export class AddressRefusedError extends SaidError {
  override readonly name = 'AddressRefusedError';

  constructor(sentence: Tellable, readonly why: Refusal) {
    super(sentence);
  }
}
