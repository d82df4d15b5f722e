import { useState } from 'react';
import { useJoinWaiting } from '../../api/waiting.js';
import { Button } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';

export function JoinForm({ order, visit, dog, onDone }: { order: string; visit: string; dog: string; onDone: () => void }) {
  const [fromDay, setFromDay] = useState<string>();
  const [key] = useState(() => crypto.randomUUID());
  const join = useJoinWaiting();
  return (
    <Sheet title={t('An earlier time for {dog}', { dog })}>
      <div className="form-row">
        <DateField label={t('Not before (may stay empty)')} value={fromDay} onChange={setFromDay} help={t('Nobody is offered a time of today or tomorrow: the dog has to be prepared.')} />
      </div>
      <ErrorBar error={join.error} />
      <div className="acts">
        <Button kind="ink" onPress={() => join.mutate({ order, input: { key, visit, ...(fromDay && { fromDay }) } }, { onSuccess: onDone })}>
          {t('Put on the waiting list')}
        </Button>
        <Button onPress={onDone}>{t('Leave it')}</Button>
      </div>
    </Sheet>
  );
}
