import { Controller, Get } from '@nestjs/common';
import type { ExplainedStudy } from '#libs/contracts/help';
import { explainedStudies } from '#libs/steps/help/explained-studies';
import { For } from '../session/guard.js';

@Controller('api/help') @For('staff', 'reader', 'lead')
export class HelpController {
  @Get('studies')
  studies(): ExplainedStudy[] {
    return explainedStudies();
  }
}
