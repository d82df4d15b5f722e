import type { PackageScreen } from '#libs/contracts/screens/reader';
import { Button } from '../../design/Button.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { FindingInput } from './FindingInput.js';
import type { JointEntry, JointProblems } from './joint-entry.js';

type Props = { name: string; screen: Pick<PackageScreen, 'value' | 'noValueReasons' | 'findings'>; entry: JointEntry; onChange: (entry: JointEntry) => void; problems: JointProblems };

const decimals = ['whole numbers', 'one decimal', 'two decimals', 'three decimals'];

export function JointFields({ name, screen, entry, onChange, problems }: Props) {
  const { value: rule, noValueReasons, findings } = screen;
  const wrong = (at: string) => (problems[at] === undefined ? {} : { error: problems[at] });
  const setValue = (value: string | undefined) => onChange({ ...entry, value });
  return (
    <div className="joint">
      <h3>{name}</h3>
      {rule.kind === 'number' ? (
        <TextField label={`Value, ${decimals[rule.decimals] ?? `${rule.decimals} decimals`}`} inputMode="decimal" autoComplete="off" unit={rule.unit} value={entry.value} onChange={setValue} {...wrong('value')} />
      ) : (
        <Select label="Grade" options={rule.grades.map((g) => ({ id: g, name: g }))} value={entry.value} onChange={setValue} placeholder="no grade given" {...wrong('value')} />
      )}
      <Select label="or why there is none" options={noValueReasons.map((r) => ({ id: r.code, name: r.words }))} value={entry.reason} onChange={(reason) => onChange({ ...entry, reason })} placeholder="no reason given" {...wrong('reason')} />
      {entry.value && entry.reason && (
        <Button kind="text" onPress={() => onChange({ ...entry, reason: undefined })}>
          Take the reason out
        </Button>
      )}
      {findings.map((field) => (
        <FindingInput key={field.code} field={field} given={entry.findings[field.code]} onChange={(given) => onChange({ ...entry, findings: { ...entry.findings, [field.code]: given } })} error={problems[field.code]} />
      ))}
    </div>
  );
}
