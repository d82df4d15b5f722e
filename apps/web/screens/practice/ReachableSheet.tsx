import { reachableDays, type ReachableDays } from '#libs/contracts/people';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Loading } from '../../design/Empty.js';
import { fullDay, list } from '../../design/format.js';
import { NumberField } from '../../design/NumberField.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { AddForm } from './AddForm.js';
import { useReachableDays } from './queries.js';

const days = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'].map((name, i) => ({ id: String(i + 1), name }));

/** No letter goes out at night, or before a day when whoever reads it reaches nobody. */
export function ReachableSheet({ edits }: { edits: boolean }) {
  const { data, error, add } = useReachableDays();
  return (
    <Sheet title="When owners reach somebody">
      {!data ? (
        error ? <ErrorBar error={error} /> : <Loading what="the days" />
      ) : (
        <>
          <p>
            {list(days.filter((d) => data.weekdays.includes(Number(d.id))).map((d) => d.name))}
            {data.closed.length > 0 && `, not on ${list(data.closed.map(fullDay))}`}.
          </p>
          <p className="small quiet">
            {data.quietFrom === data.quietTo ? 'Letters leave at any hour' : `No letter leaves between ${data.quietFrom} and ${data.quietTo} o’clock`}, and none just before a day on which nobody is reached, unless an owner wants it at once.
          </p>
          {edits && (
            <AddForm opens="Change" saves="Keep these days" schema={reachableDays} start={data} add={add}>
              {(entry) => (
                <>
                  <CheckboxGroup label="Somebody is reached on" options={days} value={entry.values.weekdays?.map(String)} onChange={(chosen) => entry.set('weekdays', chosen?.map(Number))} error={entry.error('weekdays')} />
                  <ClosedDays value={entry.values.closed ?? []} onChange={(closed) => entry.set('closed', closed)} error={entry.error('closed')} />
                  <div className="form-row">
                    <NumberField label="No letter from, hour" {...entry.field('quietFrom')} />
                    <NumberField label="to, hour" {...entry.field('quietTo')} help="The same hour twice: no hour is quiet." />
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

function ClosedDays({ value, onChange, error }: { value: ReachableDays['closed']; onChange: (days: string[]) => void; error?: string | undefined }) {
  return (
    <>
      <TextField label="Closed days, one a line, like 2026-12-24" lines={3} value={value.join('\n')} onChange={(text) => onChange((text ?? '').split('\n'))} {...(error && { error })} />
      {value.some((d) => d.trim() === '') && <Button onPress={() => onChange(value.map((d) => d.trim()).filter(Boolean))}>Remove empty lines</Button>}
    </>
  );
}
