import { Link, useParams } from '@tanstack/react-router';
import type { GroupBooking } from '#libs/contracts/group-booking';
import { useGroup } from '../../api/groups.js';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Table } from '../../design/Table.js';
import { longDay, plural, shortDay } from '../../design/format.js';
import './litter.css';

type Line = GroupBooking['dogs'][number];

/** What became of each dog of a call, on one page. */
export function GroupScreen() {
  const { group: id } = useParams({ from: '/inside/litters/$group' });
  const { data: group, error } = useGroup(id);
  if (!group) return error ? <NotShown title="Dogs booked together" error={error} /> : <Loading what="the dogs" />;
  const booked = group.dogs.filter((d) => d.order).length;
  return (
    <>
      <div className="head">
        <h1>{plural(group.dogs.length, 'dog', 'dogs')}, {longDay(group.day)}</h1>
        <p>
          {group.caller} called, {group.payer === group.caller ? 'and pays' : `${group.payer} pays`}. {booked === group.dogs.length ? 'All are booked.' : `${booked} of ${group.dogs.length} are booked.`}
        </p>
      </div>
      {group.litter && <Litter litter={group.litter} dam={group.dam} booked={booked} />}
      <section className="sheet" aria-label="Dogs">
        <Table<Line>
          caption="Dogs"
          rows={group.dogs}
          rowKey={(d) => d.dog}
          columns={[
            { head: 'Dog', rowHead: true, cell: (d) => <Link to="/dogs/$dog" params={{ dog: d.dog }}>{d.name}</Link> },
            { head: 'Time', cell: (d) => (d.day && d.start ? <span className="num nowrap">{d.day === group.day ? d.start : `${shortDay(d.day)}, ${d.start}`}</span> : <span className="quiet">none</span>) },
            { head: 'Order', cell: (d) => (d.order ? <Link to="/orders/$order" params={{ order: d.order }} className="num nowrap">{d.accession}</Link> : <span className="quiet">none</span>) },
            { head: 'Where it stands', cell: (d) => (d.problem ? <NotBooked line={d} /> : d.imaged ? `${words[d.step ?? ''] ?? 'Booked'}, imaged` : (words[d.step ?? ''] ?? 'Booked')) },
          ]}
        />
        <p className="label">One mail with a line for each dog goes to whoever owns them all.</p>
      </section>
    </>
  );
}

const NotBooked = ({ line }: { line: Line }) => (
  <>
    <b>Not booked.</b> {line.problem?.words}{' '}
    <Link to="/book" search={{ dog: line.dog }}>
      Book {line.name} for another day
    </Link>
  </>
);

function Litter({ litter, dam, booked }: { litter: NonNullable<GroupBooking['litter']>; dam: string | null; booked: number }) {
  return (
    <section className="sheet" aria-label="Litter">
      <p>
        {dam && <>Litter of <b>{dam}</b>. </>}
        <b className="num">{litter.born}</b> born, <b className="num">{litter.alive}</b> alive, <b className="num">{booked}</b> booked here, <b className="num">{litter.imaged}</b> imaged. {litter.whole ? 'Named as the whole litter.' : 'Not the whole litter.'}
      </p>
    </section>
  );
}

const words: Record<string, string> = { wanted: 'No time yet', booked: 'Booked', admitted: 'Here', sedated: 'Asleep', imaged: 'Waking up', recovered: 'Awake', home: 'At home', cancelled: 'Cancelled', missed: 'Did not come', turnedAway: 'Turned away', died: 'Died' };
