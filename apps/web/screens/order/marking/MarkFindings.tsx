import { useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { useAct } from '../../../api/act.js';
import { Button } from '../../../design/Button.js';
import { ErrorBar } from '../../../design/Notice.js';
import { timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { estimatesOf, remarksOn } from './mark-words.js';
import type { Exposure, MarkedFilm } from './use-marks.js';

type Props = { screen: OrderScreen; film: Exposure; marked: MarkedFilm };
type Opened = { unread: Error | null };

/** Beside the picture: what is doubtful, in words, and the room's own estimate. It changes while a point is dragged. */
export function MarkFindings({ screen, film, marked, unread }: Props & Opened) {
  const { found, missing, dirty, draft } = marked;
  const remarks = found ? remarksOn(found) : [];
  const estimates = found ? estimatesOf(found) : [];
  const { opened } = draft;
  return (
    <section className="mark-findings" aria-label={t('What the points say')}>
      <h3>{t('What the picture shows')}</h3>
      {!found && <p className="quiet small">{t('Set points on the picture: three or more on a rim make its circle.')}</p>}
      {found?.problems.map((p) => (
        <p key={p.code + t.said(p.said)} className="err" data-code={p.code}>
          <b>{t('This cannot be.')}</b> {t.said(p.said)}
        </p>
      ))}
      {remarks.map((r) => (
        <p key={r.head + r.rest} className={r.good ? 'mark-remark mark-good' : 'mark-remark'}>
          <b>{r.head}</b> {r.rest}
        </p>
      ))}
      {missing.length > 0 && <p className="label">{missing.join(' ')}</p>}
      {estimates.length > 0 && found?.problems.length === 0 && (
        <>
          <h3>
            {t('Room estimate')}{' '}<span className="beside">{t('stays in this room')}</span>
          </h3>
          <dl className="mark-estimates">
            {estimates.map((e) => (
              <div key={e.what + e.side}>
                <dt>
                  {t('{what}, {side, select, left {left} other {right}}, may be', { what: e.what, side: e.side })}
                </dt>
                <dd>
                  <data value={e.value.toFixed(4)}>{e.words}</data>
                  <span className="label">{e.more}</span>
                </dd>
              </div>
            ))}
          </dl>
          <p className="label">{t('From these points alone, 95 of 100 times. The reader decides.')}</p>
        </>
      )}
      <KeepPoints screen={screen} film={film} marked={marked} />
      {opened && (
        <p className="label">
          {t('{begun, select, yes {Begun from the points} other {Points}} kept at {time} by {name}. “Remove all” starts anew. Before the films are sealed they are shown only to those who may set points here.', { begun: dirty ? 'yes' : 'no', time: timeAt(opened.at, screen.practice.zone), name: opened.by })}
        </p>
      )}
      {unread && (
        <p className="label" role="status">
          {t('The points that were kept on this film could not be read. They are still kept. Reload the page, or set new ones.')}
        </p>
      )}
    </section>
  );
}

function KeepPoints({ screen, film, marked }: Props) {
  const { draft, change, marks, found, dirty } = marked;
  const act = useAct(screen.id);
  const [early, setEarly] = useState(false);
  const wrong = (found?.problems[0] && t.said(found.problems[0].said)) ?? (marks.length === 0 ? t('Nothing is marked yet. Set points on the picture first.') : undefined);
  const keep = () => {
    setEarly(wrong !== undefined);
    if (wrong !== undefined) return;
    const set = draft.set;
    act.mutate({ action: 'markFilm', on: film.visit, version: screen.version, key: crypto.randomUUID(), input: { exposure: film.id, marks } }, { onSuccess: () => change({ do: 'kept', set }) });
  };
  return (
    <>
      <Button onPress={keep}>{act.isPending ? t('Keeping …') : dirty || marks.length === 0 ? t('Keep the points') : t('Points are kept')}</Button>
      <ErrorBar error={act.error} />
      {early && wrong && (
        <p className="err" role="alert">
          <b>{t('Not kept.')}</b> {wrong}
        </p>
      )}
    </>
  );
}
