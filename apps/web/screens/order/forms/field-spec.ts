import { z } from 'zod';
import { actionInputs, type ActionName } from '#libs/contracts/actions/all';
import { t } from '../../../words/t.js';

export type FieldSpec = {
  name: string;
  title: string;
  help?: string;
  required: boolean;
  min?: number;
  max?: number;
} & (
  | { kind: 'text' | 'lines' | 'email' | 'day' | 'time' | 'number' | 'yesNo' | 'list' | 'other' }
  | { kind: 'choice' | 'choices'; options: string[] }
  | { kind: 'pickOne' | 'pickSome'; pick: string }
);

type Property = z.core.JSONSchema.BaseSchema & { help?: string; pick?: string };

/** The form of an action, read from its contract: so that a new plain action needs no form of its own. */
export function fieldsOf(action: ActionName): FieldSpec[] {
  const schema = z.toJSONSchema(actionInputs[action], { io: 'input', unrepresentable: 'any' });
  const required = new Set(schema.required ?? []);
  return Object.entries(schema.properties ?? {}).flatMap(([name, property]) =>
    typeof property === 'boolean' ? [] : [specOf(name, property as Property, required.has(name))],
  );
}

function specOf(name: string, p: Property, required: boolean): FieldSpec {
  const base = { name, required, title: required ? t.known(p.title ?? name) : t('{label} (may stay empty)', { label: t.known(p.title ?? name) }), ...(p.help && { help: p.help }), ...(p.minimum !== undefined && { min: p.minimum }), ...(p.maximum !== undefined && { max: p.maximum }) };
  if (p.type === 'array') {
    const items = p.items as Property | undefined;
    if (p.pick) return { ...base, kind: 'pickSome', pick: p.pick };
    if (items?.enum) return { ...base, kind: 'choices', options: items.enum.map(String) };
    return { ...base, kind: items?.type === 'string' ? 'list' : 'other' };
  }
  if (p.pick) return { ...base, kind: 'pickOne', pick: p.pick };
  if (p.enum) return { ...base, kind: 'choice', options: p.enum.map(String) };
  if (p.type === 'boolean') return { ...base, kind: 'yesNo' };
  if (p.type === 'number' || p.type === 'integer') return { ...base, kind: 'number' };
  if (p.type !== 'string') return { ...base, kind: 'other' };
  if (p.format === 'date') return { ...base, kind: 'day' };
  if (p.pattern?.includes(':[0-5]')) return { ...base, kind: 'time' };
  if (p.format === 'email') return { ...base, kind: 'email' };
  return { ...base, kind: (p.maxLength ?? 0) >= 300 ? 'lines' : 'text' };
}
