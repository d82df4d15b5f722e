import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { MailScreen, MailboxScreen } from '#libs/contracts/screens/board';
import { get, query } from '../../api/client.js';

export const useMailbox = (page: number) => useQuery({ queryKey: ['mailbox', 'list', page], queryFn: () => get<MailboxScreen>(`/mailbox${query({ page })}`), refetchInterval: 5_000, placeholderData: keepPreviousData });
export const useMail = (id: string) => useQuery({ queryKey: ['mailbox', id], queryFn: () => get<MailScreen>(`/mailbox/${id}`), staleTime: Infinity });
