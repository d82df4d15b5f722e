import type { BookingOptions } from '#libs/contracts/booking';
import { Select } from '../../design/Select.js';
import { t } from '../../words/t.js';

/** Texts that a vet of the practice approved; none is made up here. */
export function AdvicePart({ advice, value, onChange }: { advice: BookingOptions['advice']; value: string | undefined; onChange: (advice: string | undefined) => void }) {
  if (advice.length === 0) return <p className="small quiet">{t('No preparation advice has been approved for this kind of dog. The practice’s page keeps these texts.')}</p>;
  return <Select label={t('Preparation advice that goes along')} placeholder={t('None')} options={advice.map((a) => ({ id: a.id, name: a.title, hint: t('{dogs}, approved by {name}', { dogs: a.forDogs, name: a.approvedBy }) }))} value={value} onChange={onChange} />;
}
