import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { BookingOptions, booked, bookingOptionsAsked, newBooking } from '#libs/contracts/booking';
import { post } from './client.js';

export const useBookingOptions = (asked: z.input<typeof bookingOptionsAsked> | null) =>
  useQuery({ queryKey: ['booking-options', asked], queryFn: () => post<BookingOptions>('/booking/options', asked), enabled: asked !== null, placeholderData: keepPreviousData });

export function useBook() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: z.input<typeof newBooking>) => post<z.infer<typeof booked>>('/bookings', body),
    onSettled: () => {
      void queries.invalidateQueries({ queryKey: ['board'] });
      void queries.invalidateQueries({ queryKey: ['orders'] });
      void queries.invalidateQueries({ queryKey: ['booking-options'] });
    },
  });
}
