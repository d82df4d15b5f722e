import { useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { fullDay } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';
import { HERE, Told } from '../../words/Told.js';
import { useTellAppeal } from './queries.js';

type Props = { appeal: NonNullable<OwnerPage['results'][number]['appeal']>; practice: OwnerPage['practice'] };

/** The rule is read before the button is there. */
export function SecondReading({ appeal, practice }: Props) {
  const t = useWords();
  const [open, setOpen] = useState(false);
  const tell = useTellAppeal();
  if (!open) {
    return (
      <p>
        <Button onPress={() => setOpen(true)}>{t('I would like a second reading')}</Button>
      </p>
    );
  }
  return (
    <div className="why">
      <p>
        <Told text={t('**Another reader sees the same pictures, and not the first reading.** What that reader finds then stands, whichever way it goes, better or not. This can be asked for once, until {day}. It takes about as long as the first reading.', { day: fullDay(appeal.until, t.language) })} />
      </p>
      <p>
        <Told text={t('Would you rather talk about it first? Phone us on {phone}.', { phone: HERE })} here={<a href={`tel:${practice.phone.replace(/\s/g, '')}`}>{practice.phone}</a>} />
      </p>
      <ErrorBar error={tell.error} />
      <div className="acts">
        <Button kind="ink" onPress={() => tell.mutate({ study: appeal.study, result: appeal.result })}>
          {t('Ask for the second reading')}
        </Button>
        <Button onPress={() => setOpen(false)}>{t('Not now')}</Button>
      </div>
    </div>
  );
}
