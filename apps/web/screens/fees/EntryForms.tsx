import { z } from 'zod';
import { addedLine, howPaid, newAgreement, newPayment, newReversal, type FeeEntry, type OrderFees, type VisitFees } from '#libs/contracts/fees';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { DateField } from '../../design/DateField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { amount } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { MoneyField } from '../practice/MoneyField.js';
import { useWriteFee } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

type OfVisit = { fees: OrderFees; visit: VisitFees };
const fresh = () => ({ key: crypto.randomUUID() });

/** What is sent is made from what was entered. */
function useSending<Body extends object>(order: string, what: string, made: (entered: Body) => object) {
  const write = useWriteFee(order, what);
  return { ...write, mutate: (entered: Body, then: { onSuccess: () => void; onError: (error: unknown) => void }) => write.mutate(made(entered), then) };
}

const chosenLines = z.object({ key: z.uuid(), lines: z.array(z.string()).min(1) });

export function ChargeEstimate({ order, visit }: { order: string; visit: VisitFees }) {
  const left = visit.estimate?.lines.filter((l) => !l.charged) ?? [];
  const add = useSending<z.output<typeof chosenLines>>(order, 'charges', ({ key, lines }) => ({ key, visit: visit.visit, estimateLines: lines.map(Number) }));
  if (left.length === 0) return null;
  return (
    <AddForm opens={t('Charge the estimate')} saves={t('Charge these lines')} schema={chosenLines} start={{ ...fresh(), lines: left.map((l) => String(l.line)) }} add={add}>
      {(entry) => <CheckboxGroup label={t('Lines of the accepted estimate')} options={left.map((l) => ({ id: String(l.line), name: t.known(l.words), hint: amount(l.amountMinor) }))} {...entry.field('lines')} />}
    </AddForm>
  );
}

const oneLine = addedLine.extend({ key: z.uuid() });

export function ChargeLine({ fees, visit }: OfVisit) {
  const add = useSending<z.output<typeof oneLine>>(fees.order, 'charges', ({ key, ...line }) => ({ key, visit: visit.visit, added: [line] }));
  return (
    <AddForm opens={t('Charge something else')} saves={t('Charge this')} schema={oneLine} start={fresh()} add={add}>
      {(entry) => (
        <>
          <TextField label={t('What for')} {...entry.field('words')} />
          <MoneyField label={t('Amount, with tax')} currency={fees.currency} {...entry.field('amountMinor')} />
          <TextField label={t('Why it is not in the estimate')} lines={2} {...entry.field('why')} />
        </>
      )}
    </AddForm>
  );
}

const ways = { cash: 'Cash', card: 'Card', transfer: 'Transfer', other: 'Other' } as const satisfies Record<string, PageSentence>;

export function PaymentForm({ fees, visit, kind }: OfVisit & { kind: 'payment' | 'refund' }) {
  const add = useWriteFee(fees.order, 'payments');
  const start = { ...fresh(), visit: visit.visit, kind, day: fees.today, ...(fees.payer && { person: fees.payer.id }), ...(kind === 'payment' && visit.openMinor > 0 && { amountMinor: visit.openMinor }) };
  return (
    <AddForm opens={kind === 'payment' ? t('Write down a payment') : t('Give money back')} saves={kind === 'payment' ? t('Keep this payment') : t('Keep that it was given back')} schema={newPayment} start={start} add={add}>
      {(entry) => (
        <>
          <MoneyField label={t('Amount')} currency={fees.currency} {...entry.field('amountMinor')} />
          <DateField label={t('Day')} {...entry.field('day')} />
          <RadioChoice label={t('How')} options={howPaid.map((id) => ({ id, name: t(ways[id]) }))} {...entry.field('how')} />
          <Select label={kind === 'payment' ? t('Paid by') : t('Given to')} options={fees.people} {...entry.field('person')} />
          <TextField label={t('Number of the receipt')} autoComplete="off" {...entry.field('receipt')} />
        </>
      )}
    </AddForm>
  );
}

export function AgreementForm({ fees, visit }: OfVisit) {
  const add = useWriteFee(fees.order, 'agreements');
  return (
    <AddForm opens={t('The payer agrees')} saves={t('Keep this answer')} schema={newAgreement} start={{ ...fresh(), visit: visit.visit, amountMinor: visit.chargedMinor, ...(fees.payer && { person: fees.payer.id }) }} add={add}>
      {(entry) => (
        <>
          <MoneyField label={t('Agrees to pay for this visit, all in all')} currency={fees.currency} {...entry.field('amountMinor')} />
          <Select label={t('Who agrees')} options={fees.people} {...entry.field('person')} />
          <RadioChoice label={t('How')} options={[{ id: 'phone', name: t('On the phone') }, { id: 'present', name: t('In the practice') }, { id: 'paper', name: t('On paper') }]} {...entry.field('how')} />
        </>
      )}
    </AddForm>
  );
}

export function ReverseForm({ order, entry: wrong }: { order: string; entry: FeeEntry }) {
  const add = useWriteFee(order, 'reversals');
  return (
    <AddForm opens={t('Reverse')} saves={t('Reverse this entry')} schema={newReversal} start={{ ...fresh(), entry: wrong.id }} add={add}>
      {(entry) => <TextField label={t('Why it is wrong')} help={t('It stays to be read and counts no more. Write the right one anew.')} lines={2} {...entry.field('why')} />}
    </AddForm>
  );
}
