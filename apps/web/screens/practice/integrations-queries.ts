import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import { TEST_EVENT, type Keys, type newKey, type newWebhook, type Webhooks } from '#libs/contracts/integrations';
import { post } from '../../api/client.js';
import { useOwnPage } from './queries.js';

export const useKeys = () => useOwnPage<Keys, z.input<typeof newKey>>('keys', 'keys', { kept: (page) => ({ ...page, made: null }) });

export const useWebhooks = () => useOwnPage<Webhooks, z.input<typeof newWebhook>>('webhooks', 'webhooks', { goesOn: ({ deliveries }) => deliveries.some(isUnderWay), kept: withoutSecret });

const withoutSecret = (page: Webhooks): Webhooks => ({ ...page, secret: null });
/** A test call that somebody watches. */
const isUnderWay = ({ event, state }: Webhooks['deliveries'][number]) => event === TEST_EVENT && (state === 'waiting' || state === 'sending');

/** A new secret, a test, an end, or a call once more; the page comes back each time. */
export function useChangeWebhooks() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (change: string) => post<Webhooks>(`/practice/webhooks/${change}`), onSuccess: (page) => queries.setQueryData(['practice', 'webhooks'], withoutSecret(page)) });
}

export function useEndKey() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (key: string) => post<Keys>(`/practice/keys/${key}/end`), onSuccess: (page) => queries.setQueryData(['practice', 'keys'], page) });
}
