import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { incidentClosed } from '#libs/contracts/actions/incident';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { closeIncident } from '#libs/steps/incident/close-incident';
import { readOrderScreen } from '#libs/steps/order-screen/read-order-screen';
import type { Actor } from '#libs/steps/record/actor';
import { resultsAsCsv } from '#libs/steps/result/results-as-csv';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

@Controller('api/orders')
export class ResultsController {
  constructor(private readonly deps: Deps) {}

  @Get('results.csv')
  async csv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'results.csv', await resultsAsCsv(this.deps, by));
  }

  @Post(':order/incidents/:incident/close') @HttpCode(200)
  async close(@By() by: Actor, @Id('order') order: string, @Id('incident') incident: string, @Input(incidentClosed) { words }: z.output<typeof incidentClosed>): Promise<OrderScreen> {
    await closeIncident(this.deps, by, order, incident, words);
    return readOrderScreen(this.deps, by, order);
  }
}
