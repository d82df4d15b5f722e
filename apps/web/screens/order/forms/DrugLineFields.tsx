import type { DrugLine } from '#libs/contracts/actions/visit';
import type { Arithmetic } from '../../../api/arithmetic.js';
import { Button } from '../../../design/Button.js';
import { NumberField } from '../../../design/NumberField.js';
import { Select } from '../../../design/Select.js';
import { TextField } from '../../../design/TextField.js';
import { t } from '../../../words/t.js';
import { Told } from '../../../words/Told.js';
import { plain } from '../../../design/format.js';

const doseUnits = (['mg/kg', 'µg/kg', 'mg/m²', 'µg/m²'] as const).map((id) => ({ id, name: id }));
const strengths = (['mg/mL', 'µg/mL'] as const).map((id) => ({ id, name: id }));
const surface = [10, 10.1] as const;
const syringes = [0.01, 0.05, 0.1, 0.5] as const;

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
      <legend className="label">{t('Drug {number}, as the vet writes it', { number: n })}</legend>
      <div className="form-row">
        <TextField label={t('Drug')} value={line.drug} onChange={(drug) => onChange({ drug })} error={error('drug')} autoComplete="off" />
        <TextField label={t('Route')} value={line.route} onChange={(route) => onChange({ route })} error={error('route')} autoComplete="off" />
        <NumberField label={t('Dose')} value={line.dose} onChange={(dose) => onChange({ dose })} error={error('dose')} />
        <Select label={t('Dose in')} options={doseUnits} value={line.doseUnit} onChange={(doseUnit) => onChange({ doseUnit })} error={error('doseUnit')} />
        {line.doseUnit?.endsWith('m²') && (
          <Select label={t('Surface constant of your handbook')} options={surface.map((n) => ({ id: String(n), name: plain(n) }))} value={line.surfaceConstant === undefined ? undefined : String(line.surfaceConstant)} onChange={(id) => onChange({ surfaceConstant: surface.find((c) => String(c) === id) })} error={error('surfaceConstant')} />
        )}
        <NumberField label={t('Strength on the bottle')} value={line.concentration} onChange={(concentration) => onChange({ concentration })} error={error('concentration')} />
        <Select label={t('Strength in')} options={strengths} value={line.concentrationUnit} onChange={(concentrationUnit) => onChange({ concentrationUnit })} error={error('concentrationUnit')} />
        <Select label={t('Syringe read to')} options={syringes.map((n) => ({ id: String(n), name: t('{amount} mL', { amount: plain(n) }) }))} value={line.resolutionMl === undefined ? undefined : String(line.resolutionMl)} onChange={(id) => onChange({ resolutionMl: syringes.find((s) => String(s) === id) })} error={error('resolutionMl')} />
        {onRemove && <Button onPress={onRemove}>{t('Take this line out')}</Button>}
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
            <Told text={t('To draw up: **{volume}**.', { volume: arithmetic.volume })} strong="val" /> <span className="quiet">{t('Back again: {sum}', { sum: arithmetic.back })}</span>
          </p>
        </div>
      )}
    </fieldset>
  );
}
