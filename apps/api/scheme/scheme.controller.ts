import { Controller, Get } from '@nestjs/common';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { StepError } from '#libs/steps/record/step-error';
import { schemeScreen } from '#libs/steps/scheme/scheme-screen';
import { Deps } from '../deps.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

@Controller('api/scheme') @For('lead')
export class SchemeController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@Who() who: Principal): Promise<SchemeScreen> {
    if (!who.scheme || !who.staff) throw new StepError('NOT_YOUR_ROLE');
    return schemeScreen(this.deps, { id: who.staff, scheme: who.scheme, schemeName: who.home ?? '' });
  }
}
