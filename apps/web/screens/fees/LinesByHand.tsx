import { useRef } from 'react';
import type { NewBillLine } from '#libs/contracts/centre-bills';
import { Button } from '../../design/Button.js';
import { TextField } from '../../design/TextField.js';
import { money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { MoneyField } from '../practice/MoneyField.js';

type Line = Partial<NewBillLine>;

/** Lines as they are typed; what is wrong with one stands beside it. */
export function LinesByHand({ lines, currency, error, onChange }: { lines: Line[]; currency: string; error: (path: string) => string | undefined; onChange: (lines: NewBillLine[]) => void }) {
  const serial = useRef(0);
  const keys = useRef<WeakMap<Line, number>>(new WeakMap());
  const keyOf = (line: Line) => keys.current.get(line) ?? (keys.current.set(line, ++serial.current), serial.current);
  const change = (i: number, more: Line) => {
    const changed = { ...lines[i], ...more };
    // A field that is typed in stays the same field.
    keys.current.set(changed, keyOf(lines[i]!));
    onChange(lines.with(i, changed) as NewBillLine[]);
  };
  const at = (i: number, field: keyof NewBillLine) => ({ ...(error(`lines.${i}.${field}`) && { error: error(`lines.${i}.${field}`)! }) });
  const sum = lines.reduce((all, l) => all + (Number.isFinite(l.amountMinor) ? l.amountMinor! : 0), 0);
  return (
    <fieldset className="wide bill-lines">
      <legend>{t('Lines')}</legend>
      {lines.length === 0 && <p className="small quiet">{t('None yet. Add one, or take them from a file.')}</p>}
      <ol>
        {lines.map((line, i) => (
          <li key={keyOf(line)} className="form-row">
            <TextField label={t('Line {number}: order or package number', { number: i + 1 })} autoComplete="off" value={line.reference} onChange={(reference) => change(i, { reference: reference! })} {...at(i, 'reference')} />
            <TextField label={t('Study')} autoComplete="off" value={line.study} onChange={(study) => change(i, { study: study! })} {...at(i, 'study')} />
            <MoneyField label={t('Amount')} currency={currency} value={line.amountMinor} onChange={(amountMinor) => change(i, { amountMinor: amountMinor! })} {...at(i, 'amountMinor')} />
            <Button aria-label={t('Take line {number} off', { number: i + 1 })} onPress={() => onChange(lines.toSpliced(i, 1) as NewBillLine[])}>
              {t('Take off')}
            </Button>
          </li>
        ))}
      </ol>
      {error('lines') && (
        <p className="field-error" data-invalid>
          {error('lines')}
        </p>
      )}
      <div className="acts">
        <Button onPress={() => onChange([...lines, {}] as NewBillLine[])}>{t('Add a line')}</Button>
        {sum > 0 && <span>{t('Sum: {sum}', { sum: money(sum, currency) })}</span>}
      </div>
    </fieldset>
  );
}
