import { reachableDays, type ReachableDays } from '#libs/contracts/people';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Loading } from '../../design/Empty.js';
import { fullDay, list } from '../../design/format.js';
import { NumberField } from '../../design/NumberField.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useReachableDays } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const weekdays = (['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] satisfies PageSentence[]).map((name, i) => ({ id: String(i + 1), name }));

/** No letter goes out at night, or before a day when whoever reads it reaches nobody. */
export function ReachableSheet({ edits }: { edits: boolean }) {
  const { data, error, add } = useReachableDays();
  const days = named(weekdays);
  return (
    <Sheet title={t('When owners reach somebody')}>
      {!data ? (
        error ? <ErrorBar error={error} /> : <Loading what={t('the days')} />
      ) : (
        <>
          <p>
            {reached(list(days.filter((d) => data.weekdays.includes(Number(d.id))).map((d) => d.name)), list(data.closed.map((day) => fullDay(day))))}
          </p>
          <p className="small quiet">
            {data.quietFrom === data.quietTo
              ? t('Letters leave at any hour, and none just before a day on which nobody is reached, unless an owner wants it at once.')
              : t('No letter leaves between {from} and {to} o’clock, and none just before a day on which nobody is reached, unless an owner wants it at once.', { from: data.quietFrom, to: data.quietTo })}
          </p>
          {edits && (
            <AddForm opens={t('Change')} saves={t('Keep these days')} schema={reachableDays} start={data} add={add}>
              {(entry) => (
                <>
                  <CheckboxGroup label={t('Somebody is reached on')} options={days} value={entry.values.weekdays?.map(String)} onChange={(chosen) => entry.set('weekdays', chosen?.map(Number))} error={entry.error('weekdays')} />
                  <ClosedDays value={entry.values.closed ?? []} onChange={(closed) => entry.set('closed', closed)} error={entry.error('closed')} />
                  <div className="form-row">
                    <NumberField label={t('No letter from, hour')} {...entry.field('quietFrom')} />
                    <NumberField label={t('to, hour')} {...entry.field('quietTo')} help={t('The same hour twice: no hour is quiet.')} />
                  </div>
                </>
              )}
            </AddForm>
          )}
        </>
      )}
    </Sheet>
  );
}

const reached = (days: string, closed: string) => (closed ? t('{days}, not on {closed}.', { days, closed }) : `${days}.`);

function ClosedDays({ value, onChange, error }: { value: ReachableDays['closed']; onChange: (days: string[]) => void; error?: string | undefined }) {
  return (
    <>
      <TextField label={t('Closed days, one a line, like 2026-12-24')} lines={3} value={value.join('\n')} onChange={(text) => onChange((text ?? '').split('\n'))} {...(error && { error })} />
      {value.some((d) => d.trim() === '') && <Button onPress={() => onChange(value.map((d) => d.trim()).filter(Boolean))}>{t('Remove empty lines')}</Button>}
    </>
  );
}
