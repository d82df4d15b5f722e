import { Controller, Get, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { feesAsked, type FeeList, type GroupFees } from '#libs/contracts/fees';
import { groupFees } from '#libs/steps/fees/account/group-fees';
import { feesAsCsv, listFees } from '#libs/steps/fees/account/list-fees';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Id } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** What is open with whom. */
@Controller('api')
export class FeesController {
  constructor(private readonly deps: Deps) {}

  @Get('fees')
  list(@By() by: Actor, @Asked(feesAsked) asked: z.output<typeof feesAsked>): Promise<FeeList> {
    return listFees(this.deps, by, asked);
  }

  @Get('fees/export.csv')
  async csv(@By() by: Actor, @Asked(feesAsked) asked: z.output<typeof feesAsked>, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'fees.csv', await feesAsCsv(this.deps, by, asked));
  }

  @Get('groups/:group/fees')
  group(@By() by: Actor, @Id('group') group: string): Promise<GroupFees> {
    return groupFees(this.deps, by, group);
  }
}
