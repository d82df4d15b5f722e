import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { t } from '../../words/t.js';
import { useStop } from './use-stop.js';

/** Always there while a dog is being imaged; one touch, for anybody, and no reason is asked. */
export function StopBar({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const { stop, words, error } = useStop(screen, visit);
  const name = screen.dog.callName || screen.dog.name;
  return (
    <div className="stop-bar noprint">
      <div>
        <p>
          <b>{t('Anybody may stop, at any time, without a reason.')}</b>
          <br />
          <span className="quiet small">{t('Works without network. Missing views are sorted out later; {dog} only needs to wake.', { dog: name })}</span>
        </p>
        <ErrorBar error={error} />
      </div>
      <Button onPress={stop}>{words}</Button>
    </div>
  );
}
