import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { paged, type Paged } from '#libs/contracts/common';
import { mergeDogs as merge, newAuthority, newClosure, reachableDays, startClosing } from '#libs/contracts/people';
import { addAuthority, endAuthority, listAuthorities } from '#libs/register/dogs/authorities';
import { findTwins, twinsAsCsv } from '#libs/register/dogs/find-twins';
import { mergeDogs } from '#libs/register/dogs/merge-dogs';
import { readReachableDays, setReachableDays } from '#libs/register/practice/set-reachable-days';
import { closeCentre, readClosures } from '#libs/steps/centre/close-centre';
import { closePractice, readClosing } from '#libs/steps/closing/close-practice';
import { restateDog } from '#libs/steps/order/restate-dog';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** What happens around dogs, people, practice and centre while orders are on their way. */
@Controller('api')
export class PeopleController {
  constructor(private readonly deps: Deps) {}

  @Get('dog-twins')
  twins(@By() by: Actor, @Asked(paged) { page }: Paged) {
    return findTwins(this.deps, by, page);
  }

  @Get('dog-twins.csv')
  async twinsCsv(@By() by: Actor, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'entered-twice.csv', await twinsAsCsv(this.deps, by));
  }

  @Post('dogs/:dog/merge') @HttpCode(200)
  merge(@By() by: Actor, @Id('dog') dog: string, @Input(merge) input: z.output<typeof merge>) {
    return mergeDogs(this.deps, by, dog, input, restateDog(this.deps, by));
  }

  @Get('dogs/:dog/authorities')
  authorities(@By() by: Actor, @Id('dog') dog: string) {
    return listAuthorities(this.deps, by, dog);
  }

  @Post('dogs/:dog/authorities') @HttpCode(200)
  authorise(@By() by: Actor, @Id('dog') dog: string, @Input(newAuthority) input: z.output<typeof newAuthority>) {
    return addAuthority(this.deps, by, dog, input);
  }

  @Post('dogs/:dog/authorities/:authority/end') @HttpCode(200)
  endAuthority(@By() by: Actor, @Id('dog') dog: string, @Id('authority') authority: string) {
    return endAuthority(this.deps, by, dog, authority);
  }

  @Get('practice/closing')
  closing(@By() by: Actor) {
    return readClosing(this.deps, by);
  }

  @Post('practice/closing') @HttpCode(200)
  close(@By() by: Actor, @Input(startClosing) input: z.output<typeof startClosing>) {
    return closePractice(this.deps, by, input);
  }

  @Get('practice/reachable')
  reachable(@By() by: Actor) {
    return readReachableDays(this.deps, by);
  }

  @Post('practice/reachable') @HttpCode(200)
  setReachable(@By() by: Actor, @Input(reachableDays) input: z.output<typeof reachableDays>) {
    return setReachableDays(this.deps, by, input);
  }

  @Get('practice/closures')
  closures(@By() by: Actor) {
    return readClosures(this.deps, by);
  }

  @Post('practice/centres/:centre/closures') @HttpCode(200)
  closeCentre(@By() by: Actor, @Id('centre') centre: string, @Input(newClosure) input: z.output<typeof newClosure>) {
    return closeCentre(this.deps, by, centre, input);
  }
}
