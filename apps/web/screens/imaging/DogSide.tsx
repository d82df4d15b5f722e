import { Link } from '@tanstack/react-router';
import type { BoardRow } from '#libs/contracts/screens/board';
import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { timeAt, transponder } from '../../design/format.js';
import { useShortcut } from '../../shell/use-shortcut.js';
import { t } from '../../words/t.js';
import { StopImaging } from './StopImaging.js';
import { ViewThread } from './ViewThread.js';
import { nextRow, type Exposure, type ViewRow } from './view-rows.js';
import { Told } from '../../words/Told.js';

type Props = {
  screen: OrderScreen; visit: VisitView; rows: readonly ViewRow[]; shown: Exposure | undefined; after: BoardRow | undefined; stoppable: boolean;
  onShow: (film: string) => void; onAct: (next: NextAction) => void; room: { dark: boolean; change: () => void };
};

/** Which dog, how far, what comes next, and Stop imaging. */
export function DogSide({ screen, visit, rows, shown, after, stoppable, onShow, onAct, room }: Props) {
  const next = nextRow(rows);
  const take = next && takeFor(screen, next);
  const end = !next && rows.every((r) => r.state !== 'waits') ? screen.next.find((n) => n.action === 'endImaging' && n.on.id === visit.id && n.yours && n.allowed) : undefined;
  useShortcut('u', () => take && onAct(take));
  return (
    <section className="imaging-dog" aria-label={t('Dog and views')}>
      <div className="imaging-scroll">
        <WhichDog screen={screen} visit={visit} />
        <ViewThread rows={rows} next={next} shown={shown} onShow={onShow} />
        <div className="stack imaging-next">
          <p>{next ? <Told text={t('Next: **{view}**.', { view: next.name })} /> : rows.some((r) => r.state === 'waits') ? t('Every view is taken. One is still to be judged.') : t('Every view that has to be is accepted.')}</p>
          {screen.arrived.length > 0 && <p role="status">{t('{count, plural, one {A picture has} other {# pictures have}} come from the X-ray machine.', { count: screen.arrived.length })}</p>}
          {take && (
            <Button onPress={() => onAct(take)} shortcut="U">
              {t('Take in a picture')}
            </Button>
          )}
          {end && <Button kind="ink" onPress={() => onAct(end)}>{t('End imaging')}</Button>}
        </div>
        <p className="small imaging-ways">
          <Link to="/orders/$order" params={{ order: screen.id }}>
            {t('Order {order}', { order: screen.accession })}
          </Link>
          <Link to="/">{t('Today')}</Link>
          <button type="button" className="btn-text" onClick={room.change}>
            {room.dark ? t('Light screen') : t('Dark screen')}
          </button>
        </p>
      </div>
      {after && (
        <Link to="/orders/$order/imaging" params={{ order: after.order }} className="btn">
          {t('Next dog: {dog}, {start}', { dog: after.dog, start: after.start })}
        </Link>
      )}
      {stoppable && <StopImaging screen={screen} visit={visit} />}
    </section>
  );
}

/** Of the studies that want the view, one through which this person may take it. */
function takeFor(screen: OrderScreen, next: ViewRow): NextAction | undefined {
  const wanting = screen.studies.filter((s) => s.views.some((v) => v.view === next.view && !v.accepted)).map((s) => s.id);
  return screen.next.find((n) => n.action === 'takeView' && n.yours && wanting.includes(n.on.id));
}

function WhichDog({ screen: { dog, practice }, visit }: { screen: OrderScreen; visit: VisitView }) {
  const chip = dog.identifiers.find((i) => i.until === null);
  const table = visit.scans.findLast((s) => s.place === 'table');
  return (
    <>
      <h1>{dog.callName || dog.name}</h1>
      <p className="small">
        {dog.breed}, {t(dog.sex)}
        {chip && (
          <>
            <br />
            <span className="num val">{transponder(chip.shown)}</span>
          </>
        )}
        <br />
        {table ? table.matches ? t('Scanned at the table {time}', { time: timeAt(table.at, practice.zone) }) : t('Another number was read at the table {time}', { time: timeAt(table.at, practice.zone) }) : t('Not scanned at the table yet')}
      </p>
      <p className="label">
        {[visit.vet && t('Vet {name}', { name: visit.vet }), visit.nurse && t('nurse {name}', { name: visit.nurse })].filter(Boolean).join(', ')}
      </p>
    </>
  );
}
