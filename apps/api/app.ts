import cookie from '@fastify/cookie';
import { Module } from '@nestjs/common';
import { APP_GUARD, NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { existsSync } from 'node:fs';
import { LANGUAGE_COOKIE } from '#libs/words/languages';
import { languageAsked, speakingIn } from '#libs/words/spoken';
import { BoardController } from './board/board.controller.js';
import { CalendarController } from './calendar/calendar.controller.js';
import { BookingController } from './booking/booking.controller.js';
import { GroupsController } from './booking/groups.controller.js';
import { WaitingController } from './booking/waiting.controller.js';
import { Deps } from './deps.js';
import { AnswerErrors, bodyOf, sayError } from './http/answer-errors.js';
import { CentreBillsController } from './fees/centre-bills.controller.js';
import { FeesController } from './fees/fees.controller.js';
import { OrderFeesController } from './fees/order-fees.controller.js';
import { FhirController } from './fhir/fhir.controller.js';
import { isFhir } from './fhir/fhir-json.js';
import { KeyGuard } from './fhir/key-guard.js';
import { GatewayController } from './gateway/gateway.controller.js';
import { HelpController } from './help/help.controller.js';
import { IntegrationsController } from './integrations/integrations.controller.js';
import { LiveController } from './live/live.controller.js';
import { OrdersController } from './orders/orders.controller.js';
import { ResultsController } from './orders/results.controller.js';
import { OfferController } from './owner/offer.controller.js';
import { OwnerController } from './owner/owner.controller.js';
import { PublicController } from './public/public.controller.js';
import { ReaderController } from './reader/reader.controller.js';
import { DogsController } from './register/dogs.controller.js';
import { PeopleController } from './register/people.controller.js';
import { PracticeController } from './register/practice.controller.js';
import { RequestsController } from './requests/requests.controller.js';
import { MessagesController } from './results-in/messages.controller.js';
import { ResultsInController } from './results-in/results-in.controller.js';
import { BreedsController } from './scheme/breeds.controller.js';
import { SchemeController } from './scheme/scheme.controller.js';
import { SessionController } from './session/session.controller.js';
import { SessionGuard } from './session/guard.js';
import { Sessions } from './session/sessions.js';

@Module({
  controllers: [SessionController, BoardController, CalendarController, HelpController, LiveController, BookingController, GroupsController, WaitingController, OfferController, OrdersController, ResultsController, DogsController, PeopleController, PracticeController, ReaderController, OwnerController, PublicController, SchemeController, BreedsController, RequestsController, FeesController, OrderFeesController, CentreBillsController, GatewayController, IntegrationsController, FhirController, ResultsInController, MessagesController],
  providers: [Sessions, KeyGuard, { provide: APP_GUARD, useClass: SessionGuard }],
})
class ApiModule {}

const JSON_LIMIT = 1024 * 1024;

export interface ApiOptions {
  deps: Deps;
  /** The built web app; left out in tests. */
  web?: string;
  log: (error: unknown, request: string) => void;
}

export async function createApi({ deps, web, log }: ApiOptions): Promise<NestFastifyApplication> {
  // An address that is none never reaches a route, nor the filter below; a person with such a link gets the page for addresses that lead nowhere.
  const frameworkErrors = (error: Error, request: FastifyRequest, reply: FastifyReply) => (web && !request.url.startsWith('/api') && !isFhir(request) ? void reply.redirect('/not-whole') : sayError(reply, bodyOf(error)));
  const adapter = new FastifyAdapter({ bodyLimit: JSON_LIMIT, trustProxy: 'loopback', frameworkErrors });
  const app = await NestFactory.create<NestFastifyApplication>({ module: ApiModule, providers: [{ provide: Deps, useValue: deps }], exports: [Deps], global: true }, adapter, { logger: ['error', 'warn'], abortOnError: false, rawBody: true });
  app.useGlobalFilters(new AnswerErrors(log));
  app.enableShutdownHooks();
  const fastify = app.getHttpAdapter().getInstance();
  await app.register(cookie);
  // Once more after the body was read: what came with the connection's own events has forgotten it.
  for (const hook of ['onRequest', 'preHandler'] as const) fastify.addHook(hook, (request: FastifyRequest, _reply: FastifyReply, done: () => void) => speakingIn(languageAsked(request.headers['accept-language'], request.cookies[LANGUAGE_COOKIE]), done));
  // Files are read from the request itself, as a stream.
  fastify.addContentTypeParser('multipart/form-data', (_request, _payload, done) => done(null));
  // What is signed is taken as it came over the line, byte for byte; FHIR's own type of JSON too.
  fastify.addContentTypeParser('application/fhir+json', { parseAs: 'buffer' }, (request, body, done) => {
    (request as { rawBody?: unknown }).rawBody = body;
    done(null, undefined);
  });
  fastify.addHook('onSend', async (_request, reply) => {
    void reply.header('x-content-type-options', 'nosniff').header('referrer-policy', 'no-referrer').header('x-frame-options', 'SAMEORIGIN');
    if (!reply.hasHeader('cache-control')) void reply.header('cache-control', 'no-store');
  });
  if (web && existsSync(web)) await serveWeb(app, web);
  await app.init();
  await fastify.ready();
  return app;
}

const PAGE_POLICY = "default-src 'self'; script-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; font-src 'self' data:; frame-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'self'";

/** One page for every address that is not the api's; its parts are named by their content and may be kept for ever. */
async function serveWeb(app: NestFastifyApplication, root: string): Promise<void> {
  // Asked for here, because hardly any test serves pages.
  const { default: fastifyStatic } = await import('@fastify/static');
  await app.register(fastifyStatic, { root, wildcard: false, index: false, preCompressed: true, maxAge: '365d', immutable: true });
  const fastify = app.getHttpAdapter().getInstance();
  fastify.get('/*', (request, reply) => {
    // An old page that asks for a part that is gone must be told so, and not be given a page instead.
    if (request.url.startsWith('/api') || isFhir(request) || request.url.startsWith('/assets/')) return reply.callNotFound();
    return reply.header('content-security-policy', PAGE_POLICY).sendFile('index.html', { maxAge: 0, immutable: false });
  });
}
