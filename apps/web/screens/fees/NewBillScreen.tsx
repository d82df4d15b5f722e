import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { newCentreBill, type NewBillLine } from '#libs/contracts/centre-bills';
import { buttonClass } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import { usePractice } from '../practice/queries.js';
import { FromFile } from './FromFile.js';
import { LinesByHand } from './LinesByHand.js';
import { useEnterBill } from './queries.js';
import './fees.css';

/** A centre's bill, its lines by hand or from a file. All of it is stored, or nothing. */
export function NewBillScreen() {
  const { data, error } = usePractice();
  if (!data) return error ? <NotShown title={t('Enter a bill')} error={error} /> : <Loading what={t('the centres')} />;
  return <NewBill centres={data.centres} currency={data.prices.currency} />;
}

function NewBill({ centres, currency }: { centres: { id: string; name: string }[]; currency: string }) {
  const navigate = useNavigate();
  const enter = useEnterBill();
  const entry = useEntry(newCentreBill, { key: crypto.randomUUID(), currency, lines: [] });
  const [wrongRows, setWrongRows] = useState(0);
  const lines = (entry.values.lines ?? []) as NewBillLine[];
  const submit = () => {
    const bill = entry.check(wrongRows > 0 ? { lines: t('Correct the {rows, plural, one {row} other {rows}} of the file first. Nothing is entered while one is wrong.', { rows: wrongRows }) } : {});
    if (bill) enter.mutate(bill, { onSuccess: ({ id }) => void navigate({ to: '/fees/centres/$bill', params: { bill: id } }), onError: entry.mark });
  };
  return (
    <>
      <div className="head">
        <h1>{t('Enter a bill')}</h1>
        <p>{t('As the centre wrote it. Each line is then compared with what you sent.')}</p>
      </div>
      <section className="sheet fees" aria-label={t('Bill')}>
        <EntryForm label={t('Enter this bill')} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={enter.error} busy={enter.isPending} beside={<Link to="/fees/centres" search={{}} className={buttonClass()}>{t('Leave it')}</Link>}>
          <Select label={t('Centre')} options={centres} {...entry.field('centre')} />
          <div className="form-row">
            <TextField label={t('Number of the bill')} autoComplete="off" {...entry.field('number')} />
            <DateField label={t('Dated')} {...entry.field('day')} />
            <DateField label={t('Due (may stay empty)')} {...entry.field('due')} />
            <TextField label={t('Currency')} autoComplete="off" {...entry.field('currency')} />
          </div>
          <FromFile centre={entry.values.centre} onRows={(rows, wrong) => { entry.set('lines', rows); setWrongRows(wrong); }} />
          <LinesByHand lines={lines} currency={entry.values.currency ?? currency} error={entry.error} onChange={(rows) => entry.set('lines', rows)} />
        </EntryForm>
      </section>
    </>
  );
}
