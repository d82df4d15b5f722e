import { parseDateTime, toZoned } from '@internationalized/date';
import { useState } from 'react';
import { z } from 'zod';
import { localDay, localTime, sentence } from '#libs/contracts/common';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { useAct } from '../../../api/act.js';
import { Button } from '../../../design/Button.js';
import { DateField } from '../../../design/DateField.js';
import { TextField } from '../../../design/TextField.js';
import { dayAt } from '../../../design/format.js';
import { EntryForm } from '../../../entry/EntryForm.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';

const lateEntry = z.object({ day: localDay, time: localTime, what: sentence });

/** What was seen and not written down: it is kept with the moment at which it was, and marked with the moment at which it was written. */
export function LateEntryForm({ screen, visit, onClose }: { screen: OrderScreen; visit: VisitView; onClose: () => void }) {
  const act = useAct(screen.id);
  const [key] = useState(() => crypto.randomUUID());
  const entry = useEntry(lateEntry, { day: visit.day ?? dayAt(screen.now, screen.practice.zone) });
  const submit = () => {
    const body = entry.check();
    if (!body) return;
    const at = toZoned(parseDateTime(`${body.day}T${body.time}`), screen.practice.zone).toAbsoluteString();
    if (at > new Date().toISOString()) return entry.check({ time: t('This moment is still to come.') });
    act.mutate({ action: 'recordEvent', on: visit.id, version: screen.version, key, at, input: { what: body.what } }, { onSuccess: onClose, onError: entry.mark });
  };
  return (
    <EntryForm label={t('Keep this entry')} tries={entry.tries} errors={entry.errors} failure={act.error} busy={act.isPending} onSubmit={submit} beside={<Button onPress={onClose}>{t('Leave it')}</Button>}>
      <DateField label={t('Day on which it was')} {...entry.field('day')} />
      <TextField label={t('Time at which it was')} {...entry.field('time')} type="time" />
      <TextField label={t('What you saw or did')} {...entry.field('what')} lines={3} />
    </EntryForm>
  );
}
