import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { paged, type Paged } from '#libs/contracts/common';
import { assignImage, newMachine, setAsideImage, type Machines, type Unmatched } from '#libs/contracts/gateway';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { addMachine, endMachine, readMachines } from '#libs/register/practice/machines';
import { assignImage as assign, leaveOut, setAsideImage as setAside } from '#libs/steps/gateway/settle-image';
import { setAsidePerformed } from '#libs/steps/gateway/settle-performed';
import { openImage, readUnmatched, unmatchedAsCsv } from '#libs/steps/gateway/unmatched';
import { readOrderScreen } from '#libs/steps/order-screen/read-order-screen';
import type { Actor } from '#libs/steps/record/actor';
import { notFound } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { sendCsv, sendStored } from '../http/send-file.js';
import { Asked, Id, Input, Sha } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** X-ray machines, and the images that came from them and fit no order. */
@Controller('api')
export class GatewayController {
  constructor(private readonly deps: Deps) {}

  @Get('practice/machines')
  machines(@By() by: Actor): Promise<Machines> {
    return readMachines(this.deps, by);
  }

  @Post('practice/machines') @HttpCode(200)
  add(@By() by: Actor, @Input(newMachine) input: z.output<typeof newMachine>): Promise<Machines> {
    return addMachine(this.deps, by, input);
  }

  @Post('practice/machines/:machine/end') @HttpCode(200)
  end(@By() by: Actor, @Id('machine') machine: string): Promise<Machines> {
    return endMachine(this.deps, by, machine);
  }

  @Get('unmatched')
  unmatched(@By() by: Actor, @Asked(paged) { page }: Paged): Promise<Unmatched> {
    return readUnmatched(this.deps, by, page);
  }

  @Get('unmatched.csv')
  async csv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'images-without-an-order.csv', await unmatchedAsCsv(this.deps, by));
  }

  @Get('unmatched/:image/preview')
  async preview(@By() by: Actor, @Id('image') image: string, @Res() reply: FastifyReply) {
    const { previewSha } = await this.deps.db.practice(by.practice, (tx) => openImage(tx, image));
    if (!previewSha) throw notFound();
    return sendStored(reply, this.deps.files, previewSha, 'image/jpeg');
  }

  @Post('unmatched/:image/assign') @HttpCode(200)
  assign(@By() by: Actor, @Id('image') image: string, @Input(assignImage) input: z.output<typeof assignImage>): Promise<Unmatched> {
    return assign(this.deps, by, image, input);
  }

  @Post('unmatched/performed/:step/set-aside') @HttpCode(200)
  setAsidePerformed(@By() by: Actor, @Id('step') step: string, @Input(setAsideImage) input: z.output<typeof setAsideImage>): Promise<Unmatched> {
    return setAsidePerformed(this.deps, by, step, input);
  }

  @Post('orders/:order/arrived/:sha/leave-out') @HttpCode(200)
  async leaveOut(@By() by: Actor, @Id('order') order: string, @Sha('sha') sha: string, @Input(setAsideImage) input: z.output<typeof setAsideImage>): Promise<OrderScreen> {
    await leaveOut(this.deps, by, order, sha, input);
    return readOrderScreen(this.deps, by, order);
  }

  @Post('unmatched/:image/set-aside') @HttpCode(200)
  setAside(@By() by: Actor, @Id('image') image: string, @Input(setAsideImage) input: z.output<typeof setAsideImage>): Promise<Unmatched> {
    return setAside(this.deps, by, image, input);
  }
}
