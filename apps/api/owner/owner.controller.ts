import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { ownerAnswers, ownerAppeal, ownerConsents, ownerEstimate, ownerLanguage, ownerLetterTime, ownerWithdraw, type OwnerConsents, type OwnerPage } from '#libs/contracts/screens/owner';
import { ownerAcceptsEstimate, ownerAgreesTransfer, ownerChoosesLetterTime, ownerAppeals, ownerConsents as consent, ownerGivesAnswers, ownerWithdraws } from '#libs/steps/owner-page/answer-as-owner';
import { ownerChoosesLanguage } from '#libs/steps/owner-page/choose-language';
import type { Owner } from '#libs/steps/owner-page/owner';
import { readOwnerPage } from '#libs/steps/owner-page/read-owner-page';
import { notFound, StepError } from '#libs/steps/record/step-error';
import { printDocument } from '#libs/steps/report/print-document';
import { readDocument } from '#libs/steps/report/read-document';
import { Deps } from '../deps.js';
import { privately, sendStored } from '../http/send-file.js';
import { Id, Input } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

export function ownerOf(who: Principal): Owner {
  if (!who.order || !who.practice || !who.person) throw new StepError('LINK_NOT_VALID');
  return { person: who.person, name: who.name, order: who.order, practice: who.practice };
}

@Controller('api/owner') @For('ownerLink')
export class OwnerController {
  constructor(private readonly deps: Deps) {}

  @Get()
  page(@Who() who: Principal): Promise<OwnerPage> {
    return readOwnerPage(this.deps, ownerOf(who));
  }

  @Post('answers') @HttpCode(200)
  answers(@Who() who: Principal, @Input(ownerAnswers) input: z.output<typeof ownerAnswers>): Promise<OwnerPage> {
    return ownerGivesAnswers(this.deps, ownerOf(who), input);
  }

  @Post('estimate') @HttpCode(200)
  estimate(@Who() who: Principal, @Input(ownerEstimate) input: z.output<typeof ownerEstimate>): Promise<OwnerPage> {
    return ownerAcceptsEstimate(this.deps, ownerOf(who), input);
  }

  @Post('consents') @HttpCode(200)
  consents(@Who() who: Principal, @Input(ownerConsents) input: OwnerConsents): Promise<OwnerPage> {
    return consent(this.deps, ownerOf(who), input);
  }

  @Post('transfer') @HttpCode(200)
  transfer(@Who() who: Principal): Promise<OwnerPage> {
    return ownerAgreesTransfer(this.deps, ownerOf(who));
  }

  @Post('letter-time') @HttpCode(200)
  letterTime(@Who() who: Principal, @Input(ownerLetterTime) input: z.output<typeof ownerLetterTime>): Promise<OwnerPage> {
    return ownerChoosesLetterTime(this.deps, ownerOf(who), input);
  }

  @Post('language') @HttpCode(200)
  language(@Who() who: Principal, @Input(ownerLanguage) input: z.output<typeof ownerLanguage>): Promise<OwnerPage> {
    return ownerChoosesLanguage(this.deps, ownerOf(who), input.language);
  }

  @Post('withdraw') @HttpCode(200)
  withdraw(@Who() who: Principal, @Input(ownerWithdraw) input: z.output<typeof ownerWithdraw>): Promise<OwnerPage> {
    return ownerWithdraws(this.deps, ownerOf(who), input);
  }

  @Post('appeal') @HttpCode(200)
  appeal(@Who() who: Principal, @Input(ownerAppeal) input: z.output<typeof ownerAppeal>): Promise<OwnerPage> {
    return ownerAppeals(this.deps, ownerOf(who), input);
  }

  @Get('documents/:document')
  async document(@Who() who: Principal, @Id('document') id: string, @Res() reply: FastifyReply) {
    const owner = ownerOf(who);
    const page = await readOwnerPage(this.deps, owner);
    if (!page.documents.some((d) => d.id === id)) throw notFound();
    const paper = await this.deps.db.practice(owner.practice, (tx) => readDocument(tx, { id: owner.person, role: 'owner', practice: owner.practice }, owner.order, id));
    if (paper.pdfSha) return sendStored(reply, this.deps.files, paper.pdfSha, 'application/pdf', `${paper.name}.pdf`);
    return privately(reply, 'application/pdf', `${paper.name}.pdf`).send(await printDocument(paper.kind, paper.snapshot));
  }
}
