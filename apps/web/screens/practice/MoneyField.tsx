import { useState } from 'react';
import type { FieldProps } from '../../design/Field.js';
import { TextField } from '../../design/TextField.js';
import { readMoney } from '../owner/money.js';
import { fixed } from '../../design/format.js';

/** Typed in whole units, kept in minor ones; what is no amount becomes NaN, so that the form says so instead of losing it. */
export function MoneyField({ value, onChange, currency, ...rest }: FieldProps<number> & { currency: string }) {
  const [text, setText] = useState(value === undefined ? undefined : fixed(value / 100, 2));
  return (
    <TextField
      {...rest}
      unit={currency}
      inputMode="decimal"
      autoComplete="off"
      value={text}
      onChange={(typed) => {
        setText(typed);
        onChange(typed === undefined ? undefined : (readMoney(typed) ?? Number.NaN));
      }}
    />
  );
}
