import { useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { fullDay } from '../../design/format.js';
import { useTellAppeal } from './queries.js';

type Props = { appeal: NonNullable<OwnerPage['results'][number]['appeal']>; practice: OwnerPage['practice'] };

/** The rule is read before the button is there. */
export function SecondReading({ appeal, practice }: Props) {
  const [open, setOpen] = useState(false);
  const tell = useTellAppeal();
  if (!open) {
    return (
      <p>
        <Button onPress={() => setOpen(true)}>I would like a second reading</Button>
      </p>
    );
  }
  return (
    <div className="why">
      <p>
        <b>Another reader sees the same pictures, and not the first reading.</b> What that reader finds then stands, whichever way it goes, better or not. This can be asked for once, until {fullDay(appeal.until)}. It takes about as long as the first reading.
      </p>
      <p>
        Would you rather talk about it first? Phone us on <a href={`tel:${practice.phone.replace(/\s/g, '')}`}>{practice.phone}</a>.
      </p>
      <ErrorBar error={tell.error} />
      <div className="acts">
        <Button kind="ink" onPress={() => tell.mutate({ study: appeal.study, result: appeal.result })}>
          Ask for the second reading
        </Button>
        <Button onPress={() => setOpen(false)}>Not now</Button>
      </div>
    </div>
  );
}
