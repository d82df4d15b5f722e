import { useQuery } from '@tanstack/react-query';
import type { MailScreen, MailboxScreen } from '#libs/contracts/screens/board';
import { get } from '../../api/client.js';

export const useMailbox = () => useQuery({ queryKey: ['mailbox'], queryFn: () => get<MailboxScreen>('/mailbox'), refetchInterval: 5_000 });
export const useMail = (id: string) => useQuery({ queryKey: ['mailbox', id], queryFn: () => get<MailScreen>(`/mailbox/${id}`), staleTime: Infinity });
