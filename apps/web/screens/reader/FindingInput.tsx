import type { FindingField } from '#libs/contracts/common';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

type Given = boolean | string | undefined;
const seen = [
  { id: 'no', name: 'None' },
  { id: 'yes', name: 'Seen' },
] as const satisfies readonly { id: string; name: PageSentence }[];

/** Recorded beside a joint's value; what is left open says that nobody looked, not that there is none. */
export function FindingInput({ field, given, onChange, error }: { field: FindingField; given: Given; onChange: (given: Given) => void; error?: string | undefined }) {
  const wrong = error === undefined ? {} : { error };
  if (field.kind === 'yesNo')
    return <RadioChoice label={field.words} options={named(seen)} value={given === undefined ? undefined : given === true ? 'yes' : 'no'} onChange={(v) => onChange(v === undefined ? undefined : v === 'yes')} {...wrong} />;
  const text = typeof given === 'string' ? given : undefined;
  if (field.kind === 'choice') return <Select label={field.words} options={field.choices.map((c) => ({ id: c.code, name: c.words }))} value={text} onChange={onChange} {...wrong} />;
  return <TextField label={field.words} inputMode="decimal" autoComplete="off" unit={field.unit} value={text} onChange={onChange} {...wrong} />;
}
