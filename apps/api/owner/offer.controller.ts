import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { z } from 'zod';
import { answerOffer, type OwnerOffer } from '#libs/contracts/waiting';
import { ownerAnswersOffer, readOffer } from '#libs/steps/waiting/answer-offer';
import { Deps } from '../deps.js';
import { Input } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';
import { ownerOf } from './owner.controller.js';

/** An earlier time that is offered to this owner. */
@Controller('api/owner/offer') @For('ownerLink')
export class OfferController {
  constructor(private readonly deps: Deps) {}

  @Get()
  offer(@Who() who: Principal): Promise<OwnerOffer> {
    return readOffer(this.deps, ownerOf(who));
  }

  @Post() @HttpCode(200)
  answer(@Who() who: Principal, @Input(answerOffer) input: z.output<typeof answerOffer>): Promise<OwnerOffer> {
    return ownerAnswersOffer(this.deps, ownerOf(who), input);
  }
}
