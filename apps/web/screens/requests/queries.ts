import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { DataRequestList } from '#libs/contracts/requests';
import { get, post, query } from '../../api/client.js';
import { keepFirstPage } from '../../api/paged.js';

const key = 'requests';

export const useRequests = (page: number) => useQuery({ queryKey: [key, page], queryFn: () => get<DataRequestList>(`/requests${query({ page })}`), placeholderData: keepPreviousData });

/** Whatever is done about a request, the whole register comes back. */
export function useOnRequests(path: string) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: unknown) => post<DataRequestList>(`/requests${path}`, body), onSuccess: (list) => keepFirstPage(queries, [key], list) });
}

/** Making a zip is written down; it is read again after it. */
export function useReload() {
  const queries = useQueryClient();
  return () => void queries.invalidateQueries({ queryKey: [key] });
}
