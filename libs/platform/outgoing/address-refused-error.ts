/** An address that is not called, now or on another try. The sentence is for the person who entered it. */
export class AddressRefusedError extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'AddressRefusedError';
  }
}
