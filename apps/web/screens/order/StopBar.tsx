import { useState } from 'react';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { useAct } from '../../api/act.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';

/** Always there while a dog is being imaged; one touch, for anybody, and no reason is asked. */
export function StopBar({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const act = useAct(screen.id);
  const [key] = useState(() => crypto.randomUUID());
  const name = screen.dog.callName || screen.dog.name;
  return (
    <div className="stop-bar noprint">
      <div>
        <p>
          <b>Anybody may stop, at any time, without a reason.</b>
          <br />
          <span className="quiet small">Works without network. Missing views are sorted out later; {name} only needs to wake.</span>
        </p>
        <ErrorBar error={act.error} />
      </div>
      <Button onPress={() => act.mutate({ action: 'stopImaging', on: visit.id, version: screen.version, key, input: {} })}>{act.isPending ? 'Stopping …' : 'Stop imaging'}</Button>
    </div>
  );
}
