import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { Keys, newKey, newWebhook, Webhooks } from '#libs/contracts/integrations';
import { post } from '../../api/client.js';
import { useOwnPage } from './queries.js';

export const useKeys = () => useOwnPage<Keys, z.input<typeof newKey>>('keys', 'keys');

export const useWebhooks = () => useOwnPage<Webhooks, z.input<typeof newWebhook>>('webhooks', 'webhooks');

/** A new secret, an end, or a call once more; the page comes back each time. */
export function useChangeWebhooks() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (change: string) => post<Webhooks>(`/practice/webhooks/${change}`), onSuccess: (page) => queries.setQueryData(['practice', 'webhooks'], page) });
}

export function useEndKey() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (key: string) => post<Keys>(`/practice/keys/${key}/end`), onSuccess: (page) => queries.setQueryData(['practice', 'keys'], page) });
}
