import { visitActions } from '#libs/contracts/actions/visit';
import { CheckboxGroup } from '../../../design/Checkboxes.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import type { FormProps } from './form-props.js';
import { optionWords } from './option-words.js';

const signs = () => (['awake', 'stands', 'swallows', 'warm', 'gums', 'breathing', 'comfortable'] as const).map((id) => ({ id, name: optionWords(id) }));

export function RecoveryForm(props: FormProps) {
  const entry = useEntry(visitActions.signRecovery, { signs: [] });
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet">
      <CheckboxGroup label={t('Recovery signs that you see now')} size="tablet" options={signs()} {...entry.field('signs')} />
      <p className="label">{t('Readings go on, never more than 5 minutes apart, until this is signed.')}</p>
    </ActionEntryForm>
  );
}
