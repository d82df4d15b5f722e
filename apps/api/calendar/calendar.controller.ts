import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import { calendarAsked, moveAsked, type Calendar, type CalendarAsked, type MoveAsked, type MoveLook } from '#libs/contracts/calendar';
import { lookAtMove } from '#libs/steps/calendar/look-at-move';
import { readCalendar } from '#libs/steps/calendar/read-calendar';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { Asked, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

@Controller('api/calendar')
export class CalendarController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@By() by: Actor, @Asked(calendarAsked) asked: CalendarAsked): Promise<Calendar> {
    return readCalendar(this.deps, by, asked);
  }

  /** Moving itself is the action that books; this says what it would come to. */
  @Post('look') @HttpCode(200)
  look(@By() by: Actor, @Input(moveAsked) asked: MoveAsked): Promise<MoveLook> {
    return lookAtMove(this.deps, by, asked);
  }
}
