import { Catch, HttpException, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { errorCodes, type ApiErrorBody, type ErrorCode } from '#libs/contracts/errors';
import { isDatabaseFull } from '#libs/platform/database/database-full';
import { isTooBusy } from '#libs/platform/database/too-busy';
import { FileMissingError, FileTooLargeError, StorageFullError } from '#libs/platform/files/file-errors';
import { ImageRefused } from '#libs/dicom/image-refused';
import { TooManyTriesError } from '#libs/platform/limits/limits';
import { ScienceError } from '#libs/science/error';
import { t } from '#libs/words/spoken';
import { StepError } from '#libs/steps/record/step-error';
import { isFhir, sayOutcome } from '../fhir/fhir-json.js';

/** What whoever runs the server must see to. */
const FOR_THE_LOG: ReadonlySet<ErrorCode> = new Set(['BROKEN', 'STORAGE_FULL', 'BUSY']);

/** Every error leaves with a stable code and a sentence for the person; what broke inside stays in the log. */
@Catch()
export class AnswerErrors implements ExceptionFilter {
  constructor(private readonly log: (error: unknown, request: string) => void) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const reply = http.getResponse<FastifyReply>();
    const request = http.getRequest<FastifyRequest>();
    const body = bodyOf(error);
    if (FOR_THE_LOG.has(body.code)) this.log(error, `${request.method} ${request.routeOptions?.url ?? ''}`);
    if (error instanceof TooManyTriesError) void reply.header('retry-after', String(error.retryAfterSeconds));
    if (reply.sent) return;
    if (isFhir(request)) sayOutcome(reply, body);
    else sayError(reply, body);
  }
}

export function sayError(reply: FastifyReply, body: ApiErrorBody): void {
  void reply.status(errorCodes[body.code].status).header('content-type', 'application/json; charset=utf-8').send(body);
}

export function bodyOf(error: unknown): ApiErrorBody {
  if (error instanceof StepError) return { code: error.code, message: error.message, ...error.more };
  if (error instanceof TooManyTriesError) return answer('TOO_MANY');
  if (error instanceof ImageRefused) return { code: 'IMAGE_REFUSED', message: error.message };
  if (error instanceof FileTooLargeError) return { code: 'TOO_LARGE', message: error.message };
  if (error instanceof StorageFullError || isDatabaseFull(error)) return answer('STORAGE_FULL');
  if (isTooBusy(error)) return answer('BUSY');
  if (error instanceof FileMissingError) return answer('NOT_FOUND');
  if (error instanceof ScienceError) return { code: 'BAD_INPUT', message: t.said(error.said) };
  if (isInvalidId(error)) return answer('NOT_FOUND');
  const status = error instanceof HttpException ? error.getStatus() : statusOf(error);
  if (status === 413) return answer('TOO_LARGE');
  // An id that is too long (414) is one that is not there.
  if (status === 404 || status === 414) return answer('NOT_FOUND');
  if (status === 429) return answer('TOO_MANY');
  if (status >= 400 && status < 500) return answer('BAD_INPUT');
  return answer('BROKEN');
}

const answer = (code: ErrorCode): ApiErrorBody => ({ code, message: t.known(errorCodes[code].says) });
const statusOf = (error: unknown): number => (typeof (error as { statusCode?: unknown })?.statusCode === 'number' ? (error as { statusCode: number }).statusCode : 500);
/** A text that is no id where the database wants one. */
const isInvalidId = (error: unknown): boolean => /invalid input syntax for type uuid|22P02/.test(String((error as { message?: unknown })?.message ?? ''));
