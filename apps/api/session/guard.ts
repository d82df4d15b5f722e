import { timingSafeEqual } from 'node:crypto';
import { createParamDecorator, Injectable, SetMetadata, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyRequest } from 'fastify';
import { StepError } from '#libs/steps/record/step-error';
import { staffActor, type Principal } from './principal.js';
import { Sessions } from './sessions.js';

const KINDS = 'kinds';
type Kind = Principal['kind'] | 'anybody';
type Known = FastifyRequest & { who?: Principal };

/** Which kinds of people a route is for; without it, people who work in a practice. */
export const For = (...kinds: Kind[]) => SetMetadata(KINDS, kinds);

/** Every route is closed unless it says otherwise; what changes something needs the page's own token too. */
@Injectable()
export class SessionGuard implements CanActivate {
  constructor(private readonly sessions: Sessions, private readonly reflector: Reflector) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const kinds = this.reflector.getAllAndOverride<Kind[] | undefined>(KINDS, [context.getHandler(), context.getClass()]) ?? ['staff'];
    const request = context.switchToHttp().getRequest<Known>();
    if (kinds.includes('anybody')) return true;
    const who = await this.sessions.of(request);
    if (!who) throw new StepError('NOT_SIGNED_IN');
    if (!['GET', 'HEAD'].includes(request.method) && !sameToken(who.csrf, request.headers['x-csrf'])) throw new StepError('CSRF');
    if (!kinds.includes(who.kind)) throw new StepError('NOT_FOUND');
    request.who = who;
    return true;
  }
}

function sameToken(token: string, given: string | string[] | undefined): boolean {
  if (typeof given !== 'string') return false;
  const [a, b] = [Buffer.from(token), Buffer.from(given)];
  return a.length === b.length && timingSafeEqual(a, b);
}

export const Who = createParamDecorator((_: unknown, context: ExecutionContext): Principal => {
  const { who } = context.switchToHttp().getRequest<Known>();
  if (!who) throw new StepError('NOT_SIGNED_IN');
  return who;
});

/** The person as the record names them; for routes of a practice. */
export const By = createParamDecorator((_: unknown, context: ExecutionContext) => {
  const { who } = context.switchToHttp().getRequest<Known>();
  if (!who) throw new StepError('NOT_SIGNED_IN');
  return staffActor(who);
});
