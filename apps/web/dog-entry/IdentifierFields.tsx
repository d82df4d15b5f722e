import type { newIdentifier } from '#libs/contracts/register';
import type { z } from 'zod';
import { Select } from '../design/Select.js';
import { TextField } from '../design/TextField.js';
import { useTransponderReader } from '../entry/use-transponder-reader.js';
import { t } from '../words/t.js';
import type { SaidOption } from '../design/Select.js';

export type Identifier = z.input<typeof newIdentifier>;
const kinds: readonly SaidOption<Identifier['kind']>[] = [
  { id: 'transponder', name: 'Transponder, 15 digits' },
  { id: 'olderTransponder', name: 'Older transponder' },
  { id: 'tattoo', name: 'Tattoo' },
  { id: 'none', name: 'None' },
];

/** A transponder has no check digit: so it is scanned, or typed twice. */
export function IdentifierFields({ value, onChange, error }: { value: Partial<Identifier>; onChange: (value: Identifier) => void; error: (name: string) => string | undefined }) {
  const set = (part: Partial<Identifier>) => onChange({ kind: 'transponder', how: 'typedTwice', ...value, ...part });
  useTransponderReader((number) => set({ value: number, how: 'scanned', again: undefined }));
  const kind = value.kind ?? 'transponder';
  return (
    <div className="form-row">
      <Select label={t('Marked by')} options={kinds} value={kind} onChange={(k) => set({ kind: k ?? 'transponder' })} />
      {kind !== 'none' && (
        <>
          <TextField label={t('Number')} value={value.value} onChange={(v) => set({ value: v, how: 'typedTwice' })} inputMode={kind === 'tattoo' ? 'text' : 'numeric'} autoComplete="off" error={error('value')} {...(value.how === 'scanned' && value.value && { help: t('Read by the scanner') })} />
          {value.how !== 'scanned' && <TextField label={t('The number once more')} value={value.again} onChange={(again) => set({ again })} inputMode={kind === 'tattoo' ? 'text' : 'numeric'} autoComplete="off" error={error('again')} />}
        </>
      )}
    </div>
  );
}

export function identifierMissing(v: Partial<Identifier>): Record<string, string> {
  if (v.kind === 'none') return {};
  if (!v.value) return { value: t('Scan the dog, or type the number twice.') };
  if (v.how !== 'scanned' && v.again !== v.value) return { again: t('The two numbers differ. Type it once more from the reader’s display.') };
  return {};
}
