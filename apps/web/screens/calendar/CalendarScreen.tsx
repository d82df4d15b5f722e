import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import type { Calendar, CalendarVisit } from '#libs/contracts/calendar';
import { get, query } from '../../api/client.js';
import { buttonClass } from '../../design/Button.js';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty, Loading } from '../../design/Empty.js';
import { addDays, fullDay, longDay, shortDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { t } from '../../words/t.js';
import { Column } from './Column.js';
import { hoursShown, timeOf } from './grid.js';
import { MoveDialog } from './MoveDialog.js';
import { PIXELS_PER_MINUTE, useMove, type Lane, type Target } from './use-move.js';
import './calendar.css';
import type { SaidOption } from '../../design/Select.js';

type By = 'rooms' | 'operators' | 'week';
const shows: readonly SaidOption<By>[] = [{ id: 'rooms', name: 'Rooms' }, { id: 'operators', name: 'Operators' }, { id: 'week', name: 'Week' }];

/** Who and what is occupied when; a visit that has not begun is moved by dragging, by keyboard or by saying where to. */
export function CalendarScreen() {
  const { day, by = 'rooms' } = useSearch({ from: '/inside/calendar' });
  const navigate = useNavigate({ from: '/calendar' });
  const days = by === 'week' ? 7 : 1;
  const { data: calendar, error } = useQuery({ queryKey: ['calendar', day ?? 'today', days], queryFn: () => get<Calendar>(`/calendar${query({ day, days })}`), refetchInterval: 60_000, placeholderData: keepPreviousData });
  if (!calendar) return error ? <ErrorBar error={error} /> : <Loading what={t('the calendar')} />;
  const first = calendar.days[0]!.day;
  const go = (to: string | undefined) => ({ day: to === calendar.today ? undefined : to, by: by === 'rooms' ? undefined : by });
  return (
    <>
      <div className="head">
        <h1>{by === 'week' ? t('{first} to {last}', { first: shortDay(first), last: fullDay(calendar.days.at(-1)!.day) }) : longDay(first)}</h1>
        <div className="acts">
          <Link to="/calendar" search={go(addDays(first, -days))} className={buttonClass()}>{by === 'week' ? t('Week before') : t('Day before')}</Link>
          <Link to="/calendar" search={go(undefined)} className={buttonClass()}>{t('Today')}</Link>
          <Link to="/calendar" search={go(addDays(first, days))} className={buttonClass()}>{by === 'week' ? t('Week after') : t('Day after')}</Link>
          <CsvButton name={`visits-${first}.csv`} of={t('Visits shown')} head={['Day', 'Time', 'Minutes', 'Room', 'Operator', 'Dog', 'Studies']} rows={calendar.visits.map((v) => [v.day, v.start, v.minutes, v.room?.name ?? null, v.operator?.name ?? null, v.dog, v.studies.join('; ')])} />
        </div>
      </div>
      <ErrorBar error={error} />
      <RadioChoice label={t('Show')} options={shows} value={by} onChange={(to) => void navigate({ search: (old) => ({ ...old, by: to === 'rooms' ? undefined : to }), replace: true })} />
      <Columns key={by} calendar={calendar} by={by} />
    </>
  );
}

function Columns({ calendar, by }: { calendar: Calendar; by: By }) {
  const [target, setTarget] = useState<Target>();
  const back = useRef<string>(undefined);
  const lanes = lanesOf(calendar, by);
  const hours = hoursShown(calendar.from, calendar.to, calendar.visits);
  const open = (to: Target) => {
    back.current = to.visit.visit;
    setTarget(to);
  };
  const move = useMove(lanes, hours, open);
  // The visit may have gone to another column: whoever moved it finds it again under their hand.
  useEffect(() => {
    if (target || !back.current) return;
    document.getElementById(`visit-${back.current}`)?.querySelector('button')?.focus();
    back.current = undefined;
  }, [target]);
  if (lanes.length === 0) return <Empty title={by === 'rooms' ? t('No X-ray room yet') : t('Nobody takes films here yet')}>{t('The manager enters rooms and people under Practice.')}</Empty>;
  const wholeHours = Array.from({ length: (hours.to - hours.from) / 60 + 1 }, (_, i) => hours.from + i * 60);
  return (
    <>
      <p className="small quiet">{t('Drag a visit, or choose it: with Enter to say where to, with the space bar to move it by arrow keys.')}</p>
      <p className="vh" role="status">{move.said}</p>
      <div className="cal" style={{ '--hour': `${60 * PIXELS_PER_MINUTE}px` } as React.CSSProperties}>
        <ol className="cal-hours" aria-hidden="true" style={{ height: (hours.to - hours.from) * PIXELS_PER_MINUTE }}>{wholeHours.map((h) => <li key={h} style={{ top: (h - hours.from) * PIXELS_PER_MINUTE }}>{timeOf(h)}</li>)}</ol>
        {lanes.map((lane, i) => (
          <Column key={lane.key} lane={lane} index={i} hours={hours} move={move} saysRoom={by !== 'rooms'} visits={calendar.visits.filter((v) => isIn(v, lane))} onPress={(visit) => open({ visit, day: visit.day, start: visit.start })} />
        ))}
      </div>
      {target && <MoveDialog calendar={calendar} target={target} onClose={() => setTarget(undefined)} />}
    </>
  );
}

function lanesOf({ days, rooms, operators }: Calendar, by: By): Lane[] {
  const { day, open } = days[0]!;
  if (by === 'week') return days.map((d) => ({ key: d.day, name: shortDay(d.day), ...d, ...(!d.open && { note: t('no visits') }) }));
  const note = !open && { note: t('no visits on this day') };
  if (by === 'rooms') return rooms.map((r) => ({ key: r.id, name: r.name, day, open, room: r.id, ...note }));
  return operators.map((o) => ({ key: o.id, name: o.name, day, open, operator: o.id, note: note ? note.note : o.mayTake.map((m) => m.study).join(', ') }));
}

const isIn = (visit: CalendarVisit, { day, room, operator }: Lane): boolean => visit.day === day && (!room || visit.room?.id === room) && (!operator || visit.operator?.id === operator);
