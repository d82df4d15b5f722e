import '@fastify/cookie';
import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { newToken, tokenHash } from '#libs/platform/passwords/token';
import { asLanguage } from '#libs/words/languages';
import { speakInstead } from '#libs/words/spoken';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import type { Principal } from './principal.js';

/** Our own choice: a working day for people, a month for a link that an owner keeps. */
const HOURS = { staff: 12, reader: 12, lead: 12, ownerLink: 24 * 30, readerLink: 24 * 7 };

/** Sessions live in the database; the browser has a random token and nothing else. */
@Injectable()
export class Sessions {
  constructor(private readonly deps: Deps) {}

  get #secure(): boolean {
    return this.deps.publicUrl.startsWith('https:');
  }

  /** With https the name itself makes browsers refuse a cookie that another host planted. */
  get cookie(): string {
    return this.#secure ? '__Host-cotyla' : 'cotyla';
  }

  async of(request: FastifyRequest): Promise<Principal | null> {
    const hash = this.#hash(request);
    if (!hash) return null;
    return this.#read(hash);
  }

  async #read(hash: string): Promise<Principal | null> {
    const [row] = await this.deps.db.door<{ who: Principal | null }>('SELECT app.session_row($1) AS who', [hash]);
    if (row?.who?.language) speakInstead(asLanguage(row.who.language));
    return row?.who ?? null;
  }

  async open(request: FastifyRequest, reply: FastifyReply, kind: Principal['kind'], by: { staff?: string; link?: string }): Promise<Principal> {
    await this.close(request, reply);
    const { token, hash } = newToken();
    const until = new Date(this.deps.clock.now().getTime() + HOURS[kind] * 3_600_000);
    await this.deps.db.door('SELECT app.open_session($1, $2, $3, $4, $5, $6)', [hash, newToken().token, kind, by.staff ?? null, by.link ?? null, until]);
    void reply.setCookie(this.cookie, token, { httpOnly: true, sameSite: 'lax', path: '/', secure: this.#secure, expires: until });
    const who = await this.#read(hash);
    if (!who) throw new StepError('NOT_SIGNED_IN');
    return who;
  }

  async close(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const hash = this.#hash(request);
    if (hash) await this.deps.db.door('SELECT app.end_session($1)', [hash]);
    void reply.clearCookie(this.cookie, { path: '/' });
  }

  #hash(request: FastifyRequest): string | undefined {
    const token = request.cookies[this.cookie];
    return token ? tokenHash(token) : undefined;
  }
}
