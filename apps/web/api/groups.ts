import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { GroupBooking, GroupOptions, groupOptionsAsked, newGroupBooking } from '#libs/contracts/group-booking';
import { get, post } from './client.js';

export const useGroupOptions = (asked: z.input<typeof groupOptionsAsked> | null) =>
  useQuery({ queryKey: ['group-options', asked], queryFn: () => post<GroupOptions>('/groups/options', asked), enabled: asked !== null, placeholderData: keepPreviousData });

export const useGroups = () => useQuery({ queryKey: ['groups'], queryFn: () => get<{ rows: GroupBooking[] }>('/groups') });
export const useGroup = (id: string) => useQuery({ queryKey: ['groups', id], queryFn: () => get<GroupBooking>(`/groups/${id}`) });

export function useBookGroup() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: z.input<typeof newGroupBooking>) => post<GroupBooking>('/groups', body),
    onSettled: () => {
      for (const key of ['board', 'orders', 'group-options', 'groups']) void queries.invalidateQueries({ queryKey: [key] });
    },
  });
}
