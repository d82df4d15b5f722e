import { useState } from 'react';
import type { FieldProps } from '../../../design/Field.js';
import { TextField } from '../../../design/TextField.js';
import { t } from '../../../words/t.js';

/** Several short texts, one a line. */
export function LinesField({ value, onChange, help, ...rest }: FieldProps<string[]>) {
  const [text, setText] = useState((value ?? []).join('\n'));
  return (
    <TextField
      {...rest}
      help={help ?? t('One a line.')}
      lines={3}
      value={text}
      onChange={(typed) => {
        setText(typed ?? '');
        const lines = (typed ?? '').split('\n').map((l) => l.trim()).filter(Boolean);
        onChange(lines.length > 0 ? lines : undefined);
      }}
    />
  );
}
