import { Controller, Get, Param, ParseIntPipe, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { paged, type Paged } from '#libs/contracts/common';
import type { MailboxScreen, MailScreen } from '#libs/contracts/screens/board';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import type { Scope } from '#libs/platform/database/db';
import { checkCertificate } from '#libs/steps/certificate/check-certificate';
import { listMail, mailAsCsv, mailFile, readMail } from '#libs/steps/mailbox/mailbox';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { privately, sendCsv } from '../http/send-file.js';
import { Asked, Id } from '../http/zod-body.js';
import { For } from '../session/guard.js';
import { Sessions } from '../session/sessions.js';

/** Pages that need no sign-in: a certificate's check, and in the demo the mailbox. */
@Controller('api') @For('anybody')
export class PublicController {
  constructor(private readonly deps: Deps, private readonly sessions: Sessions) {}

  @Get('certificates/public-key')
  async publicKey() {
    const [row] = await this.deps.db.door<{ pem: string | null }>('SELECT app.public_key() AS pem');
    if (!row?.pem) throw new StepError('NOT_FOUND');
    return { pem: row.pem, algorithm: 'Ed25519' };
  }

  @Get('certificates/:serial')
  async certificate(@Param('serial') serial: string, @Req() request: FastifyRequest): Promise<CertificateCheck> {
    await this.deps.limits.tryLink(request.ip);
    return checkCertificate(this.deps.db, serial);
  }

  @Get('mailbox')
  async mailbox(@Req() request: FastifyRequest, @Asked(paged) { page }: Paged): Promise<MailboxScreen> {
    return listMail(this.deps.db, await this.#mailScope(request), this.deps.settings.mail.captured, page);
  }

  @Get('mailbox.csv')
  async mailCsv(@Req() request: FastifyRequest, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'mailbox.csv', await mailAsCsv(this.deps.db, await this.#mailScope(request)));
  }

  @Get('mailbox/:id')
  async mail(@Req() request: FastifyRequest, @Id('id') id: string): Promise<MailScreen> {
    return readMail(this.deps.db, await this.#mailScope(request), id);
  }

  @Get('mailbox/:id/files/:n')
  async file(@Req() request: FastifyRequest, @Id('id') id: string, @Param('n', ParseIntPipe) n: number, @Res() reply: FastifyReply) {
    const file = await mailFile(this.deps.db, await this.#mailScope(request), id, n);
    return privately(reply, file.type, file.name).send(file.content);
  }

  /** Outside the demo only a practice's manager looks into what was caught, and only at the practice's own. */
  async #mailScope(request: FastifyRequest): Promise<Scope> {
    if (!this.deps.settings.mail.captured) throw new StepError('NOT_FOUND');
    const who = await this.sessions.of(request);
    // A reader reads blind, in the demo too.
    if (who?.kind === 'reader' || who?.kind === 'readerLink') throw new StepError('NOT_FOUND');
    if (this.deps.settings.demo) return { outside: true };
    if (!who) throw new StepError('NOT_SIGNED_IN');
    if (who.kind !== 'staff' || !who.practice || !who.roles.includes('manager')) throw new StepError('NOT_YOUR_ROLE');
    return { practice: who.practice };
  }
}
