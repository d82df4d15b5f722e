import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { DayBoard, SearchReply } from '#libs/contracts/screens/board';
import type { OrderScreen } from '#libs/contracts/screens/order';
import type { z } from 'zod';
import type { orderList } from '#libs/contracts/screens/order';
import { get, query } from './client.js';

/** The server tells of what changes (live.ts); this is for a line that is down, and for what time alone changes. */
const NOW_AND_THEN = 60_000;

export const useDayBoard = (day: string | undefined) =>
  useQuery({ queryKey: ['board', day ?? 'today'], queryFn: () => get<DayBoard>(`/day-board${query({ day })}`), refetchInterval: NOW_AND_THEN, placeholderData: keepPreviousData });

export const useSearch = (q: string) =>
  useQuery({ queryKey: ['search', q], queryFn: () => get<SearchReply>(`/search${query({ q })}`), enabled: q.trim().length >= 2, placeholderData: keepPreviousData });

export type OrdersShown = 'open' | 'waiting' | 'all';
export const useOrders = (asked: { show: OrdersShown; q?: string; page?: number }) =>
  useQuery({ queryKey: ['orders', asked], queryFn: () => get<z.infer<typeof orderList>>(`/orders${query(asked)}`), placeholderData: keepPreviousData });

export const orderKey = (order: string) => ['order', order];
export const useOrder = (order: string) =>
  useQuery({ queryKey: orderKey(order), queryFn: () => get<OrderScreen>(`/orders/${order}`), refetchInterval: NOW_AND_THEN });
