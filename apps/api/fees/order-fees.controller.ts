import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { newAgreement, newCharges, newPayment, newReversal, newStatement, type OrderFees } from '#libs/contracts/fees';
import { chargeVisit } from '#libs/steps/fees/account/charge-visit';
import { entriesAsCsv } from '#libs/steps/fees/account/entries-as-csv';
import { orderFees } from '#libs/steps/fees/account/order-fees';
import { reverseEntry } from '#libs/steps/fees/account/reverse-entry';
import { sendStatement } from '#libs/steps/fees/account/send-statement';
import { noteAgreement, takePayment } from '#libs/steps/fees/account/take-payment';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** The money of one order; every change answers with all of it. */
@Controller('api/orders/:order')
export class OrderFeesController {
  constructor(private readonly deps: Deps) {}

  @Get('fees')
  read(@By() by: Actor, @Id('order') order: string): Promise<OrderFees> {
    return orderFees(this.deps, by, order);
  }

  @Get('fees.csv')
  async csv(@By() by: Actor, @Id('order') order: string, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'order-fees.csv', await entriesAsCsv(this.deps, by, order));
  }

  @Post('fees/charges') @HttpCode(200)
  charge(@By() by: Actor, @Id('order') order: string, @Input(newCharges) input: z.output<typeof newCharges>): Promise<OrderFees> {
    return chargeVisit(this.deps, by, order, input);
  }

  @Post('fees/payments') @HttpCode(200)
  pay(@By() by: Actor, @Id('order') order: string, @Input(newPayment) input: z.output<typeof newPayment>): Promise<OrderFees> {
    return takePayment(this.deps, by, order, input);
  }

  @Post('fees/agreements') @HttpCode(200)
  agree(@By() by: Actor, @Id('order') order: string, @Input(newAgreement) input: z.output<typeof newAgreement>): Promise<OrderFees> {
    return noteAgreement(this.deps, by, order, input);
  }

  @Post('fees/reversals') @HttpCode(200)
  reverse(@By() by: Actor, @Id('order') order: string, @Input(newReversal) input: z.output<typeof newReversal>): Promise<OrderFees> {
    return reverseEntry(this.deps, by, order, input);
  }

  @Post('fees/statements') @HttpCode(200)
  tell(@By() by: Actor, @Id('order') order: string, @Input(newStatement) input: z.output<typeof newStatement>): Promise<OrderFees> {
    return sendStatement(this.deps, by, order, input.key);
  }
}
