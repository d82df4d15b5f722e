import { visitActions } from '#libs/contracts/actions/visit';
import { SuggestBox } from '../../../design/ComboBox.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { choicesFor, type FormProps } from './form-props.js';

/** The going-home sheet is printed and mailed by this; without it the dog does not leave. */
export function SheetForm(props: FormProps) {
  const entry = useEntry(visitActions.giveSheet);
  return (
    <ActionEntryForm entry={entry} props={props}>
      <p>{t('Print the sheet, go through it with the person who takes the dog home, then say who that was. It is mailed too.')}</p>
      <SuggestBox label={t('Explained to')} suggestions={choicesFor(props.screen, 'people').map((p) => p.name)} {...entry.field('to')} />
    </ActionEntryForm>
  );
}
