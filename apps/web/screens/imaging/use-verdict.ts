import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { useAct } from '../../api/act.js';
import { t } from '../../words/t.js';
import type { Exposure } from './view-rows.js';

type Said = 'accept' | 'retake' | 'undecided';

/** A verdict for every study that the film serves, one after the other; each is written on the order as the one before left it. */
export function useVerdict(screen: OrderScreen, film: Exposure) {
  const act = useAct(screen.id);
  const judged = screen.next.filter((n) => n.action === 'judgeView' && film.serves.includes(n.on.id));
  const may = judged.filter((n) => n.yours && n.allowed);
  const give = async (verdict: Said, reasons: string[] = []): Promise<boolean> => {
    let { version } = screen;
    for (const { on } of may) {
      const key = crypto.randomUUID();
      const after = await act.mutateAsync({ action: 'judgeView', on: on.id, version, key, input: { exposure: film.id, verdict, reasons } }).catch(() => null);
      if (!after) return false;
      ({ version } = after);
    }
    return true;
  };
  return { give, busy: act.isPending, error: act.error, mayNot: may.length > 0 ? undefined : whyNot(judged) };
}

function whyNot(judged: readonly NextAction[]): string {
  if (judged.some((n) => !n.yours)) return t('A radiographer or vet accepts this picture, or asks for a retake.');
  return t('The films of this study are sealed or imaging is not yet where pictures are judged; the verdict stays as it is.');
}
