/** A secret that no key of this server opens. The sentence is for whoever can enter it anew. */
export class SecretLostError extends Error {
  constructor(keyId: string, options?: ErrorOptions) {
    super(`It cannot be read: it was sealed with the key ${keyId}, which this server does not have. Enter it anew, or whoever runs the server brings that key back.`, options);
    this.name = 'SecretLostError';
  }
}
