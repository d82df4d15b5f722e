import { Controller, Post, Req, Res, type RawBodyRequest } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { DeliveryAnswer } from '#libs/contracts/results-in';
import { messageIn } from '#libs/steps/results-in/message-in';
import { operationOutcome } from '#libs/steps/results-in/operation-outcome';
import { readBundle } from '#libs/steps/results-in/read-bundle';
import { readMessage } from '#libs/steps/results-in/read-message';
import type { Read } from '#libs/steps/results-in/stated';
import { whoSigned, type Headers } from '#libs/steps/results-in/who-signed';
import { Deps } from '../deps.js';
import { For } from '../session/guard.js';

/** The centres' computers, which sign what they send instead of signing in. */
@Controller('api/results-in') @For('anybody')
export class MessagesController {
  constructor(private readonly deps: Deps) {}

  @Post('messages')
  async message(@Req() request: RawBodyRequest<FastifyRequest>, @Res() reply: FastifyReply) {
    const answer = await this.#take(request, 'message', readMessage);
    return reply.status(statusOf(answer)).send(answer);
  }

  @Post('fhir')
  async fhir(@Req() request: RawBodyRequest<FastifyRequest>, @Res() reply: FastifyReply) {
    const answer = await this.#take(request, 'fhir', readBundle);
    return reply.status(statusOf(answer)).header('content-type', 'application/fhir+json; charset=utf-8').send(JSON.stringify(operationOutcome(answer)));
  }

  async #take(request: RawBodyRequest<FastifyRequest>, way: 'message' | 'fhir', read: (body: unknown) => Read[]): Promise<DeliveryAnswer> {
    await this.deps.limits.tryMessage(request.ip);
    const body = request.rawBody ?? Buffer.alloc(0);
    const signed = await whoSigned(this.deps, headersOf(request), body);
    return messageIn(this.deps, signed, way, read(parsed(body)));
  }
}

const headersOf = ({ headers }: FastifyRequest): Headers => {
  const one = (name: string): string => (typeof headers[name] === 'string' ? headers[name] : '');
  return { key: one('cotyla-key'), time: one('cotyla-time'), signature: one('cotyla-signature'), idempotency: one('idempotency-key') };
};

/** Who looks at the status alone must not take a reading for taken that was not. */
const statusOf = ({ readings }: DeliveryAnswer): number => (readings.some((r) => r.outcome === 'notTaken') ? 422 : 200);

function parsed(body: Buffer): unknown {
  try {
    return JSON.parse(body.toString('utf8'));
  } catch (error) {
    if (error instanceof SyntaxError) return body.toString('utf8').slice(0, 300);
    throw error;
  }
}
