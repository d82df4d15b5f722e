import type { newIdentifier } from '#libs/contracts/register';
import type { z } from 'zod';
import { Select } from '../design/Select.js';
import { TextField } from '../design/TextField.js';
import { useTransponderReader } from '../entry/use-transponder-reader.js';

export type Identifier = z.input<typeof newIdentifier>;
const kinds = [
  { id: 'transponder' as const, name: 'Transponder, 15 digits' },
  { id: 'olderTransponder' as const, name: 'Older transponder' },
  { id: 'tattoo' as const, name: 'Tattoo' },
  { id: 'none' as const, name: 'None' },
];

/** A transponder has no check digit: so it is scanned, or typed twice. */
export function IdentifierFields({ value, onChange, error }: { value: Partial<Identifier>; onChange: (value: Identifier) => void; error: (name: string) => string | undefined }) {
  const set = (part: Partial<Identifier>) => onChange({ kind: 'transponder', how: 'typedTwice', ...value, ...part });
  useTransponderReader((number) => set({ value: number, how: 'scanned', again: undefined }));
  const kind = value.kind ?? 'transponder';
  return (
    <div className="form-row">
      <Select label="Marked by" options={kinds} value={kind} onChange={(k) => set({ kind: k ?? 'transponder' })} />
      {kind !== 'none' && (
        <>
          <TextField label="Number" value={value.value} onChange={(v) => set({ value: v, how: 'typedTwice' })} inputMode={kind === 'tattoo' ? 'text' : 'numeric'} autoComplete="off" error={error('value')} {...(value.how === 'scanned' && value.value && { help: 'Read by the scanner' })} />
          {value.how !== 'scanned' && <TextField label="The number once more" value={value.again} onChange={(again) => set({ again })} inputMode={kind === 'tattoo' ? 'text' : 'numeric'} autoComplete="off" error={error('again')} />}
        </>
      )}
    </div>
  );
}

export function identifierMissing(v: Partial<Identifier>): Record<string, string> {
  if (v.kind === 'none') return {};
  if (!v.value) return { value: 'Scan the dog, or type the number twice.' };
  if (v.how !== 'scanned' && v.again !== v.value) return { again: 'The two numbers differ. Type it once more from the reader’s display.' };
  return {};
}
