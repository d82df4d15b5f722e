import { generateKeyPairSync } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { Controller, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { chooseLanguage, demoSignIns, firstRun, join, openLink, signIn, type ChooseLanguage, type FirstRun, type Me, type SignIn } from '#libs/contracts/session';
import { hashPassword, matchNobody, passwordMatches } from '#libs/platform/passwords/password';
import { tokenHash } from '#libs/platform/passwords/token';
import { speakInstead, t } from '#libs/words/spoken';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { Input } from '../http/zod-body.js';
import { For, Who } from './guard.js';
import { meOf, type Principal } from './principal.js';
import { Sessions } from './sessions.js';

@Controller('api')
export class SessionController {
  constructor(private readonly deps: Deps, private readonly sessions: Sessions) {}

  @Get('health') @For('anybody')
  async health(): Promise<{ ok: true }> {
    await this.deps.db.door('SELECT 1');
    return { ok: true };
  }

  @Get('me') @For('staff', 'reader', 'lead', 'ownerLink', 'readerLink')
  me(@Who() who: Principal): Me {
    return this.#me(who);
  }

  @Post('me/language') @For('staff', 'reader', 'lead') @HttpCode(200)
  async chooseLanguage(@Input(chooseLanguage) { language }: ChooseLanguage, @Who() who: Principal): Promise<Me> {
    await this.deps.db.door('SELECT app.choose_language($1, $2)', [who.staff, language]);
    speakInstead(language);
    return this.#me({ ...who, language });
  }

  @Post('sign-in') @For('anybody') @HttpCode(200)
  async signIn(@Input(signIn) input: SignIn, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<Me> {
    await this.deps.limits.trySignIn(request.ip, input.email.toLowerCase());
    const [row] = await this.deps.db.door<{ id: string; password_hash: string }>('SELECT * FROM app.sign_in_row($1)', [input.email]);
    const right = row ? await passwordMatches(input.password, row.password_hash) : await matchNobody(input.password);
    if (!row || !right) throw new StepError('WRONG_PASSWORD');
    await this.deps.limits.signedIn(request.ip, input.email.toLowerCase());
    return this.#me(await this.#openStaff(request, reply, row.id));
  }

  @Post('sign-out') @For('anybody') @HttpCode(200)
  async signOut(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<{ ok: true }> {
    await this.sessions.close(request, reply);
    return { ok: true };
  }

  @Post('links/open') @For('anybody') @HttpCode(200)
  async openLink(@Input(openLink) { token }: { token: string }, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<Me> {
    await this.deps.limits.tryLink(request.ip);
    const hash = tokenHash(token);
    const [link] = hash ? await this.deps.db.door<{ id: string; kind: string }>('SELECT * FROM app.link_row($1)', [hash]) : [];
    if (!link) throw new StepError('LINK_NOT_VALID');
    return this.#me(await this.sessions.open(request, reply, link.kind === 'owner' ? 'ownerLink' : 'readerLink', { link: link.id }));
  }

  @Post('join') @For('anybody') @HttpCode(200)
  async join(@Input(join) input: z.output<typeof join>, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<Me> {
    await this.deps.limits.tryLink(request.ip);
    const hash = tokenHash(input.token);
    const [row] = hash ? await this.deps.db.door<{ id: string | null }>('SELECT app.join_staff($1, $2) AS id', [hash, await hashPassword(input.password)]) : [];
    if (!row?.id) throw new StepError('LINK_NOT_VALID');
    return this.#me(await this.#openStaff(request, reply, row.id));
  }

  @Get('first-run') @For('anybody')
  async firstRunNeeded(): Promise<{ needed: boolean }> {
    const [row] = await this.deps.db.door<{ needed: boolean }>('SELECT app.first_run_needed() AS needed');
    return { needed: row?.needed ?? false };
  }

  @Post('first-run') @For('anybody') @HttpCode(201)
  async firstRun(@Input(firstRun) input: FirstRun, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<Me> {
    const { publicKey, privateKey } = generateKeyPairSync('ed25519', { publicKeyEncoding: { type: 'spki', format: 'pem' }, privateKeyEncoding: { type: 'pkcs8', format: 'pem' } });
    const scheme = { ...input.scheme, signingKey: privateKey, publicKey };
    const practice = {
      ...input.practice, place: '', letters: lettersOf(input.practice.name), policy: { letters: { mode: 'each' }, quiet: { from: 20, to: 8 }, schemeName: input.scheme.name },
      prices: { currency: input.scheme.currency, taxPercent: 0, sedationMinor: 0, radiographMinor: 0, sendingMinor: 0 },
    };
    const manager = { name: input.manager.name, email: input.manager.email, passwordHash: await hashPassword(input.manager.password) };
    const [row] = await this.deps.db.door<{ id: string | null }>('SELECT app.first_run($1, $2, $3) AS id', [scheme, practice, manager]);
    if (!row?.id) throw new StepError('ALREADY_THERE', t('This server has been set up already. Please sign in.'));
    return this.#me(await this.#openStaff(request, reply, row.id));
  }

  @Get('demo-sign-ins') @For('anybody')
  async demo(): Promise<unknown> {
    if (!this.deps.settings.demo) throw new StepError('NOT_FOUND');
    return demoSignIns.parse(JSON.parse(await readFile(path.join(this.deps.settings.dataFolder, 'demo-sign-ins.json'), 'utf8')));
  }

  #me(who: Principal): Me {
    return meOf(who, this.deps.settings.mail.captured);
  }

  async #openStaff(request: FastifyRequest, reply: FastifyReply, staff: string): Promise<Principal> {
    const [row] = await this.deps.db.door<{ practice: boolean; centre: boolean }>('SELECT * FROM app.staff_home($1)', [staff]);
    return this.sessions.open(request, reply, row?.practice ? 'staff' : row?.centre ? 'reader' : 'lead', { staff });
  }
}

/** Two letters for order numbers, from the practice's name; I and O are left out as they are misread. */
function lettersOf(name: string): string {
  const usable = name.normalize('NFD').toUpperCase().replace(/[^A-HJ-NP-Z]/g, '');
  return `${usable}AA`.slice(0, 2);
}
