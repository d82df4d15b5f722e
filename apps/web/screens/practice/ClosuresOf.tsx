import { newClosure, type Closures } from '#libs/contracts/people';
import type { PracticeScreen } from '#libs/contracts/register';
import { DateField } from '../../design/DateField.js';
import { fullDay } from '../../design/format.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useClosures } from './queries.js';

/** What was heard of a centre: closed for a time, or for good. */
export function ClosuresOf({ centre, rows, hears }: { centre: PracticeScreen['centres'][number]; rows: Closures['rows']; hears: boolean }) {
  const { add } = useClosures(centre.id);
  return (
    <>
      {rows.map((r) => (
        <p key={`${r.from} ${r.until}`}>
          <b>{r.until ? t('Closed from {from} to {until}.', { from: fullDay(r.from), until: fullDay(r.until) }) : t('Closed for good from {from}.', { from: fullDay(r.from) })}</b> {r.how} ({r.by})
        </p>
      ))}
      {hears && (
        <AddForm opens={t('It is closed')} saves={t('Write it down')} schema={newClosure} add={add}>
          {(entry) => (
            <>
              <div className="form-row">
                <DateField label={t('From')} {...entry.field('from')} />
                <DateField label={t('To, that day included')} {...entry.field('until')} help={t('Leave empty when it has closed for good: then every open order asks for another centre.')} />
              </div>
              <TextField label={t('How we know')} {...entry.field('how')} />
            </>
          )}
        </AddForm>
      )}
    </>
  );
}
