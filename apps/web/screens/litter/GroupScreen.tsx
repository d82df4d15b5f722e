import { Link, useParams } from '@tanstack/react-router';
import type { GroupBooking } from '#libs/contracts/group-booking';
import { useGroup } from '../../api/groups.js';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Table } from '../../design/Table.js';
import { longDay, shortDay } from '../../design/format.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { GroupFees } from '../fees/GroupFees.js';
import './litter.css';
import { Told } from '../../words/Told.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

type Line = GroupBooking['dogs'][number];

/** What became of each dog of a call, on one page. */
export function GroupScreen() {
  const { group: id } = useParams({ from: '/inside/litters/$group' });
  const me = useMe();
  const { data: group, error } = useGroup(id);
  if (!group) return error ? <NotShown title={t('Dogs booked together')} error={error} /> : <Loading what={t('the dogs')} />;
  const booked = group.dogs.filter((d) => d.order).length;
  return (
    <>
      <div className="head">
        <h1>{t('{count, plural, one {# dog} other {# dogs}}, {day}', { count: group.dogs.length, day: longDay(group.day) })}</h1>
        <p>
          {group.payer === group.caller ? t('{caller} called, and pays.', { caller: group.caller }) : t('{caller} called, {payer} pays.', { caller: group.caller, payer: group.payer })} {booked === group.dogs.length ? t('All are booked.') : t('{booked} of {count} are booked.', { booked, count: group.dogs.length })}
        </p>
      </div>
      {group.litter && <Litter litter={group.litter} dam={group.dam} booked={booked} />}
      <section className="sheet" aria-label={t('Dogs')}>
        <Table<Line>
          caption={t('Dogs')}
          rows={group.dogs}
          rowKey={(d) => d.dog}
          columns={[
            { head: t('Dog'), rowHead: true, cell: (d) => <Link to="/dogs/$dog" params={{ dog: d.dog }}>{d.name}</Link> },
            { head: t('Time'), cell: (d) => (d.day && d.start ? <span className="num nowrap">{d.day === group.day ? d.start : `${shortDay(d.day)}, ${d.start}`}</span> : <span className="quiet">{t('none')}</span>) },
            { head: t('Order'), cell: (d) => (d.order ? <Link to="/orders/$order" params={{ order: d.order }} className="num nowrap">{d.accession}</Link> : <span className="quiet">{t('none')}</span>) },
            { head: t('Where it stands'), cell: (d) => (d.problem ? <NotBooked line={d} /> : d.imaged ? t('{step}, imaged', { step: stepOf(d) }) : stepOf(d)) },
          ]}
        />
        <p className="label">{t('One mail with a line for each dog goes to whoever owns them all.')}</p>
      </section>
      {(hasRole(me, 'desk') || hasRole(me, 'manager')) && <GroupFees group={group.id} />}
    </>
  );
}

const NotBooked = ({ line }: { line: Line }) => (
  <>
    <b>{t('Not booked.')}</b> {line.problem?.words}{' '}
    <Link to="/book" search={{ dog: line.dog }}>
      {t('Book {dog} for another day', { dog: line.name })}
    </Link>
  </>
);

function Litter({ litter, dam, booked }: { litter: NonNullable<GroupBooking['litter']>; dam: string | null; booked: number }) {
  return (
    <section className="sheet" aria-label={t('Litter')}>
      <p>
        {dam && <><Told text={t('Litter of **{dam}**.', { dam })} /> </>}
        <Told text={t('**{born}** born, **{alive}** alive, **{booked}** booked here, **{imaged}** imaged.', { born: litter.born, alive: litter.alive, booked, imaged: litter.imaged })} strong="num" /> {litter.whole ? t('Named as the whole litter.') : t('Not the whole litter.')}
      </p>
    </section>
  );
}

const words: Record<string, PageSentence> = { wanted: 'No time yet', booked: 'Booked', admitted: 'Here', sedated: 'Asleep', imaged: 'Waking up', recovered: 'Awake', home: 'At home', cancelled: 'Cancelled', missed: 'Did not come', turnedAway: 'Turned away', died: 'Died' };

const stepOf = (line: Line) => t(words[line.step ?? ''] ?? 'Booked');
