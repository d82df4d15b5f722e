import type { ConsentSheet, SheetProblems } from './consent-sheet.js';
import { RadioChoice, yesNo } from '../../design/RadioChoice.js';
import { TextField } from '../../design/TextField.js';

type Props = { sheet: ConsentSheet; onChange: (part: Partial<ConsentSheet>) => void; problems: SheetProblems; currency: string; dog: string };

/** Asked before, calmly, because on the day there may be no time to ask. */
export function Emergency({ sheet, onChange, problems, currency, dog }: Props) {
  return (
    <fieldset className="emergency">
      <legend>If something goes wrong on the day</legend>
      <p>This is rare. The vet always tries to reach you first, and decides with you when there is time.</p>
      <RadioChoice label={`If ${dog}’s heart or breathing stops: shall they try to bring ${dog} back?`} value={sheet.resuscitate} onChange={(resuscitate) => onChange({ resuscitate })} options={yesNo} size="tablet" error={problems.resuscitate} />
      <TextField label={`Up to how much may help cost before anyone has reached you, in ${currency}?`} value={sheet.limit} onChange={(limit) => onChange({ limit })} inputMode="decimal" autoComplete="off" error={problems.limit} />
      <TextField label="A number where you answer on that day" type="tel" value={sheet.number} onChange={(number) => onChange({ number })} autoComplete="tel" error={problems.number} />
      <TextField label="Who may fetch the dog" lines={2} value={sheet.collectors} onChange={(collectors) => onChange({ collectors })} help="One name on each line." error={problems.collectors} />
    </fieldset>
  );
}
