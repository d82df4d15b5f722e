import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { useDayBoard } from '../../api/board.js';
import { buttonClass } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { addDays, longDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { useShortcut } from '../../shell/use-shortcut.js';
import { Board } from './Board.js';
import { Counts, type Only } from './Counts.js';
import { Tasks } from './Tasks.js';

export function DayBoardScreen() {
  const { day } = useSearch({ from: '/inside/' });
  const { data: board, error } = useDayBoard(day);
  const [only, setOnly] = useState<Only>('all');
  const navigate = useNavigate();
  useShortcut('b', () => void navigate({ to: '/book', search: {} }));
  if (!board) return error ? <ErrorBar error={error} /> : <Loading what="the day" />;
  const rows = board.rows.filter((r) => only === 'all' || (only === 'mine' ? r.waitsForMe : r.road.hold !== null));
  return (
    <>
      <ErrorBar error={error}>
        <p className="small">Below is the day as it was last seen.</p>
      </ErrorBar>
      <div className="head">
        <h1>{longDay(board.day)}</h1>
        <Counts counts={board.counts} only={only} onOnly={setOnly} />
        <div className="acts">
          <Link to="/" search={{ day: addDays(board.day, -1) }} className={buttonClass()}>
            Day before
          </Link>
          {board.day !== board.today && (
            <Link to="/" search={{}} className={buttonClass()}>
              Today
            </Link>
          )}
          <Link to="/" search={{ day: addDays(board.day, 1) }} className={buttonClass()}>
            Day after
          </Link>
          <Link to="/book" search={{}} className={buttonClass('ink')}>
            Book a visit <kbd aria-hidden="true">B</kbd>
          </Link>
          <Link to="/waiting" search={{}} className={buttonClass()}>
            Waiting list
          </Link>
          <a className={buttonClass()} href={`/api/day-sheet.pdf?day=${board.day}`} target="_blank" rel="noreferrer">
            Print day sheet
          </a>
        </div>
      </div>
      {board.rows.length > 0 ? (
        <Board board={board} rows={rows} />
      ) : (
        <div className="sheet">
          <Empty title={`No visits on ${longDay(board.day)}`} actions={<Link to="/book" search={{}} className={buttonClass('ink')}>Book a visit</Link>}>
            Nothing has been booked for this day.
          </Empty>
        </div>
      )}
      <Tasks tasks={board.tasks} />
    </>
  );
}
