import type { PackageScreen } from '#libs/contracts/screens/reader';
import { Button } from '../../design/Button.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { FindingInput } from './FindingInput.js';
import type { JointEntry, JointProblems } from './joint-entry.js';

type Props = { name: string; screen: Pick<PackageScreen, 'value' | 'noValueReasons' | 'findings'>; entry: JointEntry; onChange: (entry: JointEntry) => void; problems: JointProblems };

export function JointFields({ name, screen, entry, onChange, problems }: Props) {
  const { value: rule, noValueReasons, findings } = screen;
  const wrong = (at: string) => (problems[at] === undefined ? {} : { error: problems[at] });
  const setValue = (value: string | undefined) => onChange({ ...entry, value });
  return (
    <div className="joint">
      <h3>{name}</h3>
      {rule.kind === 'number' ? (
        <TextField label={t('Value, {decimals, plural, =0 {whole numbers} =1 {one decimal} =2 {two decimals} =3 {three decimals} one {# decimal} other {# decimals}}', { decimals: rule.decimals })} inputMode="decimal" autoComplete="off" unit={rule.unit} value={entry.value} onChange={setValue} {...wrong('value')} />
      ) : (
        <Select label={t('Grade')} options={rule.grades.map((g) => ({ id: g, name: g }))} value={entry.value} onChange={setValue} placeholder={t('no grade given')} {...wrong('value')} />
      )}
      <Select label={t('or why there is none')} options={noValueReasons.map((r) => ({ id: r.code, name: r.words }))} value={entry.reason} onChange={(reason) => onChange({ ...entry, reason })} placeholder={t('no reason given')} {...wrong('reason')} />
      {entry.value && entry.reason && (
        <Button kind="text" onPress={() => onChange({ ...entry, reason: undefined })}>
          {t('Take the reason out')}
        </Button>
      )}
      {findings.map((field) => (
        <FindingInput key={field.code} field={field} given={entry.findings[field.code]} onChange={(given) => onChange({ ...entry, findings: { ...entry.findings, [field.code]: given } })} error={problems[field.code]} />
      ))}
    </div>
  );
}
