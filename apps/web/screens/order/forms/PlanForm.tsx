import { drugLine, visitActions, type DrugLine } from '#libs/contracts/actions/visit';
import { useArithmetic } from '../../../api/arithmetic.js';
import { Button } from '../../../design/Button.js';
import { Checkbox } from '../../../design/Checkboxes.js';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { DrugLineFields } from './DrugLineFields.js';
import { visitOf, type FormProps } from './form-props.js';
import type { SaidOption } from '../../../design/Select.js';

const kinds: readonly SaidOption<'first' | 'topUp'>[] = [
  { id: 'first', name: 'First plan' },
  { id: 'topUp', name: 'More during the sedation' },
];

/** The vet writes; the program shows the arithmetic of what was written, and proposes nothing. */
export function PlanForm(props: FormProps) {
  const visit = visitOf(props);
  const entry = useEntry(visitActions.signPlan, { kind: visit?.step === 'sedated' ? 'topUp' : 'first', weightKg: visit?.admitted?.weightKg, drugs: [{} as DrugLine] });
  const lines: Partial<DrugLine>[] = entry.values.drugs ?? [];
  const finished = lines.flatMap((l) => drugLine.safeParse(l).data ?? []);
  const weight = entry.values.weightKg;
  const arithmetic = useArithmetic(weight && weight >= 0.5 && weight <= 120 && finished.length > 0 ? { weightKg: weight, drugs: finished } : null);
  const change = (i: number, part: Partial<DrugLine>) => entry.set('drugs', lines.map((l, j) => (j === i ? { ...l, ...part } : l)) as DrugLine[]);
  const absent = (): Errors => (entry.values.vetPresent === true ? {} : { vetPresent: t('Only the vet who is here today signs a plan.') });

  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" also={absent}>
      <div className="form-row">
        <RadioChoice label={t('Plan')} options={kinds} {...entry.field('kind')} />
        <NumberField label={t('For today’s weight')} unit={t('kg')} {...entry.field('weightKg')} />
      </div>
      {lines.map((line, i) => {
        const shown = drugLine.safeParse(line).success ? arithmetic.data?.lines[lines.slice(0, i).filter((l) => drugLine.safeParse(l).success).length] : undefined;
        return (
          <DrugLineFields key={i} n={i + 1} line={line} onChange={(part) => change(i, part)} error={(name) => entry.error(`drugs.${i}.${name}`)} arithmetic={shown} onRemove={lines.length > 1 ? () => entry.set('drugs', lines.filter((_, j) => j !== i) as DrugLine[]) : undefined} />
        );
      })}
      {lines.length < 8 && <Button onPress={() => entry.set('drugs', [...lines, {}] as DrugLine[])}>{t('Another drug')}</Button>}
      <p className="label">{t('The program proposes no drug and no dose. What is given, and to which dog, is decided by the vet who signs.')}</p>
      <Checkbox label={t('I am the vet here today, and I sign this plan')} {...entry.field('vetPresent')} />
    </ActionEntryForm>
  );
}
