import { apiError, errorCodes, type ApiErrorBody } from '#libs/contracts/errors';
import type { Answer } from './visitor.js';

/** A refusal as the contract has it: a stable code with its status, and a sentence; else an error that says what came. */
export function complaintOf(answer: Answer, asked: string): ApiErrorBody {
  const parsed = apiError.safeParse(answer.body);
  const fits = parsed.success && errorCodes[parsed.data.code].status === answer.status && parsed.data.code !== 'BROKEN' && /\w.*[.!?)]$/s.test(parsed.data.message);
  if (!fits) throw new Error(`${asked} was answered ${answer.status} ${JSON.stringify(answer.body).slice(0, 300)}`);
  return parsed.data;
}
