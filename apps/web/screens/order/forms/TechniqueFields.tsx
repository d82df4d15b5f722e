import type { technique } from '#libs/contracts/actions/study';
import type { z } from 'zod';
import { NumberField } from '../../../design/NumberField.js';
import { t } from '../../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

type Technique = z.input<typeof technique>;
const fields = [
  { name: 'kv', label: 'Tube voltage', unit: 'kV' },
  { name: 'mas', label: 'Charge', unit: 'mAs' },
  { name: 'distanceCm', label: 'Distance', unit: 'cm' },
  { name: 'exposureIndex', label: 'Exposure index', unit: '' },
  { name: 'deviationIndex', label: 'Deviation index', unit: '' },
] as const satisfies readonly { name: string; label: PageSentence; unit: string }[];

export function TechniqueFields({ value, onChange, error }: { value: Technique; onChange: (value: Technique) => void; error: (name: string) => string | undefined }) {
  return (
    <fieldset>
      <legend className="label">{t('Technique as the console shows it; all may stay empty, none is judged here')}</legend>
      <div className="form-row">
        {fields.map((f) => (
          <NumberField key={f.name} label={t(f.label)} {...(f.unit && { unit: f.unit })} value={value[f.name]} onChange={(n) => onChange({ ...value, [f.name]: n })} error={error(f.name)} />
        ))}
      </div>
    </fieldset>
  );
}
