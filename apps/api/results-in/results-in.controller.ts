import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import { z } from 'zod';
import { paged } from '#libs/contracts/common';
import { newKey, resultsFile, resultsFileTaken, setAsideReading, type DeliveryAnswer, type FilePreview, type KeyMade, type ResultsFile, type ResultsInScreen } from '#libs/contracts/results-in';
import { endKey, makeKey } from '#libs/steps/results-in/centre-keys';
import { previewFile, takeFile } from '#libs/steps/results-in/file-in';
import { setAside } from '#libs/steps/results-in/left-readings';
import { bringerOf, type Onlooker } from '#libs/steps/results-in/onlooker';
import { resultsInScreen } from '#libs/steps/results-in/results-in-screen';
import { Deps } from '../deps.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { leadOf } from '../scheme/lead-of.js';
import { For, Who } from '../session/guard.js';
import { staffActor, type Principal } from '../session/principal.js';
import { readerOf } from '../reader/reader-of.js';

/** Somebody who works in a practice may be the scheme's lead too, and says in which place they look. */
const asked = z.object({ as: z.enum(['lead']).optional() });
type Asking = z.output<typeof asked>;
const screenAsked = asked.extend(paged.shape);

function onlookerOf(who: Principal, { as }: Asking): Onlooker {
  if (as === 'lead' || who.kind === 'lead') return { lead: leadOf(who) };
  return who.kind === 'reader' ? { reader: readerOf(who) } : { practice: staffActor(who) };
}

/** Readings in files, those of messages that led nowhere, and the keys that messages are signed with. */
@Controller('api/results-in') @For('staff', 'reader', 'lead')
export class ResultsInController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@Who() who: Principal, @Asked(screenAsked) { page, ...as }: z.output<typeof screenAsked>): Promise<ResultsInScreen> {
    return resultsInScreen(this.deps, onlookerOf(who, as), page);
  }

  @Post('preview') @HttpCode(200)
  async preview(@Who() who: Principal, @Asked(asked) as: Asking, @Input(resultsFile) file: ResultsFile): Promise<FilePreview> {
    return previewFile(this.deps, await bringerOf(this.deps, onlookerOf(who, as), file.centre), file);
  }

  @Post('take') @HttpCode(200)
  async take(@Who() who: Principal, @Asked(asked) as: Asking, @Input(resultsFileTaken) file: z.output<typeof resultsFileTaken>): Promise<DeliveryAnswer> {
    return takeFile(this.deps, await bringerOf(this.deps, onlookerOf(who, as), file.centre), file);
  }

  @Post('left/:reading/set-aside') @HttpCode(200)
  async setAside(@Who() who: Principal, @Asked(asked) as: Asking, @Id('reading') reading: string, @Input(setAsideReading) { why }: z.output<typeof setAsideReading>): Promise<ResultsInScreen> {
    await setAside(this.deps, onlookerOf(who, as), reading, why);
    return resultsInScreen(this.deps, onlookerOf(who, as));
  }

  @Post('keys') @HttpCode(200)
  makeKey(@Who() who: Principal, @Asked(asked) as: Asking, @Input(newKey) { centre }: z.output<typeof newKey>): Promise<KeyMade> {
    return makeKey(this.deps, onlookerOf(who, as), centre);
  }

  @Post('keys/:key/end') @HttpCode(200)
  async endKey(@Who() who: Principal, @Asked(asked) as: Asking, @Id('key') key: string): Promise<ResultsInScreen> {
    await endKey(this.deps, onlookerOf(who, as), key);
    return resultsInScreen(this.deps, onlookerOf(who, as));
  }
}
