import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { z } from 'zod';
import { newKey, newWebhook, type Keys, type Webhooks } from '#libs/contracts/integrations';
import { endKey, makeKey, readKeys } from '#libs/register/practice/api-keys';
import type { Actor } from '#libs/steps/record/actor';
import { changeSecret, endWebhook, makeWebhook, readWebhooks, sendAgain, testWebhook } from '#libs/steps/webhooks/webhooks';
import { Deps } from '../deps.js';
import { Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

/** Other programs of the practice. */
@Controller('api/practice')
export class IntegrationsController {
  constructor(private readonly deps: Deps) {}

  @Get('keys')
  keys(@By() by: Actor): Promise<Keys> {
    return readKeys(this.deps, by);
  }

  @Post('keys') @HttpCode(200)
  make(@By() by: Actor, @Input(newKey) input: z.output<typeof newKey>): Promise<Keys> {
    return makeKey(this.deps, by, input);
  }

  @Post('keys/:key/end') @HttpCode(200)
  end(@By() by: Actor, @Id('key') key: string): Promise<Keys> {
    return endKey(this.deps, by, key);
  }

  @Get('webhooks')
  webhooks(@By() by: Actor): Promise<Webhooks> {
    return readWebhooks(this.deps, by);
  }

  @Post('webhooks') @HttpCode(200)
  makeWebhook(@By() by: Actor, @Input(newWebhook) input: z.output<typeof newWebhook>): Promise<Webhooks> {
    return makeWebhook(this.deps, by, input);
  }

  @Post('webhooks/:webhook/end') @HttpCode(200)
  endWebhook(@By() by: Actor, @Id('webhook') webhook: string): Promise<Webhooks> {
    return endWebhook(this.deps, by, webhook);
  }

  @Post('webhooks/:webhook/secret') @HttpCode(200)
  changeSecret(@By() by: Actor, @Id('webhook') webhook: string): Promise<Webhooks> {
    return changeSecret(this.deps, by, webhook);
  }

  @Post('webhooks/:webhook/test') @HttpCode(200)
  testWebhook(@By() by: Actor, @Id('webhook') webhook: string): Promise<Webhooks> {
    return testWebhook(this.deps, by, webhook);
  }

  @Post('webhooks/deliveries/:delivery/again') @HttpCode(200)
  sendAgain(@By() by: Actor, @Id('delivery') delivery: string): Promise<Webhooks> {
    return sendAgain(this.deps, by, delivery);
  }
}
