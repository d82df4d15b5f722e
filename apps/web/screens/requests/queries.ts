import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { DataRequestList } from '#libs/contracts/requests';
import { get, post } from '../../api/client.js';

const key = ['requests'];

export const useRequests = () => useQuery({ queryKey: key, queryFn: () => get<DataRequestList>('/requests') });

/** Whatever is done about a request, the whole register comes back. */
export function useOnRequests(path: string) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: unknown) => post<DataRequestList>(`/requests${path}`, body), onSuccess: (list) => queries.setQueryData(key, list) });
}

/** A zip is fetched by the browser itself; what was done is read again after it. */
export function useReload() {
  const queries = useQueryClient();
  return () => setTimeout(() => void queries.invalidateQueries({ queryKey: key }), 1500);
}
