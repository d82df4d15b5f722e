import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { newPractice, type NewPractice } from '#libs/contracts/session';
import { StepError } from '#libs/steps/record/step-error';
import { addPractice } from '#libs/steps/scheme/add-practice';
import { schemeScreen, type Lead } from '#libs/steps/scheme/scheme-screen';
import { Deps } from '../deps.js';
import { Input } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

/** A lead may also work in a practice; the role decides. */
function leadOf(who: Principal): Lead {
  if (!who.scheme || !who.staff || !who.roles.includes('lead')) throw new StepError('NOT_YOUR_ROLE');
  return { id: who.staff, name: who.name, scheme: who.scheme };
}

@Controller('api/scheme') @For('lead', 'staff')
export class SchemeController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@Who() who: Principal): Promise<SchemeScreen> {
    return schemeScreen(this.deps, leadOf(who));
  }

  @Post('practices') @HttpCode(201)
  add(@Who() who: Principal, @Input(newPractice) input: NewPractice): Promise<SchemeScreen> {
    return addPractice(this.deps, leadOf(who), input);
  }
}
