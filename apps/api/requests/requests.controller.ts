import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { paged, type Paged } from '#libs/contracts/common';
import { newDataRequest, requestClosed, requestExtended, requestNoted, requestVerified, type DataRequestList } from '#libs/contracts/requests';
import type { Actor } from '#libs/steps/record/actor';
import { closeRequest, extendRequest, noteOnRequest, verifyRequester } from '#libs/steps/requests/answer-request';
import { eraseRequester } from '#libs/steps/requests/erase-requester';
import { exportPerson } from '#libs/steps/requests/export-person';
import { listRequests, requestsAsCsv } from '#libs/steps/requests/list-requests';
import { objectToStatistics } from '#libs/steps/requests/object-to-statistics';
import { openRequest } from '#libs/steps/requests/open-request';
import { liftRestriction, restrictPerson } from '#libs/steps/requests/restrict-person';
import { Deps } from '../deps.js';
import { privately, sendCsv } from '../http/send-file.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** What people ask about their own data; for the practice manager. */
@Controller('api/requests')
export class RequestsController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@By() by: Actor, @Asked(paged) { page }: Paged): Promise<DataRequestList> {
    return listRequests(this.deps, by, page);
  }

  @Get('export.csv')
  async csv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'data-requests.csv', await requestsAsCsv(this.deps, by));
  }

  @Post() @HttpCode(200)
  open(@By() by: Actor, @Input(newDataRequest) input: z.output<typeof newDataRequest>): Promise<DataRequestList> {
    return openRequest(this.deps, by, input);
  }

  @Post(':request/verified') @HttpCode(200)
  verified(@By() by: Actor, @Id('request') request: string, @Input(requestVerified) input: z.output<typeof requestVerified>): Promise<DataRequestList> {
    return verifyRequester(this.deps, by, request, input.how);
  }

  @Post(':request/extended') @HttpCode(200)
  extended(@By() by: Actor, @Id('request') request: string, @Input(requestExtended) input: z.output<typeof requestExtended>): Promise<DataRequestList> {
    return extendRequest(this.deps, by, request, input);
  }

  @Post(':request/noted') @HttpCode(200)
  noted(@By() by: Actor, @Id('request') request: string, @Input(requestNoted) input: z.output<typeof requestNoted>): Promise<DataRequestList> {
    return noteOnRequest(this.deps, by, request, input.words);
  }

  @Post(':request/restricted') @HttpCode(200)
  restricted(@By() by: Actor, @Id('request') request: string): Promise<DataRequestList> {
    return restrictPerson(this.deps, by, request);
  }

  @Post(':request/restriction-lifted') @HttpCode(200)
  lifted(@By() by: Actor, @Id('request') request: string, @Input(requestNoted) input: z.output<typeof requestNoted>): Promise<DataRequestList> {
    return liftRestriction(this.deps, by, request, input.words);
  }

  @Post(':request/objected') @HttpCode(200)
  objected(@By() by: Actor, @Id('request') request: string): Promise<DataRequestList> {
    return objectToStatistics(this.deps, by, request);
  }

  @Post(':request/erased') @HttpCode(200)
  erased(@By() by: Actor, @Id('request') request: string): Promise<DataRequestList> {
    return eraseRequester(this.deps, by, request);
  }

  @Post(':request/closed') @HttpCode(200)
  closed(@By() by: Actor, @Id('request') request: string, @Input(requestClosed) input: z.output<typeof requestClosed>): Promise<DataRequestList> {
    return closeRequest(this.deps, by, request, input);
  }

  @Get(':request/person.zip')
  async zip(@By() by: Actor, @Id('request') request: string, @Res() reply: FastifyReply) {
    const zip = await exportPerson(this.deps, by, request);
    return privately(reply, 'application/zip').header('content-disposition', 'attachment; filename="your-data.zip"').header('cache-control', 'no-store').send(zip);
  }
}
