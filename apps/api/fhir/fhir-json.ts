import type { FastifyReply, FastifyRequest } from 'fastify';
import { errorCodes, type ApiErrorBody, type ErrorCode } from '#libs/contracts/errors';
import { outcome, type IssueCode } from '#libs/fhir/outcome';

export const FHIR_JSON = 'application/fhir+json; charset=utf-8';

export const isFhir = ({ url }: Pick<FastifyRequest, 'url'>): boolean => /^\/fhir(\/|\?|$)/.test(url);

const ISSUES: Partial<Record<ErrorCode, IssueCode>> = {
  BAD_INPUT: 'invalid', NOT_SIGNED_IN: 'login', NOT_YOUR_ROLE: 'forbidden', NOT_FOUND: 'not-found', TOO_MANY: 'throttled', TOO_LARGE: 'too-long', BUSY: 'timeout', BROKEN: 'exception',
};

/** The same errors as everywhere, in the standard's own form. */
export function sayOutcome(reply: FastifyReply, { code, message }: ApiErrorBody): void {
  if (code === 'NOT_SIGNED_IN') void reply.header('www-authenticate', 'Bearer');
  void reply.status(errorCodes[code].status).header('content-type', FHIR_JSON).send(JSON.stringify(outcome(ISSUES[code] ?? 'processing', message)));
}
