import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { t } from '../../words/t.js';
import { useStop } from '../order/use-stop.js';

export function StopImaging({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const { stop, words, error } = useStop(screen, visit);
  return (
    <div className="imaging-stop">
      <ErrorBar error={error} />
      <Button onPress={stop}>{words}</Button>
      <p className="label">{t('Anybody, no reason needed. Works without network.')}</p>
    </div>
  );
}
