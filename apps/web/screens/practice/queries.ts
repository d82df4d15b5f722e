import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { PracticeScreen, newReader } from '#libs/contracts/register';
import { get, post } from '../../api/client.js';

const key = ['practice'];

export const usePractice = () => useQuery({ queryKey: key, queryFn: () => get<PracticeScreen>('/practice') });

/** Whatever is added, the whole register comes back, with what is still missing. */
export function useAdd(path: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: unknown) => post<PracticeScreen>(`/practice${path}`, body),
    onSuccess: (screen) => {
      queries.setQueryData(key, screen);
      void queries.invalidateQueries({ queryKey: ['booking-options'] });
    },
  });
}

/** A reader belongs to the centre; this register only hears that it was done. */
export const useAddReader = (centre: string) => useMutation({ mutationFn: (body: z.output<typeof newReader>) => post<unknown>(`/practice/centres/${centre}/readers`, body) });
