import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { MarkFindings } from '../order/marking/MarkFindings.js';
import type { MarkedFilm } from '../order/marking/use-marks.js';
import { FileSays } from './FileSays.js';
import { Verdict } from './Verdict.js';
import type { Exposure } from './view-rows.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

type Props = { screen: OrderScreen; film: Exposure; marked: MarkedFilm; marking: boolean; unread: Error | null; onAct: (next: NextAction) => void };

/** What is doubtful, in words; the verdict, always in reach; who was in the room. */
export function JudgeSide({ screen, film, marked, marking, unread, onAct }: Props) {
  const log = screen.next.find((n) => n.action === 'logRoom' && n.on.id === film.visit && n.yours && n.allowed);
  return (
    <>
      <div className="imaging-scroll">
        <Doubts screen={screen} film={film} />
        {marking && <MarkFindings screen={screen} film={film} marked={marked} unread={unread} />}
        <FileSays said={film.said} />
        <h2>{t('People in the room')}</h2>
        <p className="small">{film.people.length > 0 ? `${list(film.people)}.` : t('Nobody was written down.')}</p>
        {log && <Button onPress={() => onAct(log)}>{t('Change who was there')}</Button>}
      </div>
      <Verdict key={film.id} screen={screen} film={film} />
    </>
  );
}

const MARKERS: Record<string, PageSentence> = { L: 'L is seen.', R: 'R is seen.', both: 'Both are seen.' };

function Doubts({ screen, film }: { screen: OrderScreen; film: Exposure }) {
  const held = screen.holds.filter((h) => h.code === 'FILM_OF_OTHER_DOG');
  const marker = film.marker === null ? undefined : MARKERS[film.marker];
  return (
    <section aria-label={t('What was checked')}>
      <h2>{t('{view}, attempt {attempt}', { view: film.viewName, attempt: film.attempt })}</h2>
      {held.map((h) => (
        <p key={h.code + h.on.id} className="mark-remark">
          <b>{h.title}</b> {h.rest}
        </p>
      ))}
      <p className={marker ? 'mark-remark mark-good' : 'mark-remark'}>
        <b>{t('Side marker.')}</b> {marker ? t(marker) : t('None was seen.')}
      </p>
    </section>
  );
}
