import { createParamDecorator, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { tokenHash } from '#libs/platform/passwords/token';
import { KEY_BEGINS } from '#libs/register/practice/api-keys';
import type { Reader } from '#libs/steps/fhir/reader';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';

type Known = FastifyRequest & { reader?: Reader };

const NO_KEY = 'Send a key that the practice’s manager made: Authorization: Bearer cotyla_… This one is missing, not whole, or was ended.';

/** Other programs come with a key instead of a session. A cookie opens nothing here, so no page of another site can use one. */
@Injectable()
export class KeyGuard implements CanActivate {
  constructor(private readonly deps: Deps) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<Known>();
    const given = /^Bearer +(\S+)$/i.exec(request.headers.authorization ?? '')?.[1];
    const hash = given?.startsWith(KEY_BEGINS) ? tokenHash(given.slice(KEY_BEGINS.length)) : undefined;
    const [reader] = hash ? await this.deps.db.door<Reader>('SELECT * FROM app.use_api_key($1, $2)', [hash, this.deps.clock.now()]) : [];
    if (!reader) {
      await this.deps.limits.wrongKey(request.ip);
      throw new StepError('NOT_SIGNED_IN', NO_KEY);
    }
    await this.deps.limits.useKey(reader.id);
    request.reader = reader;
    return true;
  }
}

export const ByKey = createParamDecorator((_: unknown, context: ExecutionContext): Reader => {
  const { reader } = context.switchToHttp().getRequest<Known>();
  if (!reader) throw new StepError('NOT_SIGNED_IN', NO_KEY);
  return reader;
});
