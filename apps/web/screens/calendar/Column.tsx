import type { CSSProperties } from 'react';
import type { CalendarVisit } from '#libs/contracts/calendar';
import { list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { minutesOf, sideBySide, timeOf, type Hours } from './grid.js';
import { PIXELS_PER_MINUTE, type Ghost, type Lane, type useMove } from './use-move.js';

interface Props {
  lane: Lane;
  index: number;
  visits: readonly CalendarVisit[];
  hours: Hours;
  move: ReturnType<typeof useMove>;
  /** In a week a column is a day, and a visit says its room. */
  saysRoom: boolean;
  onPress: (visit: CalendarVisit) => void;
}

export function Column({ lane, index, visits, hours, move, saysRoom, onPress }: Props) {
  const ghost = move.ghost?.lane === index ? move.ghost : undefined;
  return (
    <section className={lane.open ? 'cal-column' : 'cal-column cal-closed'} aria-label={lane.name}>
      <h2>{lane.name}</h2>
      {lane.note && <p className="label">{lane.note}</p>}
      <ul data-lane={index} style={{ height: (hours.to - hours.from) * PIXELS_PER_MINUTE }}>
        {sideBySide(visits).map(({ visit, lane: at, lanes }) => (
          <li key={visit.visit} id={`visit-${visit.visit}`} style={{ ...placed(minutesOf(visit.start), visit.minutes, hours), insetInlineStart: `${(100 * at) / lanes}%`, inlineSize: `${100 / lanes}%` }}>
            <button
              type="button"
              className={move.ghost?.visit.visit === visit.visit ? 'cal-visit cal-held' : 'cal-visit'}
              data-movable={visit.movable || undefined}
              {...move.pointer(visit)}
              onKeyDown={move.keys(visit, index)}
              onClick={() => { if (!move.dragged) onPress(visit); }}
            >
              <b className="num">{visit.start}</b> <b>{visit.dog}</b>
              <span className="label">{list(visit.studies)}</span>
              <span className="label">{[saysRoom ? visit.room?.name : visit.operator?.name, visit.movable ? '' : visit.step].filter(Boolean).join(' · ')}</span>
            </button>
          </li>
        ))}
        {ghost && <Shadow ghost={ghost} hours={hours} />}
      </ul>
      {visits.length === 0 && <p className="vh">{lane.open ? t('No visit.') : t('Closed.')}</p>}
    </section>
  );
}

/** Seen only; what it says is told by the status line. */
const Shadow = ({ ghost, hours }: { ghost: Ghost; hours: Hours }) => (
  <li aria-hidden="true" className="cal-shadow" style={{ ...placed(ghost.start, ghost.visit.minutes, hours), insetInlineStart: 0, inlineSize: '100%' }}>
    <b className="num">{timeOf(ghost.start)}</b> {ghost.visit.dog}
  </li>
);

const placed = (start: number, minutes: number, hours: Hours): CSSProperties => ({ top: (start - hours.from) * PIXELS_PER_MINUTE, height: minutes * PIXELS_PER_MINUTE });
