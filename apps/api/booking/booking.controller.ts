import { Controller, HttpCode, Post } from '@nestjs/common';
import type { z } from 'zod';
import { bookingOptionsAsked, newBooking, type BookingOptions, type NewBooking } from '#libs/contracts/booking';
import { bookingOptions } from '#libs/steps/booking/booking-options';
import { createBooking } from '#libs/steps/booking/create-booking';
import type { Actor } from '#libs/steps/record/actor';
import { StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

export const BOOKS = ['desk', 'vet', 'manager'];

@Controller('api')
export class BookingController {
  constructor(private readonly deps: Deps) {}

  @Post('booking/options') @HttpCode(200)
  options(@By() by: Actor, @Input(bookingOptionsAsked) asked: z.output<typeof bookingOptionsAsked>): Promise<BookingOptions> {
    return bookingOptions(this.deps, by, asked);
  }

  @Post('bookings') @HttpCode(201)
  book(@By() by: Actor, @Input(newBooking) input: NewBooking): Promise<{ order: string; accession: string }> {
    if (!by.roles.some((r) => BOOKS.includes(r))) throw new StepError('NOT_YOUR_ROLE');
    return createBooking(this.deps, by, input);
  }
}
