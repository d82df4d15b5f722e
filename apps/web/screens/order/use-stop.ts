import { useState } from 'react';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { useAct } from '../../api/act.js';
import { t } from '../../words/t.js';

/** One touch, for anybody, and no reason is asked; kept on the device where there is no network. */
export function useStop(screen: OrderScreen, visit: VisitView) {
  const act = useAct(screen.id);
  const [key] = useState(() => crypto.randomUUID());
  return { error: act.error, words: act.isPending ? t('Stopping …') : t('Stop imaging'), stop: () => act.mutate({ action: 'stopImaging', on: visit.id, version: screen.version, key, input: {} }) };
}
