import { Link } from '@tanstack/react-router';
import { startClosing } from '#libs/contracts/people';
import { DateField } from '../../design/DateField.js';
import { Empty, Loading } from '../../design/Empty.js';
import { fullDay, plural } from '../../design/format.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { hasRole, useMe } from '../../shell/me.js';
import { AddForm } from './AddForm.js';
import { useClosing } from './queries.js';

/** No order is left behind: each is handed over by hand, after its owner has said yes. */
export function ClosingScreen() {
  const me = useMe();
  const { data, error, add } = useClosing();
  if (!data) return error ? <NotShown title="Closing the practice" error={error} /> : <Loading what="the closing" />;
  const { lastDay, orders } = data;
  return (
    <>
      <div className="head">
        <h1>Closing the practice</h1>
        <p>{lastDay ? `The last day is ${fullDay(lastDay)}. No new order is opened.` : 'Nothing is closing.'}</p>
      </div>
      {!lastDay && (
        <Sheet title="If this practice closes">
          <p>Every open order then waits to be handed over to another practice of the scheme: one by one, each with its owner’s yes. New orders are no longer opened here. This cannot be taken back.</p>
          {hasRole(me, 'manager') ? (
            <AddForm opens="This practice closes" saves="Close on this day" schema={startClosing} add={add}>
              {(entry) => <DateField label="Last day on which somebody is here" {...entry.field('lastDay')} />}
            </AddForm>
          ) : (
            <p className="quiet">The practice manager starts it.</p>
          )}
        </Sheet>
      )}
      {lastDay && (
        <section className="sheet" aria-label="Orders to hand over">
          {orders.length === 0 ? (
            <Empty title="Every order is handed over">Nothing waits here any more.</Empty>
          ) : (
            <>
              <p className="list-head">{plural(orders.length, 'order waits', 'orders wait')} to be handed over. Ask the owner, then press Hand over on the order’s page.</p>
              <Table
                caption="Orders to hand over"
                rows={orders}
                rowKey={(o) => o.id}
                columns={[
                  { head: 'Order', rowHead: true, cell: (o) => <Link to="/orders/$order" params={{ order: o.id }}>{o.accession}</Link> },
                  { head: 'Dog', cell: (o) => o.dog },
                  { head: 'Owner', cell: (o) => o.owner },
                  { head: 'Where it stands', cell: (o) => o.stepLabel },
                ]}
              />
            </>
          )}
        </section>
      )}
    </>
  );
}
