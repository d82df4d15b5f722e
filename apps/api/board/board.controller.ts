import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { drugLine } from '#libs/contracts/actions/visit';
import { localDay } from '#libs/contracts/common';
import type { DayBoard } from '#libs/contracts/screens/board';
import { dayBoard } from '#libs/steps/board/day-board';
import { daySheet } from '#libs/steps/board/day-sheet';
import type { Actor } from '#libs/steps/record/actor';
import { planLines } from '#libs/steps/sedation/plan-lines';
import { Deps } from '../deps.js';
import { privately } from '../http/send-file.js';
import { Asked, Input } from '../http/zod-body.js';
import { By, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

const dayAsked = z.object({ day: localDay.optional() });
const arithmetic = z.object({ weightKg: z.number().positive().max(150), drugs: z.array(drugLine).min(1).max(8) });

@Controller('api')
export class BoardController {
  constructor(private readonly deps: Deps) {}

  @Get('day-board')
  board(@By() by: Actor, @Who() who: Principal, @Asked(dayAsked) { day }: { day?: string }): Promise<DayBoard> {
    return dayBoard(this.deps, by, who.zone, day);
  }

  @Get('day-sheet.pdf')
  async sheet(@By() by: Actor, @Who() who: Principal, @Asked(dayAsked) { day }: { day?: string }, @Res() reply: FastifyReply) {
    return privately(reply, 'application/pdf', 'day sheet.pdf').send(await daySheet(this.deps, by, who.zone, day));
  }

  /** Shown while the vet types; nothing is stored and nothing is proposed. */
  @Post('sedation/arithmetic') @HttpCode(200)
  arithmetic(@Input(arithmetic) input: z.output<typeof arithmetic>) {
    return { lines: planLines(input.weightKg, input.drugs) };
  }
}
