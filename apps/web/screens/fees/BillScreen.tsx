import { Link, useParams } from '@tanstack/react-router';
import { z } from 'zod';
import { saidOfBill, type BillLine, type CentreBill } from '#libs/contracts/centre-bills';
import { buttonClass } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { amount, fullDay, momentAt, money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { LineForms } from './LineForms.js';
import { useBill, useSayOf } from './queries.js';
import './fees.css';
import type { PageSentence } from '#libs/words/de/staff/page-words';

const states: Record<BillLine['state'], PageSentence> = { matched: 'Fits', unmatched: 'Fits nothing', disputed: 'Disputed' };
const events: Record<string, PageSentence> = { matched: 'Matched by hand', disputed: 'Disputed', undone: 'Taken back', paid: 'Paid', unpaid: 'Not paid after all', withdrawn: 'Withdrawn' };

const eventWord = (type: string) => (events[type] ? t(events[type]) : type);

export function BillScreen() {
  const { bill: id } = useParams({ from: '/inside/fees/centres/$bill' });
  const { data: bill, error } = useBill(id);
  if (!bill) return error ? <NotShown title={t('Bill of a centre')} error={error} /> : <Loading what={t('the bill')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Bill {number}', { number: bill.number })}</h1>
        <p>
          {bill.due ? t('{centre}, dated {day}, due {due}.', { centre: bill.centre.name, day: fullDay(bill.day), due: fullDay(bill.due) }) : t('{centre}, dated {day}.', { centre: bill.centre.name, day: fullDay(bill.day) })} <b>{bill.says}</b>
        </p>
        <div className="acts">
          <Link to="/fees/centres" search={{}} className={buttonClass()}>
            {t('All bills')}
          </Link>
        </div>
      </div>
      <div className="cols fees">
        <Sheet title={t('Lines')} beside={t('in {currency}', { currency: bill.currency })}>
          <Table<BillLine>
            caption={t('Lines, in {currency}', { currency: bill.currency })}
            rows={bill.lines}
            rowKey={(l) => l.id}
            columns={[
              { head: t('Line'), cell: (l) => <span className="num">{l.place}</span> },
              { head: t('As the bill has it'), rowHead: true, cell: (l) => <><span className="num nowrap">{l.reference}</span><span className="block small as-billed">{l.study}</span></> },
              { head: t('What it is'), cell: (l) => <>{l.state !== 'disputed' && <b>{t(states[l.state])}.</b>} {l.state === 'matched' && l.of ? <Link to="/orders/$order/fees" params={{ order: l.of.order }}>{l.says}</Link> : l.says}</> },
              { head: t('Amount'), right: true, cell: (l) => amount(l.amountMinor) },
              { head: t('Say'), cell: (l) => (bill.withdrawn === null ? <LineForms bill={bill} line={l} /> : null) },
            ]}
            foot={
              <tr>
                <td />
                <th scope="row">{t('Sum')}</th>
                <td>{t('Of that {money} for what you sent', { money: money(bill.matchedMinor, bill.currency) })}</td>
                <td className="r">{amount(bill.sumMinor)}</td>
                <td />
              </tr>
            }
          />
          {bill.withdrawn === null && <BillForms bill={bill} />}
        </Sheet>
        <Sheet title={t('What was said')}>
          <ul className="stack small">
            {bill.events.map((e) => (
              <li key={e.at + e.type + String(e.place)}>
                <span className="quiet num">{momentAt(e.at, bill.zone)}</span> <b>{e.place === null ? '' : `${t('Line {place}:', { place: e.place })} `}{eventWord(e.type)}.</b> {e.words} <span className="quiet">{e.by}</span>
              </li>
            ))}
            <li>
              <span className="quiet num">{momentAt(bill.at, bill.zone)}</span> <b>{t('Entered.')}</b> <span className="quiet">{bill.by}</span>
            </li>
          </ul>
        </Sheet>
      </div>
    </>
  );
}

const [asPaid, asUnpaid, asWithdrawn] = saidOfBill.options;

function BillForms({ bill }: { bill: CentreBill }) {
  const say = useSayOf(bill.id);
  const key = crypto.randomUUID();
  if (!bill.paid)
    return (
      <div className="entry-forms">
        <AddForm opens={t('Mark as paid')} saves={t('It was paid on this day')} schema={asPaid} start={{ says: 'paid', key, day: bill.today }} add={say}>
          {(entry) => <DateField label={t('Paid on')} help={t('Where this centre was waiting for payment of what you sent, it waits no longer.')} {...entry.field('day')} />}
        </AddForm>
        <WordsForm opens={t('Withdraw this bill')} saves={t('Withdraw it')} label={t('What is wrong with it')} schema={asWithdrawn} start={{ says: 'withdrawn', key }} add={say} />
      </div>
    );
  return (
    <div className="entry-forms">
      <WordsForm opens={t('Not paid after all')} saves={t('Take it back')} label={t('What happened')} schema={asUnpaid} start={{ says: 'unpaid', key }} add={say} />
    </div>
  );
}

type Words = typeof asUnpaid | typeof asWithdrawn;
function WordsForm({ label, opens, saves, schema, start, add }: { label: string; opens: string; saves: string; schema: Words; start: object; add: ReturnType<typeof useSayOf> }) {
  return (
    <AddForm opens={opens} saves={saves} schema={schema as z.ZodObject<{ words: z.ZodString }>} start={start} add={add}>
      {(entry) => <TextField label={label} lines={2} {...entry.field('words')} />}
    </AddForm>
  );
}
