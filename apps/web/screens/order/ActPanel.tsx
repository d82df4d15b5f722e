import { useEffect, useRef, useState } from 'react';
import type { ActionName } from '#libs/contracts/actions/all';
import { actionInputs } from '#libs/contracts/actions/all';
import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { useAct } from '../../api/act.js';
import { isFailure } from '../../api/failure.js';
import { Button } from '../../design/Button.js';
import { ActionForm } from './forms/action-form.js';
import { beforeDoing } from './before-doing.js';
import { inTheWay, labelOf, ofWhat } from './next-actions.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { t } from '../../words/t.js';

/** The form of one action, in the page and not over it: the record and "Stop imaging" stay in reach. */
export function ActPanel({ screen, next, start, onClose }: { screen: OrderScreen; next: NextAction; start?: Record<string, unknown>; onClose: () => void }) {
  const panel = useRef<HTMLElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const act = useAct(screen.id);
  const [key] = useState(() => crypto.randomUUID());
  const [seen, setSeen] = useState(screen.version);
  const changed = isFailure(act.error) && act.error.code === 'CHANGED_MEANWHILE';
  useEffect(() => {
    panel.current?.scrollIntoView({ block: 'start' });
    if (!panel.current?.contains(document.activeElement)) head.current?.focus({ preventScroll: true });
  }, []);
  const action = next.action as ActionName;
  const submit = (input: unknown) => {
    // Once what changed has been shown, pressing again decides on the order as it is now.
    const version = changed ? screen.version : seen;
    setSeen(version);
    act.mutate({ action, on: next.on.id, version, key, input }, { onSuccess: onClose });
  };
  const form = { screen, next, start, submit, failure: act.error, busy: act.isPending };
  const because = next.allowed ? [] : inTheWay(screen, next);
  const which = ofWhat(screen, next);
  return (
    <section ref={panel} className="sheet act-panel" aria-labelledby="act-head">
      <div className="act-panel-head">
        <h2 id="act-head" ref={head} tabIndex={-1}>
          {labelOf(screen, next)}
          {which && <span className="beside"> {which}</span>}
        </h2>
        <Button onPress={onClose}>{t('Close')}</Button>
      </div>
      {!next.allowed ? (
        <div className="err">
          <b>{t('Something is missing first.')}</b>
          <ul className="lines">
            {because.map((b) => (
              <li key={b}>{b}</li>
            ))}
          </ul>
        </div>
      ) : hasFields(action) ? (
        <ActionForm action={action} {...form} />
      ) : (
        <EntryForm label={next.label} tries={0} errors={{}} failure={act.error} busy={act.isPending} onSubmit={() => submit({})}>
          <p>{beforeDoing(action)}</p>
        </EntryForm>
      )}
    </section>
  );
}

const hasFields = (action: ActionName) => Object.keys(actionInputs[action].shape).length > 0;
