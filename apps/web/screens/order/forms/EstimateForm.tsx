import { visitActions } from '#libs/contracts/actions/visit';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { Select } from '../../../design/Select.js';
import { useEntry } from '../../../entry/use-entry.js';
import { EstimateTable } from '../../../estimate/EstimateTable.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { choicesFor, visitOf, type FormProps } from './form-props.js';
import { optionWords } from './option-words.js';

const ways = () => (['phone', 'paper', 'link'] as const).map((id) => ({ id, name: optionWords(id) }));

export function EstimateForm(props: FormProps) {
  const estimate = visitOf(props)?.estimate;
  const entry = useEntry(visitActions.acceptEstimate, { totalMinor: estimate?.totalMinor });
  if (!estimate) return <p>{t('There is no estimate for this visit yet.')}</p>;
  return (
    <ActionEntryForm entry={entry} props={props}>
      <EstimateTable lines={estimate.lines} totalMinor={estimate.totalMinor} currency={estimate.currency} />
      <p>{t('Read it out, then say who accepted and how.')}</p>
      <div className="form-row">
        <Select label={t('Accepted by')} options={choicesFor(props.screen, 'people')} {...entry.field('payer')} />
        <RadioChoice label={t('How')} options={ways()} {...entry.field('how')} />
      </div>
    </ActionEntryForm>
  );
}
