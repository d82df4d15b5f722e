import type { OrderScreen } from '#libs/contracts/screens/order';
import { CheckboxGroup } from '../../../design/Checkboxes.js';
import { DateField } from '../../../design/DateField.js';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice, yesNo } from '../../../design/RadioChoice.js';
import { Select } from '../../../design/Select.js';
import { TextField } from '../../../design/TextField.js';
import { t } from '../../../words/t.js';
import type { FieldSpec } from './field-spec.js';
import { choicesFor } from './form-props.js';
import { LinesField } from './LinesField.js';
import { optionWords } from './option-words.js';

type Props = { spec: FieldSpec; screen: OrderScreen; value: unknown; onChange: (value: unknown) => void; error?: string };

const asText = (v: unknown) => (typeof v === 'string' ? v : undefined);
const asTexts = (v: unknown) => (Array.isArray(v) ? v.map(String) : undefined);

export function SpecField({ spec, screen, value, onChange, error }: Props) {
  const common = { label: spec.title, onChange, ...(spec.help && { help: t.known(spec.help) }), ...(error && { error }) };
  switch (spec.kind) {
    case 'day':
      return <DateField {...common} value={asText(value)} />;
    case 'number':
      return <NumberField {...common} value={typeof value === 'number' ? value : undefined} />;
    case 'yesNo':
      return <RadioChoice {...common} options={yesNo} value={value === true ? 'yes' : value === false ? 'no' : undefined} onChange={(v) => onChange(v === undefined ? undefined : v === 'yes')} />;
    case 'choice': {
      const options = spec.options.map((o) => ({ id: o, name: optionWords(o) }));
      return options.length <= 4 ? <RadioChoice {...common} options={options} value={asText(value)} /> : <Select {...common} options={options} value={asText(value)} />;
    }
    case 'choices':
      return <CheckboxGroup {...common} options={spec.options.map((o) => ({ id: o, name: optionWords(o) }))} value={asTexts(value)} />;
    case 'pickOne':
      return <Select {...common} options={choicesFor(screen, spec.pick)} value={asText(value)} />;
    case 'pickSome':
      return <CheckboxGroup {...common} options={choicesFor(screen, spec.pick)} value={asTexts(value)} />;
    case 'list':
      return <LinesField {...common} value={asTexts(value)} />;
    case 'other':
      return null;
    default:
      return <TextField {...common} value={asText(value)} {...(spec.kind === 'lines' && { lines: 3 })} type={spec.kind === 'email' ? 'email' : spec.kind === 'time' ? 'time' : 'text'} />;
  }
}
