import { useState } from 'react';
import type { Birth } from '#libs/contracts/register';
import { DateField } from '../design/DateField.js';
import { Select } from '../design/Select.js';
import { t } from '../words/t.js';
import { birthFrom } from './birth-from.js';
import type { SaidOption } from '../design/Select.js';

const precisions: readonly SaidOption<Birth['precision']>[] = [
  { id: 'day', name: 'The day is known' },
  { id: 'month', name: 'Only the month is known' },
  { id: 'year', name: 'Only the year is known' },
  { id: 'estimate', name: 'Estimated, between two days' },
];

/** Ages count from the latest possible day. */
export function BirthFields({ onChange, error }: { onChange: (birth: Birth | undefined) => void; error: string | undefined }) {
  const [precision, setPrecision] = useState<Birth['precision']>('day');
  const [day, setDay] = useState<string>();
  const [latest, setLatest] = useState<string>();
  const tell = (p: Birth['precision'], first: string | undefined, last: string | undefined) => onChange(birthFrom(p, first, last));
  return (
    <div className="form-row">
      <DateField
        label={precision === 'estimate' ? t('Born at the earliest') : t('Born')}
        value={day}
        onChange={(d) => {
          setDay(d);
          tell(precision, d, latest);
        }}
        error={error}
      />
      {precision === 'estimate' && (
        <DateField
          label={t('Born at the latest')}
          value={latest}
          onChange={(d) => {
            setLatest(d);
            tell(precision, day, d);
          }}
        />
      )}
      <Select
        label={t('How well is that known')}
        options={precisions}
        value={precision}
        onChange={(p) => {
          setPrecision(p ?? 'day');
          tell(p ?? 'day', day, latest);
        }}
      />
    </div>
  );
}
