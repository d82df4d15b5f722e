import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { choosingAsked, type Choosing, type ChoosingAsked, type ChoosingSet } from '#libs/contracts/choosing';
import { roundAsked, type Round, type RoundAsked, type SchemeTimes } from '#libs/contracts/readers';
import { schemeStudiesAsked, type SchemeStudies, type SchemeStudiesAsked } from '#libs/contracts/scheme-studies';
import { newPractice, type NewPractice } from '#libs/contracts/session';
import { addPractice } from '#libs/steps/scheme/add-practice';
import { choose } from '#libs/steps/scheme/choose';
import { choosingSets } from '#libs/steps/scheme/choosing-sets';
import { readingRound, roundStudies } from '#libs/steps/scheme/reading-round';
import { schemeStudies, schemeStudiesAsCsv } from '#libs/steps/scheme/scheme-studies';
import { schemeTimes } from '#libs/steps/scheme/scheme-times';
import { schemeScreen } from '#libs/steps/scheme/scheme-screen';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Input } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';
import { leadOf } from './lead-of.js';

@Controller('api/scheme') @For('lead', 'staff')
export class SchemeController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@Who() who: Principal): Promise<SchemeScreen> {
    return schemeScreen(this.deps, leadOf(who));
  }

  @Get('studies')
  studiesAt(@Who() who: Principal, @Asked(schemeStudiesAsked) asked: SchemeStudiesAsked): Promise<SchemeStudies> {
    return schemeStudies(this.deps, leadOf(who), asked);
  }

  @Get('studies.csv')
  async studiesAsCsv(@Who() who: Principal, @Asked(schemeStudiesAsked) asked: SchemeStudiesAsked, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'studies.csv', await schemeStudiesAsCsv(this.deps, leadOf(who), asked));
  }

  @Post('practices') @HttpCode(201)
  add(@Who() who: Principal, @Input(newPractice) input: NewPractice): Promise<SchemeScreen> {
    return addPractice(this.deps, leadOf(who), input);
  }

  @Get('choosing')
  sets(@Who() who: Principal): Promise<ChoosingSet[]> {
    return choosingSets(this.deps, leadOf(who));
  }

  @Post('choosing') @HttpCode(200)
  choose(@Who() who: Principal, @Input(choosingAsked) input: ChoosingAsked): Promise<Choosing> {
    return choose(this.deps, leadOf(who), input);
  }

  @Get('times')
  times(@Who() who: Principal): Promise<SchemeTimes> {
    return schemeTimes(this.deps, leadOf(who));
  }

  @Get('reading-round')
  studies(@Who() who: Principal): { id: string; name: string }[] {
    leadOf(who);
    return roundStudies();
  }

  @Post('reading-round') @HttpCode(200)
  round(@Who() who: Principal, @Input(roundAsked) input: RoundAsked): Round {
    leadOf(who);
    return readingRound(input);
  }
}
