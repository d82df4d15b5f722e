import type { BoardRow, DayBoard } from '#libs/contracts/screens/board';
import { timeAt } from '../../design/format.js';
import { StepNames } from '../../design/Thread.js';
import { t } from '../../words/t.js';
import { VisitRow } from './VisitRow.js';

/** The day by time; where the line of "now" runs, the day has come so far. */
export function Board({ board, rows }: { board: DayBoard; rows: readonly BoardRow[] }) {
  const now = timeAt(board.now, board.zone);
  const isToday = board.day === board.today;
  const firstLater = rows.findIndex((r) => r.start > now);
  const nowAt = !isToday ? -1 : firstLater < 0 ? rows.length : firstLater;
  const nowRow = (
    <tr key="now" className="now-line">
      <td colSpan={4}>{t('{time} now', { time: now })}</td>
    </tr>
  );
  return (
    <table className="board">
      <caption className="vh">{t('Visits of the day by time, each with its steps and the first hold')}</caption>
      <thead>
        <tr>
          <th scope="col" className="label">
            {t('Time')}
          </th>
          <th scope="col" className="label">
            {t('Dog')}
          </th>
          <th scope="col" className="label">
            {t('Studies')}
          </th>
          <th scope="col">
            <StepNames names={longest(rows)} />
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.flatMap((r, i) => [...(i === nowAt ? [nowRow] : []), <VisitRow key={r.visit} row={r} />])}
        {nowAt === rows.length && nowRow}
      </tbody>
    </table>
  );
}

const longest = (rows: readonly BoardRow[]) => rows.reduce<string[]>((names, r) => (r.road.knots.length > names.length ? r.road.knots.map((k) => k.name) : names), []);
