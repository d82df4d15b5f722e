import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { z } from 'zod';
import { groupOptionsAsked, newGroupBooking, type GroupBooking, type GroupOptions, type NewGroupBooking } from '#libs/contracts/group-booking';
import { bookGroup } from '#libs/steps/group/book-group';
import { groupOptions } from '#libs/steps/group/group-options';
import { listGroups, oneGroup } from '#libs/steps/group/read-groups';
import type { Actor } from '#libs/steps/record/actor';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';
import { BOOKS } from './booking.controller.js';

/** Several dogs in one call. */
@Controller('api/groups')
export class GroupsController {
  constructor(private readonly deps: Deps) {}

  @Post('options') @HttpCode(200)
  options(@By() by: Actor, @Input(groupOptionsAsked) asked: z.output<typeof groupOptionsAsked>): Promise<GroupOptions> {
    return groupOptions(this.deps, by, asked);
  }

  @Post() @HttpCode(201)
  book(@By() by: Actor, @Input(newGroupBooking) input: NewGroupBooking): Promise<GroupBooking> {
    if (!by.roles.some((r) => BOOKS.includes(r))) throw new StepError('NOT_YOUR_ROLE');
    return bookGroup(this.deps, by, input);
  }

  @Get()
  list(@By() by: Actor): Promise<{ rows: GroupBooking[] }> {
    return listGroups(this.deps, by);
  }

  @Get(':group')
  one(@By() by: Actor, @Id('group') id: string): Promise<GroupBooking> {
    return oneGroup(this.deps, by, id);
  }
}
