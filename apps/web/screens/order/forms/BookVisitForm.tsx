import { useState } from 'react';
import type { Slot } from '#libs/contracts/booking';
import { useBookingOptions } from '../../../api/booking.js';
import { DateField } from '../../../design/DateField.js';
import { Loading } from '../../../design/Empty.js';
import { ErrorBar } from '../../../design/Notice.js';
import { EntryForm } from '../../../entry/EntryForm.js';
import { SlotPicker } from '../../../slots/SlotPicker.js';
import { t } from '../../../words/t.js';
import { visitOf, type FormProps } from './form-props.js';

/** A day and time for a visit that is wanted, or another one for a visit that is booked. */
export function BookVisitForm(props: FormProps) {
  const { screen } = props;
  const visit = visitOf(props);
  const [from, setFrom] = useState<string>();
  const [slot, setSlot] = useState<Slot>();
  const [tries, setTries] = useState(0);
  const studies = screen.studies.filter((s) => visit?.studies.includes(s.id) ?? true).map((s) => ({ protocol: s.protocol, version: s.version, centre: s.centre.id }));
  const options = useBookingOptions({ dog: screen.dog.id, studies, days: 14, ...(from && { from }) });
  const missing = tries > 0 && !slot ? { slot: t('Choose a time.') } : {};
  return (
    <EntryForm
      label={props.next.label}
      tries={tries}
      errors={missing as Record<string, string>}
      failure={props.failure}
      busy={props.busy}
      onSubmit={() => {
        setTries((n) => n + 1);
        if (slot) props.submit({ day: slot.day, start: slot.start, minutes: slot.minutes, room: slot.room.id, operator: slot.operator.id, nurse: slot.nurse.id, vet: slot.vet.id });
      }}
    >
      <DateField label={t('Not before (may stay empty)')} value={from} onChange={setFrom} />
      <ErrorBar error={options.error} />
      {options.data?.studies.filter((s) => studies.some((c) => c.protocol === s.protocol)).flatMap((s) => s.problems.map((p) => <p key={s.protocol + p.code} className="why"><b>{s.name}.</b> {p.words}</p>))}
      {options.data ? <SlotPicker slots={options.data.slots} value={slot} onChange={setSlot} error={'slot' in missing ? missing.slot : undefined} /> : options.isPending && <Loading what={t('free times')} />}
    </EntryForm>
  );
}
