import type { ApiErrorBody } from '#libs/contracts/errors';

/** What the server answered instead of doing it, in words for the person. */
export class ApiFailure extends Error {
  constructor(
    readonly status: number,
    readonly body: Omit<ApiErrorBody, 'code'> & { code: ApiErrorBody['code'] | 'NO_ANSWER' },
  ) {
    super(body.message);
    this.name = 'ApiFailure';
  }
  get code() {
    return this.body.code;
  }
}

export const noAnswer = () =>
  new ApiFailure(0, { code: 'NO_ANSWER', message: 'The server did not answer. What you entered is still here; try again when the network is back.' });

/** Nobody heard it, as far as can be told from here; a server in between may say so too. */
export const isSilence = (error: unknown): boolean => error instanceof ApiFailure && (error.status === 0 || (error.status >= 502 && error.status <= 504));

export const needsNetwork = () =>
  new ApiFailure(0, { code: 'NO_ANSWER', message: 'This is decided on the order as it is, and needs the network. What you entered is still here; try again when the network is back.' });

export const isFailure = (error: unknown): error is ApiFailure => error instanceof ApiFailure;
export const signedOut = (error: unknown) => isFailure(error) && error.status === 401;
