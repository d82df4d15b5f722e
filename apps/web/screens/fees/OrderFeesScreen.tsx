import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { OrderFees } from '#libs/contracts/fees';
import { Button } from '../../design/Button.js';
import { Loading } from '../../design/Empty.js';
import { CsvLink } from '../../design/CsvLink.js';
import { ErrorBar, NotShown, Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { amount, fullDay, momentAt, money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { useOrderFees, useWriteFee } from './queries.js';
import { VisitSheet } from './VisitSheet.js';
import './fees.css';
import { HERE, Told } from '../../words/Told.js';

/** The money of one order: agreed to, charged, paid, open, told; and what a centre billed for it. */
export function OrderFeesScreen() {
  const { order } = useParams({ from: '/inside/orders/$order/fees' });
  const { data: fees, error } = useOrderFees(order);
  if (!fees) return error ? <NotShown title={t('Fees of the order')} error={error} /> : <Loading what={t('the fees')} />;
  return (
    <>
      <div className="head">
        <h1>{t('{dog}: fees', { dog: fees.dog })}</h1>
        <p>
          <Told
            text={fees.payer ? t('Order {order}, paid by **{payer}**.', { order: HERE, payer: fees.payer.name }) : t('Order {order}, nobody is named to pay.', { order: HERE })}
            here={
              <Link to="/orders/$order" params={{ order }} className="num">
                {fees.accession}
              </Link>
            }
          />{' '}
          <b>{fees.says}</b>
        </p>
        <div className="acts">
          <CsvLink path={`/orders/${order}/fees.csv`} />
          <Button onPress={() => window.print()}>{t('Print')}</Button>
        </div>
      </div>
      {fees.group && (
        <Notice>
          {t('Booked with other dogs in one call.')}{' '}
          <Link to="/litters/$group" params={{ group: fees.group.id }}>
            {t('The sum over all {dogs}', { dogs: fees.group.dogs })}
          </Link>
        </Notice>
      )}
      <div className="cols two fees">
        <div className="cols">
          {fees.visits.toReversed().map((v) => (
            <VisitSheet key={v.visit} fees={fees} visit={v} />
          ))}
        </div>
        <div className="cols">
          <Statements fees={fees} />
          <Billed fees={fees} />
        </div>
      </div>
    </>
  );
}

function Statements({ fees }: { fees: OrderFees }) {
  const [key, setKey] = useState(() => crypto.randomUUID());
  const send = useWriteFee(fees.order, 'statements');
  return (
    <Sheet title={t('Statement to the payer')}>
      <ErrorBar error={send.error} />
      {fees.silent ? (
        <p className="err">
          <b>{fees.silent}</b>
        </p>
      ) : (
        <div className="acts">
          <Button onPress={() => send.mutate({ key }, { onSuccess: () => setKey(crypto.randomUUID()) })}>{send.isPending ? t('Sending …') : t('Mail what is charged and paid')}</Button>
        </div>
      )}
      {fees.statements.length === 0 ? (
        <p className="small quiet">{t('None has been sent.')}</p>
      ) : (
        <ul className="stack small">
          {fees.statements.map((s) => (
            <li key={s.id}>
              <Told text={s.openMinor > 0 ? t('**{to}**, {at}, by {person}: {money} open.', { to: s.to, at: momentAt(s.at, fees.zone), person: s.by, money: money(s.openMinor, fees.currency) }) : t('**{to}**, {at}, by {person}: nothing open.', { to: s.to, at: momentAt(s.at, fees.zone), person: s.by })} /> {s.says}
            </li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}

function Billed({ fees }: { fees: OrderFees }) {
  return (
    <Sheet title={t('What the centres bill')}>
      {fees.sent.length === 0 ? (
        <p className="small quiet">{t('Nothing has been sent to a centre by your practice.')}</p>
      ) : (
        <Table
          caption={t('Studies that were sent')}
          rows={fees.sent}
          rowKey={(s) => s.study + s.centre}
          columns={[
            { head: t('Study'), rowHead: true, cell: (s) => <>{s.name}<span className="label block">{s.readOn ? t('{centre}, sent {sent}, read {read}', { centre: s.centre, sent: fullDay(s.sentOn), read: fullDay(s.readOn) }) : t('{centre}, sent {sent}, not read yet', { centre: s.centre, sent: fullDay(s.sentOn) })}</span></> },
            { head: t('Agreed'), right: true, cell: (s) => amount(s.feeMinor) },
            { head: t('Bill'), cell: (s) => (s.bill ? <Link to="/fees/centres/$bill" params={{ bill: s.bill.id }} className="nowrap">{s.bill.number}</Link> : <span className="quiet nowrap">{t('not billed')}</span>) },
          ]}
        />
      )}
    </Sheet>
  );
}
