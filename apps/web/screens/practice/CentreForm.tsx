import { newCentre, type PracticeScreen } from '#libs/contracts/register';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { SuggestBox } from '../../design/ComboBox.js';
import { NumberField } from '../../design/NumberField.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { MoneyField } from './MoneyField.js';
import { useAdd } from './queries.js';

const start = { ackDays: 3, resultDays: 10, remindEvery: 3, reminders: 2, appealDays: 30, feeMinor: 0 };

export function CentreForm({ screen }: { screen: PracticeScreen }) {
  const add = useAdd('/centres');
  const studies = screen.protocols.filter((p, i, all) => all.findIndex((q) => q.code === p.code) === i).map((p) => ({ id: p.code, name: p.name }));
  return (
    <AddForm opens={t('Add a centre')} saves={t('Add this centre')} schema={newCentre} add={add} start={{ ...start, zone: screen.practice.zone }}>
      {(entry) => (
        <>
          <TextField label={t('Name')} {...entry.field('name')} autoComplete="off" />
          <TextField label={t('Place')} {...entry.field('place')} autoComplete="off" />
          <TextField label={t('Mail address for packages')} type="email" {...entry.field('email')} autoComplete="off" />
          <CheckboxGroup label={t('Reads')} options={studies} {...entry.field('protocols')} />
          <MoneyField label={t('Fee for one study')} currency={screen.prices.currency} {...entry.field('feeMinor')} />
          <SuggestBox label={t('Time zone')} suggestions={Intl.supportedValuesOf('timeZone')} {...entry.field('zone')} />
          <TextField label={t('Region whose public holidays count')} {...entry.field('region')} help={t('The code of a country or region, like AT or DE-BY. Leave it out to count weekends only.')} autoComplete="off" />
          <TextField label={t('More days on which it is closed')} lines={2} value={entry.values.holidays?.join('\n')} onChange={(text) => entry.set('holidays', text?.split('\n').map((d) => d.trim()).filter(Boolean))} error={Object.entries(entry.errors).find(([path]) => path.startsWith('holidays'))?.[1]} help={t('One a line, like 2026-12-24.')} />
          <div className="form-row">
            <NumberField label={t('Days until it says the films have come')} {...entry.field('ackDays')} />
            <NumberField label={t('Days until the result')} {...entry.field('resultDays')} help={t('Working days of the centre.')} />
          </div>
          <div className="form-row">
            <NumberField label={t('Days between reminders')} {...entry.field('remindEvery')} />
            <NumberField label={t('Reminders at most')} {...entry.field('reminders')} />
            <NumberField label={t('Days to ask for a second reading')} {...entry.field('appealDays')} />
          </div>
        </>
      )}
    </AddForm>
  );
}
