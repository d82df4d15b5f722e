import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { OwnerPage, ownerAnswers, ownerAppeal, ownerConsents, ownerEstimate, ownerLanguage, ownerLetterTime, ownerWithdraw } from '#libs/contracts/screens/owner';
import { get, post } from '../../api/client.js';

const key = ['owner'];

export const useOwnerPage = () => useQuery({ queryKey: key, queryFn: () => get<OwnerPage>('/owner'), refetchInterval: 30_000 });

/** Every answer comes back as the whole page, so what the owner sees is what is stored. */
function useTell<Body>(what: string) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: Body) => post<OwnerPage>(`/owner/${what}`, body), onSuccess: (page) => queries.setQueryData(key, page) });
}

export const useTellAnswers = () => useTell<z.input<typeof ownerAnswers>>('answers');
export const useTellEstimate = () => useTell<z.input<typeof ownerEstimate>>('estimate');
export const useTellConsents = () => useTell<z.input<typeof ownerConsents>>('consents');
export const useTellAppeal = () => useTell<z.input<typeof ownerAppeal>>('appeal');
export const useTellWithdrawal = () => useTell<z.input<typeof ownerWithdraw>>('withdraw');
export const useTellTransfer = () => useTell<Record<string, never>>('transfer');
export const useTellLanguage = () => useTell<z.input<typeof ownerLanguage>>('language');
export const useTellLetterTime = () => useTell<z.input<typeof ownerLetterTime>>('letter-time');
