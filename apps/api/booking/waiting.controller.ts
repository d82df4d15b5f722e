import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { paged, type Paged } from '#libs/contracts/common';
import { joinWaiting, type WaitingList } from '#libs/contracts/waiting';
import type { Actor } from '#libs/steps/record/actor';
import { StepError } from '#libs/steps/record/step-error';
import { joinLine } from '#libs/steps/waiting/join-line';
import { leaveLine } from '#libs/steps/waiting/leave-line';
import { waitingAsCsv, waitingList } from '#libs/steps/waiting/read-waiting-list';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';
import { BOOKS } from './booking.controller.js';

/** Visits for which an earlier time is wanted. */
@Controller('api')
export class WaitingController {
  constructor(private readonly deps: Deps) {}

  @Get('waiting-list')
  list(@By() by: Actor, @Asked(paged) { page }: Paged): Promise<WaitingList> {
    return waitingList(this.deps, by, page);
  }

  @Get('waiting-list.csv')
  async csv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'waiting-list.csv', await waitingAsCsv(this.deps, by));
  }

  @Post('orders/:order/waiting') @HttpCode(200)
  join(@By() by: Actor, @Id('order') order: string, @Input(joinWaiting) input: z.output<typeof joinWaiting>): Promise<WaitingList> {
    return joinLine(this.deps, booking(by), order, input);
  }

  @Post('waiting-list/:entry/leave') @HttpCode(200)
  leave(@By() by: Actor, @Id('entry') entry: string): Promise<WaitingList> {
    return leaveLine(this.deps, booking(by), entry);
  }
}

function booking(by: Actor): Actor {
  if (!by.roles.some((r) => BOOKS.includes(r))) throw new StepError('NOT_YOUR_ROLE');
  return by;
}
