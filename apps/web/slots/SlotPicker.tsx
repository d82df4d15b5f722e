import { Label, Radio, RadioGroup } from 'react-aria-components';
import type { Slot } from '#libs/contracts/booking';
import { shortDay } from '../design/format.js';
import { t } from '../words/t.js';

export const slotId = (s: Slot) => [s.day, s.start, s.room.id, s.operator.id].join('|');

/** Times at which room, operator, nurse and vet are all free; the number of a time chooses it. */
export function SlotPicker({ slots, value, onChange, error }: { slots: readonly Slot[]; value: Slot | undefined; onChange: (slot: Slot | undefined) => void; error?: string | undefined }) {
  const minutes = slots[0]?.minutes;
  return (
    <RadioGroup className="field wide" value={value ? slotId(value) : null} onChange={(id) => onChange(slots.find((s) => slotId(s) === id))} isInvalid={error !== undefined} validationBehavior="aria">
      <Label className="label">{minutes ? t('Room, operator, nurse and vet all have time then, {minutes} minutes. The number chooses.', { minutes }) : t('Room, operator, nurse and vet all have time then. The number chooses.')}</Label>
      <div
        className="slots"
        onKeyDown={(e) => {
          const chosen = /^[1-9]$/.test(e.key) ? slots[Number(e.key) - 1] : undefined;
          if (chosen) onChange(chosen);
        }}
      >
        {slots.map((s, i) => (
          <Radio key={slotId(s)} value={slotId(s)}>
            <span>
              {shortDay(s.day)} <b className="num">{s.start}</b>
            </span>
            {i < 9 && <kbd aria-hidden="true">{i + 1}</kbd>}
            <span className="label">
              {t('{room}, {operator}, nurse {nurse}, vet {vet}', { room: s.room.name, operator: s.operator.name, nurse: s.nurse.name, vet: s.vet.name })}
            </span>
          </Radio>
        ))}
      </div>
      {slots.length === 0 && <p className="quiet">{t('No time is free for all of them in these days. Look at other days, or ask the practice manager.')}</p>}
      {error && <span className="field-error">{error}</span>}
    </RadioGroup>
  );
}
