import type { DrugLine } from '#libs/contracts/actions/visit';
import type { Arithmetic } from '../../../api/arithmetic.js';
import { Button } from '../../../design/Button.js';
import { NumberField } from '../../../design/NumberField.js';
import { Select } from '../../../design/Select.js';
import { TextField } from '../../../design/TextField.js';

const doseUnits = (['mg/kg', 'µg/kg', 'mg/m²', 'µg/m²'] as const).map((id) => ({ id, name: id }));
const strengths = (['mg/mL', 'µg/mL'] as const).map((id) => ({ id, name: id }));
const surface = ([10, 10.1] as const).map((n) => ({ id: String(n), name: String(n), n }));
const syringes = ([0.01, 0.05, 0.1, 0.5] as const).map((n) => ({ id: String(n), name: `${n} mL`, n }));

type Props = {
  n: number;
  line: Partial<DrugLine>;
  onChange: (part: Partial<DrugLine>) => void;
  error: (name: keyof DrugLine) => string | undefined;
  arithmetic: Arithmetic['lines'][number] | undefined;
  onRemove?: (() => void) | undefined;
};

export function DrugLineFields({ n, line, onChange, error, arithmetic, onRemove }: Props) {
  return (
    <fieldset className="drug">
      <legend className="label">Drug {n}, as the vet writes it</legend>
      <div className="form-row">
        <TextField label="Drug" value={line.drug} onChange={(drug) => onChange({ drug })} error={error('drug')} autoComplete="off" />
        <TextField label="Route" value={line.route} onChange={(route) => onChange({ route })} error={error('route')} autoComplete="off" />
        <NumberField label="Dose" value={line.dose} onChange={(dose) => onChange({ dose })} error={error('dose')} />
        <Select label="Dose in" options={doseUnits} value={line.doseUnit} onChange={(doseUnit) => onChange({ doseUnit })} error={error('doseUnit')} />
        {line.doseUnit?.endsWith('m²') && (
          <Select label="Surface constant of your handbook" options={surface} value={line.surfaceConstant === undefined ? undefined : String(line.surfaceConstant)} onChange={(id) => onChange({ surfaceConstant: surface.find((c) => c.id === id)?.n })} error={error('surfaceConstant')} />
        )}
        <NumberField label="Strength on the bottle" value={line.concentration} onChange={(concentration) => onChange({ concentration })} error={error('concentration')} />
        <Select label="Strength in" options={strengths} value={line.concentrationUnit} onChange={(concentrationUnit) => onChange({ concentrationUnit })} error={error('concentrationUnit')} />
        <Select label="Syringe read to" options={syringes} value={line.resolutionMl === undefined ? undefined : String(line.resolutionMl)} onChange={(id) => onChange({ resolutionMl: syringes.find((s) => s.id === id)?.n })} error={error('resolutionMl')} />
        {onRemove && <Button onPress={onRemove}>Take this line out</Button>}
      </div>
      {arithmetic && (
        <div className="why" role="status">
          <b>{arithmetic.words}</b>
          <ol className="sums num">
            {arithmetic.steps.map((s) => (
              <li key={s}>{s}</li>
            ))}
          </ol>
          <p>
            To draw up: <b className="val">{arithmetic.volume}</b>. <span className="quiet">Back again: {arithmetic.back}</span>
          </p>
        </div>
      )}
    </fieldset>
  );
}
