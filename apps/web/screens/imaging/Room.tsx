import { useState, type ReactNode } from 'react';
import type { BoardRow } from '#libs/contracts/screens/board';
import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { asItCame } from '../../film/tone.js';
import type { ToneState } from '../../film/use-look.js';
import { t } from '../../words/t.js';
import { ActPanel } from '../order/ActPanel.js';
import { useMarks } from '../order/marking/use-marks.js';
import { useSavedMarks } from '../order/marking/use-saved-marks.js';
import { isBeingImaged } from '../order/next-actions.js';
import { DogSide } from './DogSide.js';
import { JudgeSide } from './JudgeSide.js';
import { Stage } from './Stage.js';
import { useShownFilm } from './use-shown-film.js';
import { besideFilm, nextRow, viewRows, type Exposure, type ViewRow } from './view-rows.js';
import { inside } from '../../design/format.js';
import { HERE, Told } from '../../words/Told.js';

type Props = { screen: OrderScreen; visit: VisitView; after: BoardRow | undefined; room: { dark: boolean; change: () => void } };

/** The dog, the picture and the verdict, side by side. */
export function Room({ screen, visit, after, room }: Props) {
  const rows = viewRows(screen, visit);
  const films = screen.exposures.filter((e) => e.visit === visit.id && !e.disowned);
  const [doing, setDoing] = useState<NextAction | null>(null);
  const [pointing, setPointing] = useState(false);
  const tone = useState(asItCame);
  const { film, show, arrived } = useShownFilm(films, pointing);
  const side = doing ? <ActPanel key={doing.action + doing.on.id} screen={screen} next={doing} start={startOf(doing, screen, visit, rows, film)} onClose={() => setDoing(null)} /> : null;
  const openFilm = (id: string) => {
    setPointing(false);
    show(id);
  };
  return (
    <div className="imaging-room">
      <DogSide screen={screen} visit={visit} rows={rows} shown={film} after={after} stoppable={isBeingImaged(screen, visit)} onShow={openFilm} onAct={setDoing} room={room} />
      {film ? (
        <FilmInRoom key={film.id} screen={screen} film={film} rows={rows} pointing={pointing} onPoint={() => setPointing(!pointing)} onAct={setDoing} side={side} tone={tone} />
      ) : (
        <>
          <section className="imaging-stage imaging-none" aria-label={t('Picture')}>
            <p>
              <b>{t('There is no picture yet.')}</b> {visit.step === 'sedated' ? t('It shows here as soon as one is taken in.') : t('The dog is at: {step}. Pictures are taken while it is asleep.', { step: inside(visit.stepLabel) })}
            </p>
          </section>
          <section className="imaging-judge" aria-label={t('What is done now')}>
            <div className="imaging-scroll">{side}</div>
          </section>
        </>
      )}
      {arrived && (
        <p className="imaging-arrived" role="status">
          {t('A new picture came: {view}, attempt {attempt}.', { view: arrived.viewName, attempt: arrived.attempt })}{' '}<Button onPress={() => openFilm(arrived.id)}>{t('Show it')}</Button>
        </p>
      )}
    </div>
  );
}

type InRoom = { screen: OrderScreen; film: Exposure; rows: readonly ViewRow[]; pointing: boolean; onPoint: () => void; onAct: (next: NextAction) => void; side: ReactNode; tone: ToneState };

function FilmInRoom({ screen, film, rows, pointing, onPoint, onAct, side, tone }: InRoom) {
  const marked = useMarks(film);
  const marking = film.previewable && film.picture !== null && marked.slots.length > 0 && screen.next.some((n) => n.action === 'markFilm' && n.on.id === film.visit && n.yours && n.allowed);
  const unread = useSavedMarks(screen.id, marking ? film : undefined, marked.change);
  const beside = besideFilm(rows.find((r) => r.view === film.view), film);
  return (
    <>
      {film.previewable ? (
        <Stage screen={screen} film={film} beside={beside?.previewable ? beside : undefined} marked={marking ? marked : undefined} tone={tone} pointing={pointing} onPoint={onPoint} />
      ) : (
        <section className="imaging-stage imaging-none" aria-label={t('Picture')}>
          <p>
            <Told text={t('**This kind of file cannot be shown here.** It is kept whole. Look at it on the X-ray system, or {link}.', { link: HERE })} here={<a href={`/api/orders/${screen.id}/images/${film.image}/file`} download>{t('fetch the file')}</a>} />
          </p>
        </section>
      )}
      <section className="imaging-judge" aria-label={t('Judging this picture')}>
        {side ? <div className="imaging-scroll">{side}</div> : <JudgeSide screen={screen} film={film} marked={marked} marking={marking} unread={unread} onAct={onAct} />}
      </section>
    </>
  );
}

/** Who stood in the room for the film before most likely stands there still; whoever takes the film sees the names and may change them. */
function startOf({ action }: NextAction, screen: OrderScreen, visit: VisitView, rows: readonly ViewRow[], film: Exposure | undefined): Record<string, unknown> | undefined {
  const named = (names: readonly (string | null)[]) => (screen.choices.staff ?? []).filter((s) => names.includes(s.name)).map((s) => s.id);
  if (action === 'logRoom' && film) return { exposure: film.id, people: named(film.people) };
  if (action !== 'takeView') return undefined;
  const before = screen.exposures.findLast((e) => e.visit === visit.id)?.people ?? [visit.operator];
  const view = nextRow(rows)?.view;
  return { people: named(before), ...(view && { view, serves: screen.studies.filter((s) => s.views.some((v) => v.view === view && !v.accepted)).map((s) => s.id) }) };
}
