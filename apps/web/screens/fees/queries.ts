import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { BillLineRow, BillPreview, BillRow, CentreBill, newCentreBill, UnbilledRow } from '#libs/contracts/centre-bills';
import type { FeeList, GroupFees, OrderFees } from '#libs/contracts/fees';
import type { z } from 'zod';
import { get, post, query } from '../../api/client.js';

export type FeesShown = 'open' | 'uncharged' | 'all';
type List<Row> = { currency: string; rows: Row[]; more: boolean };

export const useFees = (asked: { show: FeesShown; q?: string; page?: number }) => useQuery({ queryKey: ['fees', asked], queryFn: () => get<FeeList>(`/fees${query(asked)}`), placeholderData: keepPreviousData });
export const useOrderFees = (order: string) => useQuery({ queryKey: ['order-fees', order], queryFn: () => get<OrderFees>(`/orders/${order}/fees`) });
export const useGroupFees = (group: string) => useQuery({ queryKey: ['fees', 'group', group], queryFn: () => get<GroupFees>(`/groups/${group}/fees`) });

/** Whatever is written down, the whole account comes back. */
export function useWriteFee(order: string, what: string) {
  const queries = useQueryClient();
  const keep = (all: OrderFees) => {
    queries.setQueryData(['order-fees', order], all);
    void queries.invalidateQueries({ queryKey: ['fees'] });
    // A mail has mostly left by then.
    setTimeout(() => void queries.invalidateQueries({ queryKey: ['order-fees', order] }), 2_500);
  };
  return useMutation({ mutationFn: (body: object) => post<OrderFees>(`/orders/${order}/fees/${what}`, body), onSuccess: keep });
}

export const useBills = (page: number) => useQuery({ queryKey: ['bills', 'list', page], queryFn: () => get<List<BillRow>>(`/centre-bills${query({ page })}`), placeholderData: keepPreviousData });
export const useBillLines = (show: 'unmatched' | 'disputed', page: number) => useQuery({ queryKey: ['bills', 'lines', show, page], queryFn: () => get<List<BillLineRow>>(`/centre-bills/lines${query({ show, page })}`), placeholderData: keepPreviousData });
export const useUnbilled = (page: number) => useQuery({ queryKey: ['bills', 'unbilled', page], queryFn: () => get<List<UnbilledRow>>(`/centre-bills/unbilled${query({ page })}`), placeholderData: keepPreviousData });
export const useBill = (bill: string) => useQuery({ queryKey: ['bills', 'one', bill], queryFn: () => get<CentreBill>(`/centre-bills/${bill}`) });
export const usePreview = () => useMutation({ mutationFn: (body: { centre: string; csv: string }) => post<BillPreview>('/centre-bills/preview', body) });

function useBillChange<Body>(path: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: Body) => post<CentreBill>(`/centre-bills${path}`, body),
    onSuccess: (bill) => {
      void queries.invalidateQueries({ queryKey: ['bills'] });
      queries.setQueryData(['bills', 'one', bill.id], bill);
    },
  });
}
export const useEnterBill = () => useBillChange<z.input<typeof newCentreBill>>('');
export const useSayOf = (bill: string, line?: string) => useBillChange<object>(`/${bill}${line ? `/lines/${line}` : ''}/said`);
