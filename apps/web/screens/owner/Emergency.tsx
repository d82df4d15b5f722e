import type { ConsentSheet, SheetProblems } from './consent-sheet.js';
import { RadioChoice, yesNo } from '../../design/RadioChoice.js';
import { useWords } from '../../words/Speak.js';
import { TextField } from '../../design/TextField.js';

type Props = { sheet: ConsentSheet; onChange: (part: Partial<ConsentSheet>) => void; problems: SheetProblems; currency: string; dog: string };

/** Asked before, calmly, because on the day there may be no time to ask. */
export function Emergency({ sheet, onChange, problems, currency, dog }: Props) {
  const t = useWords();
  return (
    <fieldset className="emergency">
      <legend>{t('If something goes wrong on the day')}</legend>
      <p>{t('This is rare. The vet always tries to reach you first, and decides with you when there is time.')}</p>
      <RadioChoice label={t('If {dog}’s heart or breathing stops: shall they try to bring {dog} back?', { dog })} value={sheet.resuscitate} onChange={(resuscitate) => onChange({ resuscitate })} options={yesNo} size="tablet" error={problems.resuscitate} />
      <TextField label={t('Up to how much may help cost before anyone has reached you, in {currency}?', { currency })} value={sheet.limit} onChange={(limit) => onChange({ limit })} inputMode="decimal" autoComplete="off" error={problems.limit} />
      <TextField label={t('A number where you answer on that day')} type="tel" value={sheet.number} onChange={(number) => onChange({ number })} autoComplete="tel" error={problems.number} />
      <TextField label={t('Who may fetch the dog')} lines={2} value={sheet.collectors} onChange={(collectors) => onChange({ collectors })} help={t('One name on each line.')} error={problems.collectors} />
    </fieldset>
  );
}
