import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { billLinesAsked, billPreviewAsked, billsAsked, newCentreBill, saidOfBill, saidOfLine, type BillPreview, type CentreBill, type SaidOfBill, type SaidOfLine } from '#libs/contracts/centre-bills';
import { billLinesAsCsv, billsAsCsv, unbilledAsCsv } from '#libs/steps/fees/bills/bills-as-csv';
import { enterBill } from '#libs/steps/fees/bills/enter-bill';
import { listBillLines, listBills, listUnbilled } from '#libs/steps/fees/bills/list-bills';
import { oneBill } from '#libs/steps/fees/bills/one-bill';
import { previewBill } from '#libs/steps/fees/bills/preview-bill';
import { sayOfBill } from '#libs/steps/fees/bills/say-of-bill';
import { sayOfLine } from '#libs/steps/fees/bills/say-of-line';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** What centres bill this practice for, line by line. */
@Controller('api/centre-bills')
export class CentreBillsController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@By() by: Actor, @Asked(billsAsked) { page }: z.output<typeof billsAsked>) {
    return listBills(this.deps, by, page);
  }

  @Get('export.csv')
  async csv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'bills.csv', await billsAsCsv(this.deps, by));
  }

  @Get('lines')
  lines(@By() by: Actor, @Asked(billLinesAsked) asked: z.output<typeof billLinesAsked>) {
    return listBillLines(this.deps, by, asked);
  }

  @Get('lines.csv')
  async linesCsv(@By() by: Actor, @Asked(billLinesAsked) asked: z.output<typeof billLinesAsked>, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'bill-lines.csv', await billLinesAsCsv(this.deps, by, asked.show));
  }

  @Get('unbilled')
  unbilled(@By() by: Actor, @Asked(billsAsked) { page }: z.output<typeof billsAsked>) {
    return listUnbilled(this.deps, by, page);
  }

  @Get('unbilled.csv')
  async unbilledCsv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'read-not-billed.csv', await unbilledAsCsv(this.deps, by));
  }

  @Post('preview') @HttpCode(200)
  preview(@By() by: Actor, @Input(billPreviewAsked) asked: z.output<typeof billPreviewAsked>): Promise<BillPreview> {
    return previewBill(this.deps, by, asked);
  }

  @Post() @HttpCode(201)
  enter(@By() by: Actor, @Input(newCentreBill) input: z.output<typeof newCentreBill>): Promise<CentreBill> {
    return enterBill(this.deps, by, input);
  }

  @Get(':bill')
  one(@By() by: Actor, @Id('bill') bill: string): Promise<CentreBill> {
    return oneBill(this.deps, by, bill);
  }

  @Post(':bill/said') @HttpCode(200)
  said(@By() by: Actor, @Id('bill') bill: string, @Input(saidOfBill) input: SaidOfBill): Promise<CentreBill> {
    return sayOfBill(this.deps, by, bill, input);
  }

  @Post(':bill/lines/:line/said') @HttpCode(200)
  saidOfLine(@By() by: Actor, @Id('bill') bill: string, @Id('line') line: string, @Input(saidOfLine) input: SaidOfLine): Promise<CentreBill> {
    return sayOfLine(this.deps, by, bill, line, input);
  }
}
