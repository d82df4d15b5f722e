import { keepPreviousData, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { Calendar, MoveLook } from '#libs/contracts/calendar';
import { useAct } from '../../api/act.js';
import { post } from '../../api/client.js';
import { Button, buttonClass } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { Dialog } from '../../design/Dialog.js';
import { Loading } from '../../design/Empty.js';
import { longDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { t } from '../../words/t.js';
import { STEP, minutesOf, timeOf } from './grid.js';
import type { Target } from './use-move.js';
import { Told } from '../../words/Told.js';

/** Where a visit goes and with whom, or why that cannot be; the same by dragging, by keyboard and by hand. */
export function MoveDialog({ calendar, target, onClose }: { calendar: Calendar; target: Target; onClose: () => void }) {
  const { visit } = target;
  const [to, setTo] = useState<Omit<Target, 'visit'>>({ day: target.day, start: target.start, ...(target.room && { room: target.room }), ...(target.operator && { operator: target.operator }) });
  const [key] = useState(() => crypto.randomUUID());
  const queries = useQueryClient();
  const { mutate, isPending, error: refused } = useAct(visit.order);
  const stays = to.day === visit.day && to.start === visit.start && (to.room ?? visit.room?.id) === visit.room?.id && (to.operator ?? visit.operator?.id) === visit.operator?.id;
  const asks = visit.movable && !stays;
  const look = useQuery({ queryKey: ['calendar-look', visit.visit, to], queryFn: () => post<MoveLook>('/calendar/look', { visit: visit.visit, ...to }), enabled: asks, placeholderData: keepPreviousData, staleTime: 0 });
  const slot = asks ? look.data?.slot : null;
  const go = () => {
    if (!slot || !look.data || isPending) return;
    const input = { day: slot.day, start: slot.start, minutes: slot.minutes, room: slot.room.id, operator: slot.operator.id, nurse: slot.nurse.id, vet: slot.vet.id };
    mutate({ action: 'book', on: visit.visit, version: look.data.version, key, input }, { onSuccess: () => { void queries.invalidateQueries({ queryKey: ['calendar'] }); onClose(); } });
  };
  return (
    <Dialog title={visit.movable ? t('Move {dog}', { dog: visit.dog }) : visit.dog} isOpen onClose={onClose}>
      <p>
        {t('{day}, {start}, {minutes} minutes. {where}.', { day: longDay(visit.day), start: visit.start, minutes: visit.minutes, where: [visit.room?.name, visit.operator && t('films by {name}', { name: visit.operator.name })].filter(Boolean).join(', ') })}
      </p>
      {visit.movable ? (
        <>
          <div className="cal-to">
            <DateField label={t('Day')} value={to.day} onChange={(day) => day && setTo({ ...to, day })} />
            <Select label={t('Time')} value={to.start} onChange={(start) => start && setTo({ ...to, start })} options={times(calendar)} />
            <Select label={t('Room')} value={to.room ?? ANY} onChange={(room) => setTo(pinned(to, 'room', room))} options={[{ id: ANY, name: t('the same if it is free') }, ...calendar.rooms]} />
            <Select label={t('Films by')} value={to.operator ?? ANY} onChange={(operator) => setTo(pinned(to, 'operator', operator))} options={[{ id: ANY, name: t('the same if free') }, ...calendar.operators.map(({ id, name, mayTake }) => ({ id, name, ...(mayTake.length > 0 && { hint: t('accredited: {studies}', { studies: mayTake.map((m) => m.study).join(', ') }) }) }))]} />
          </div>
          <div role="status" className="cal-answer">
            {stays && <p className="quiet">{t('This is where the visit stands now.')}</p>}
            {asks && look.isPending && <Loading what={t('whether that can be')} />}
            {asks && look.data?.problems.map((p) => <p key={p} className="why"><b>{p}</b></p>)}
            {slot && (
              <p>
                <Told text={t('{day} at **{start}**: {room}, films by {operator}, nurse {nurse}, vet {vet}. The owner gets a new confirmation; answers and signatures stay.', { day: longDay(slot.day), start: slot.start, room: slot.room.name, operator: slot.operator.name, nurse: slot.nurse.name, vet: slot.vet.name })} strong="num" />
              </p>
            )}
          </div>
          <ErrorBar error={look.error ?? refused} />
        </>
      ) : (
        <p>{t('{step}. A visit that has begun stays where it is.', { step: visit.step })}</p>
      )}
      <div className="acts">
        {slot && (
          <Button kind="ink" onPress={go}>
            {t('Move it there')}
          </Button>
        )}
        <Link to="/orders/$order" params={{ order: visit.order }} className={buttonClass()}>
          {t('Open the order')}
        </Link>
      </div>
    </Dialog>
  );
}

const ANY = 'any';

function pinned(to: Omit<Target, 'visit'>, what: 'room' | 'operator', id: string | undefined): Omit<Target, 'visit'> {
  const { [what]: _, ...rest } = to;
  return id && id !== ANY ? { ...rest, [what]: id } : rest;
}

function times({ from, to }: Calendar) {
  const all = Array.from({ length: Math.floor((minutesOf(to) - minutesOf(from)) / STEP) + 1 }, (_, i) => timeOf(minutesOf(from) + i * STEP));
  return all.map((time) => ({ id: time, name: time }));
}
