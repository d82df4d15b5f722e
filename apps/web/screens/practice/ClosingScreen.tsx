import { Link } from '@tanstack/react-router';
import { startClosing } from '#libs/contracts/people';
import { DateField } from '../../design/DateField.js';
import { Empty, Loading } from '../../design/Empty.js';
import { fullDay } from '../../design/format.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useClosing } from './queries.js';

/** No order is left behind: each is handed over by hand, after its owner has said yes. */
export function ClosingScreen() {
  const me = useMe();
  const { data, error, add } = useClosing();
  if (!data) return error ? <NotShown title={t('Closing the practice')} error={error} /> : <Loading what={t('the closing')} />;
  const { lastDay, orders } = data;
  return (
    <>
      <div className="head">
        <h1>{t('Closing the practice')}</h1>
        <p>{lastDay ? t('The last day is {day}. No new order is opened.', { day: fullDay(lastDay) }) : t('Nothing is closing.')}</p>
      </div>
      {!lastDay && (
        <Sheet title={t('If this practice closes')}>
          <p>{t('Every open order then waits to be handed over to another practice of the scheme: one by one, each with its owner’s yes. New orders are no longer opened here. This cannot be taken back.')}</p>
          {hasRole(me, 'manager') ? (
            <AddForm opens={t('This practice closes')} saves={t('Close on this day')} schema={startClosing} add={add}>
              {(entry) => <DateField label={t('Last day on which somebody is here')} {...entry.field('lastDay')} />}
            </AddForm>
          ) : (
            <p className="quiet">{t('The practice manager starts it.')}</p>
          )}
        </Sheet>
      )}
      {lastDay && (
        <section className="sheet" aria-label={t('Orders to hand over')}>
          {orders.length === 0 ? (
            <Empty title={t('Every order is handed over')}>{t('Nothing waits here any more.')}</Empty>
          ) : (
            <>
              <p className="list-head">{t('{count, plural, one {# order waits} other {# orders wait}} to be handed over. Ask the owner, then press Hand over on the order’s page.', { count: orders.length })}</p>
              <Table
                caption={t('Orders to hand over')}
                rows={orders}
                rowKey={(o) => o.id}
                columns={[
                  { head: t('Order'), rowHead: true, cell: (o) => <Link to="/orders/$order" params={{ order: o.id }}>{o.accession}</Link> },
                  { head: t('Dog'), cell: (o) => o.dog },
                  { head: t('Owner'), cell: (o) => o.owner },
                  { head: t('Where it stands'), cell: (o) => o.stepLabel },
                ]}
              />
            </>
          )}
        </section>
      )}
    </>
  );
}
