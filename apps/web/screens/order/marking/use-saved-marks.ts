import { useEffect } from 'react';
import { useQuery } from '@tanstack/react-query';
import type { SavedMarks } from '#libs/contracts/screens/marks';
import { get } from '../../../api/client.js';
import type { Exposure, MarkedFilm } from './use-marks.js';

/** Opens the editor with what was kept last, by whomever; asked for again whenever points were kept. */
export function useSavedMarks(order: string, film: Exposure | undefined, change: MarkedFilm['change']) {
  const { data, error } = useQuery({
    queryKey: ['saved-marks', order, film?.id, film?.marked.length],
    queryFn: () => get<SavedMarks>(`/orders/${order}/exposures/${film!.id}/marks`),
    enabled: film !== undefined && film.marked.length > 0,
    staleTime: Infinity,
    gcTime: 0,
  });
  const saved = data?.saved;
  useEffect(() => {
    if (saved) change({ do: 'open', saved });
  }, [saved, change]);
  return error;
}
