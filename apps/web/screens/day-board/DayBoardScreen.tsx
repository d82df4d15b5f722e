import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { useDayBoard } from '../../api/board.js';
import { buttonClass } from '../../design/Button.js';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty, Loading } from '../../design/Empty.js';
import { addDays, longDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { useShortcut } from '../../shell/use-shortcut.js';
import { t } from '../../words/t.js';
import { Board } from './Board.js';
import { Counts, type Only } from './Counts.js';
import { Tasks } from './Tasks.js';

export function DayBoardScreen() {
  const { day } = useSearch({ from: '/inside/' });
  const { data: board, error } = useDayBoard(day);
  const [only, setOnly] = useState<Only>('all');
  const navigate = useNavigate();
  useShortcut('b', () => void navigate({ to: '/book', search: {} }));
  if (!board) return error ? <ErrorBar error={error} /> : <Loading what={t('the day')} />;
  const rows = board.rows.filter((r) => only === 'all' || (only === 'mine' ? r.waitsForMe : r.road.hold !== null));
  return (
    <>
      <ErrorBar error={error}>
        <p className="small">{t('Below is the day as it was last seen.')}</p>
      </ErrorBar>
      <div className="head">
        <h1>{longDay(board.day)}</h1>
        <Counts counts={board.counts} only={only} onOnly={setOnly} />
        <div className="acts">
          <Link to="/" search={{ day: addDays(board.day, -1) }} className={buttonClass()}>
            {t('Day before')}
          </Link>
          {board.day !== board.today && (
            <Link to="/" search={{}} className={buttonClass()}>
              {t('Today')}
            </Link>
          )}
          <Link to="/" search={{ day: addDays(board.day, 1) }} className={buttonClass()}>
            {t('Day after')}
          </Link>
          <Link to="/book" search={{}} className={buttonClass('ink')}>
            {t('Book a visit')}{' '}<kbd aria-hidden="true">B</kbd>
          </Link>
          <Link to="/waiting" search={{}} className={buttonClass()}>
            {t('Waiting list')}
          </Link>
          {board.unmatched > 0 && (
            <Link to="/unmatched" className={buttonClass()}>
              {t('{unmatched, plural, one {# image} other {# images}} without an order', { unmatched: board.unmatched })}
            </Link>
          )}
          {board.readingsLeft > 0 && (
            <Link to="/results-in" className={buttonClass()}>
              {t('{left, plural, one {# reading} other {# readings}} that led nowhere', { left: board.readingsLeft })}
            </Link>
          )}
          <a className={buttonClass()} href={`/api/day-sheet.pdf?day=${board.day}`} target="_blank" rel="noreferrer">
            {t('Print day sheet')}
          </a>
          <CsvButton
            name={`day-${board.day}.csv`}
            of={t('Visits shown')}
            head={['Time', 'Room', 'Dog', 'Breed', 'Number', 'Owner', 'Phone', 'Order', 'Studies', 'Staff', 'Waits for']}
            rows={rows.map((r) => [r.start, r.room, r.dog, r.breed, r.transponder, r.owner, r.phone, r.accession, r.studies.join('; '), r.staff.join('; '), r.road.hold?.title ?? null])}
          />
        </div>
      </div>
      {board.rows.length > 0 ? (
        <Board board={board} rows={rows} />
      ) : (
        <div className="sheet">
          <Empty title={t('No visits on {day}', { day: longDay(board.day) })} actions={<Link to="/book" search={{}} className={buttonClass('ink')}>{t('Book a visit')}</Link>}>
            {t('Nothing has been booked for this day.')}
          </Empty>
        </div>
      )}
      <Tasks tasks={board.tasks} />
    </>
  );
}
