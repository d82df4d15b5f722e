import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { birthsSaid, type BirthsSaid, type BreedList, type BreedPicture } from '#libs/contracts/screens/breeds';
import { askFreeze } from '#libs/steps/scheme/ask-freeze';
import { breedCsv } from '#libs/steps/scheme/breed-csv';
import { breedList } from '#libs/steps/scheme/breed-list';
import { breedPicture } from '#libs/steps/scheme/breed-picture';
import { sayBirths } from '#libs/steps/scheme/say-births';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Id, Input } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';
import { leadOf } from './lead-of.js';

/** Frozen counts of breeds, for the scheme's lead. */
@Controller('api/scheme/breeds') @For('lead', 'staff')
export class BreedsController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@Who() who: Principal): Promise<BreedList> {
    return breedList(this.deps, leadOf(who));
  }

  @Post('freeze') @HttpCode(202)
  freeze(@Who() who: Principal): Promise<BreedList> {
    return askFreeze(this.deps, leadOf(who));
  }

  @Get(':set')
  picture(@Who() who: Principal, @Id('set') set: string): Promise<BreedPicture> {
    return breedPicture(this.deps, leadOf(who), set);
  }

  @Get(':set/counts.csv')
  async csv(@Who() who: Principal, @Id('set') set: string, @Res() reply: FastifyReply) {
    const { name, text } = await breedCsv(this.deps, leadOf(who), set);
    return sendCsv(reply, name, text);
  }

  @Post(':set/births') @HttpCode(201)
  births(@Who() who: Principal, @Id('set') set: string, @Input(birthsSaid) input: BirthsSaid): Promise<BreedPicture> {
    return sayBirths(this.deps, leadOf(who), set, input);
  }
}
