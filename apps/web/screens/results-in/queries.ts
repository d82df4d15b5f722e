import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { DeliveryAnswer, FilePreview, KeyMade, newKey, ResultsFile, resultsFileTaken, ResultsInScreen, setAsideReading } from '#libs/contracts/results-in';
import { get, post, query } from '../../api/client.js';
import { keepFirstPage } from '../../api/paged.js';

const KEY = ['results-in'];
/** Whoever also leads the scheme looks with the lead's eyes on the scheme's page. */
const at = (path: string, lead: boolean): string => `/results-in${path}${lead ? '?as=lead' : ''}`;

export const useResultsIn = (lead: boolean, page: number) =>
  useQuery({ queryKey: [...KEY, lead, page], queryFn: () => get<ResultsInScreen>(`/results-in${query({ page, as: lead ? 'lead' : undefined })}`), refetchInterval: 30_000, placeholderData: keepPreviousData });

export const usePreview = (lead: boolean) => useMutation({ mutationFn: (file: ResultsFile) => post<FilePreview>(at('/preview', lead), file) });

export function useTake(lead: boolean) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (file: z.input<typeof resultsFileTaken>) => post<DeliveryAnswer>(at('/take', lead), file),
    // What was taken shows at its orders and packages.
    onSuccess: () => void queries.invalidateQueries({ predicate: ({ queryKey: [first] }) => first !== 'me' }),
  });
}

export function useMakeKey(lead: boolean) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: z.input<typeof newKey>) => post<KeyMade>(at('/keys', lead), body), onSuccess: () => void queries.invalidateQueries({ queryKey: KEY }) });
}

/** Both answer with the first page as it is then. */
function useChange<What>(lead: boolean, send: (what: What) => Promise<ResultsInScreen>) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: send, onSuccess: (screen) => keepFirstPage(queries, [...KEY, lead], screen) });
}

export const useEndKey = (lead: boolean) => useChange(lead, (key: string) => post<ResultsInScreen>(at(`/keys/${key}/end`, lead)));
export const useSetAside = (lead: boolean) => useChange(lead, ({ reading, body }: { reading: string; body: z.input<typeof setAsideReading> }) => post<ResultsInScreen>(at(`/left/${reading}/set-aside`, lead), body));
