import { useState } from 'react';
import type { FieldProps } from './Field.js';
import { TextField } from './TextField.js';
import { plain } from './format.js';

/**
 * Keeps what was typed until it is a number; a comma counts as a point. What is not a number
 * becomes NaN, so that the form says so instead of losing it.
 */
export function NumberField({ value, onChange, ...rest }: FieldProps<number> & { unit?: string; autoFocus?: boolean }) {
  const [text, setText] = useState(value === undefined ? '' : plain(value));
  const shown = value === undefined || Number.isNaN(value) || asNumber(text) === value ? text : plain(value);
  return (
    <TextField
      {...rest}
      inputMode="decimal"
      autoComplete="off"
      value={value === undefined ? undefined : shown}
      onChange={(typed) => {
        setText(typed ?? '');
        onChange(asNumber(typed ?? ''));
      }}
    />
  );
}

export function asNumber(text: string): number | undefined {
  const plain = text.trim().replace(',', '.');
  if (plain === '') return undefined;
  return /^-?\d*\.?\d*$/.test(plain) && /\d/.test(plain) ? Number(plain) : Number.NaN;
}
