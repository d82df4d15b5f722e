import { z } from 'zod';

/** What is read here of a JSON schema. */
export interface Shape {
  type?: string;
  enum?: unknown[];
  const?: unknown;
  anyOf?: Shape[];
  /** Told apart by one field. */
  oneOf?: Shape[];
  properties?: Record<string, Shape>;
  required?: string[];
  items?: Shape;
  minItems?: number;
  maxItems?: number;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  format?: string;
  pattern?: string;
  minLength?: number;
  maxLength?: number;
}

export const shapeOf = (schema: z.ZodType): Shape => z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Shape;

const TEXTS = ['2026-11-20', '09:15', 'a'.repeat(64), 'ALM', 'EN', 'en', 'A few words, and some more of them.', 'words'];

/** The smallest input that a contract lets through; wherever it wants an id, this one. */
export function sample(shape: Shape, id: string): unknown {
  if (shape.const !== undefined) return shape.const;
  if (shape.enum) return shape.enum[0];
  if (shape.anyOf) return sample(shape.anyOf[0]!, id);
  if (shape.oneOf) return sample(shape.oneOf[0]!, id);
  if (shape.type === 'object') return Object.fromEntries((shape.required ?? []).map((key) => [key, sample(shape.properties![key]!, id)]));
  if (shape.type === 'array') return Array.from({ length: shape.minItems ?? 0 }, () => sample(shape.items!, id));
  if (shape.type === 'boolean') return true;
  if (shape.type === 'number' || shape.type === 'integer') return Math.max(shape.minimum ?? 0, shape.exclusiveMinimum === undefined ? 0 : shape.exclusiveMinimum + 1);
  if (shape.format === 'uuid') return id;
  if (shape.format === 'email') return 'somebody@nowhere.example';
  if (shape.format === 'date-time') return '2026-01-01T00:00:00Z';
  const fits = (text: string) => text.length >= (shape.minLength ?? 0) && text.length <= (shape.maxLength ?? Infinity) && (!shape.pattern || new RegExp(shape.pattern).test(text));
  const text = (shape.maxLength && shape.maxLength < 40 ? [...TEXTS].reverse() : [...TEXTS]).find((t) => fits(t));
  if (text === undefined) throw new Error(`No sample for ${JSON.stringify(shape)}.`);
  return text;
}
