import type { GroupOptions } from '#libs/contracts/group-booking';
import type { Slot } from '#libs/contracts/booking';
import { Select } from '../../design/Select.js';
import { Table } from '../../design/Table.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { GroupDraft } from './group-draft.js';

type Props = { draft: GroupDraft; options: GroupOptions; times: Map<string, Slot>; onChange: (starts: Record<string, string>) => void; error: string | undefined };

/** One line a dog: its time, or why it cannot be booked on that day and from when. */
export function TimesPart({ draft, options, times, onChange, error }: Props) {
  const rows = draft.dogs.flatMap((id) => options.dogs.find((d) => d.dog === id) ?? []);
  const slots = options.slots.map((s) => ({ id: s.start, name: s.start, hint: `${s.room.name}, ${s.operator.name}` }));
  return (
    <>
      <Table
        caption={t('Times')}
        rows={rows}
        rowKey={(r) => r.dog}
        columns={[
          { head: t('Dog'), rowHead: true, cell: (r) => r.name },
          { head: t('Born'), cell: (r) => <span className="num nowrap">{fullDay(r.born)}</span> },
          {
            head: t('Time'),
            cell: (r) => (r.problems.length > 0 ? <Why problems={r.problems} /> : <span className="time-of"><Select label={t('Time of {dog}', { dog: r.name })} options={slots} value={times.get(r.dog)?.start} onChange={(start) => onChange({ ...draft.starts, ...(start && { [r.dog]: start }) })} /></span>),
          },
        ]}
      />
      {error && <span className="field-error">{error}</span>}
    </>
  );
}

const Why = ({ problems }: { problems: GroupOptions['dogs'][number]['problems'] }) => (
  <>
    {problems.map((p) => (
      <p key={p.code}>
        <b>{t('Not on this day.')}</b> {p.words}
      </p>
    ))}
  </>
);
