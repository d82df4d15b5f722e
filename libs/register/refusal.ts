import { errorCodes, type ApiErrorBody, type ErrorCode } from '#libs/contracts/errors';

/** A refusal with a stable code and a sentence for the person; nothing was changed. */
export class StepError extends Error {
  readonly code: ErrorCode;
  readonly more: Omit<ApiErrorBody, 'code' | 'message'>;

  constructor(code: ErrorCode, message: string = errorCodes[code].says, more: Omit<ApiErrorBody, 'code' | 'message'> = {}) {
    super(message);
    this.name = 'StepError';
    this.code = code;
    this.more = more;
  }
}

export const notFound = (): StepError => new StepError('NOT_FOUND');
export const badInput = (path: string, message: string): StepError => new StepError('BAD_INPUT', message, { fields: [{ path, message }] });
