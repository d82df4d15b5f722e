import type { FeeEntry, OrderFees, VisitFees } from '#libs/contracts/fees';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { amount, fullDay, momentAt, money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AgreementForm, ChargeEstimate, ChargeLine, PaymentForm, ReverseForm } from './EntryForms.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { Told } from '../../words/Told.js';

const how: Record<string, PageSentence> = { phone: 'on the phone', paper: 'on paper', link: 'on the owner’s page' };

/** One visit: the estimate that was accepted, the entries as they were written, and what they come to. */
export function VisitSheet({ fees, visit }: { fees: OrderFees; visit: VisitFees }) {
  const { estimate, entries } = visit;
  const { currency, zone } = fees;
  return (
    <Sheet title={visit.day ? t('Visit on {day}', { day: fullDay(visit.day) }) : t('Visit without a day')} beside={visit.where}>
      <dl className="facts">
        <dt>{t('Estimate')}</dt>
        <dd>{estimate ? accepted(estimate, zone) : t('Nobody has accepted one.')}</dd>
        <dt>{t('Charged')}</dt>
        <dd>{money(visit.chargedMinor, currency)}</dd>
        <dt>{t('Paid')}</dt>
        <dd>{money(visit.paidMinor, currency)}</dd>
      </dl>
      <div className={visit.notAgreedMinor > 0 ? 'err says' : 'why says'}>
        {visit.says.map((words) => (
          <p key={words}>{words}</p>
        ))}
      </div>
      {entries.length > 0 && (
        <Table<FeeEntry>
          caption={t('Entries, in {currency}', { currency })}
          rows={entries}
          rowKey={(e) => e.id}
          columns={[
            { head: t('Entry'), rowHead: true, cell: (e) => <EntryWords entry={e} zone={zone} /> },
            { head: t('Charged'), right: true, cell: (e) => (e.kind === 'charge' ? <Amount entry={e} /> : null) },
            { head: t('Paid'), right: true, cell: (e) => (e.kind === 'payment' || e.kind === 'refund' ? <Amount entry={e} /> : null) },
            { head: t('Wrong?'), cell: (e) => (e.reversed ? null : <ReverseForm order={fees.order} entry={e} />) },
          ]}
        />
      )}
      <div className="entry-forms">
        {estimate && <ChargeEstimate order={fees.order} visit={visit} />}
        <ChargeLine fees={fees} visit={visit} />
        <PaymentForm fees={fees} visit={visit} kind="payment" />
        {visit.paidMinor > 0 && <PaymentForm fees={fees} visit={visit} kind="refund" />}
        {visit.notAgreedMinor > 0 && <AgreementForm fees={fees} visit={visit} />}
      </div>
    </Sheet>
  );
}

function accepted({ amountMinor, currency, by, how: way, at }: NonNullable<VisitFees['estimate']>, zone: string): string {
  const values = { money: money(amountMinor, currency), person: by, at: momentAt(at, zone) };
  return how[way] ? t('{money}, accepted by {person} {how}, {at}', { ...values, how: t(how[way]) }) : t('{money}, accepted by {person}, {at}', values);
}

const Amount = ({ entry }: { entry: FeeEntry }) => <span className="nowrap">{entry.reversed ? <s>{amount(entry.amountMinor)}</s> : `${entry.kind === 'refund' ? '−' : ''}${amount(entry.amountMinor)}`}</span>;

function EntryWords({ entry: e, zone }: { entry: FeeEntry; zone: string }) {
  const beside = [e.prepaid && t('prepaid'), e.receipt && t('receipt {receipt}', { receipt: e.receipt }), e.person && (e.kind === 'agreement' ? e.person : t('by {person}', { person: e.person }))].filter(Boolean).join(', ');
  return (
    <>
      {e.words}
      {beside && `, ${beside}`}
      {e.why && <span className="block small">{e.why}</span>}
      <span className="label block">
        {e.by}, {momentAt(e.at, zone)}
      </span>
      {e.reversed && (
        <span className="block small">
          <Told text={t('**Reversed** by {person}, {at}: {why}', { person: e.reversed.by, at: momentAt(e.reversed.at, zone), why: e.reversed.why })} />
        </span>
      )}
    </>
  );
}
