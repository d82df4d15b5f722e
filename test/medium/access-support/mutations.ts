import type { z } from 'zod';
import { shapeOf, type Shape } from './sample.js';

export interface Mutation {
  /** Which field was spoilt, and how. */
  what: string;
  body: unknown;
  /** Whether the contract itself refuses it. */
  refused: boolean;
}

/** Signs and numbers that a form, a scanner, a script or a bad copy may bring. */
const HOSTILE: unknown[] = ['a\0b', '\ud800 half a sign', '=HYPERLINK("x")', "'; DROP TABLE fact; --", '<script>alert(1)</script>', '2026-02-30', '0000-00-00', '9999-12-31', '24:61', Number.MAX_SAFE_INTEGER, -1, 1e300, 0.1];
const WRONG: unknown[] = [null, true, 12, 'words that are no id and no day', [], {}, [null], { a: { b: [] } }];

/** One field at a time, at any depth, wrong in every way; `valid` is a body that the contract takes. */
export function mutationsOf(schema: z.ZodType, valid: unknown): Mutation[] {
  return spoil(shapeOf(schema), valid, []).map(({ path, how, body }) => ({ what: `${path.join('.') || 'body'}: ${how}`, body, refused: !schema.safeParse(body).success }));
}

interface Spoilt { path: string[]; how: string; body: unknown }

function spoil(shape: Shape, value: unknown, path: string[]): Spoilt[] {
  if (shape.oneOf) return spoil(shape.oneOf[0]!, value, path);
  const here = (how: string, body: unknown): Spoilt => ({ path, how, body });
  const bad = [...WRONG, ...HOSTILE, 'x'.repeat((shape.maxLength ?? 3000) + 1), Array.from({ length: 400 }, () => value)];
  const own = bad.map((v) => here(short(v), v));
  if (shape.type === 'object' && shape.properties && isRecord(value)) {
    const inner = Object.entries(shape.properties).flatMap(([key, field]) => {
      const missing = key in value ? [{ path: [...path, key], how: 'missing', body: without(value, key) }] : [];
      return [...missing, ...spoil(field, value[key], [...path, key]).map((s) => ({ ...s, body: { ...value, [key]: s.body } }))];
    });
    return [...own, ...inner];
  }
  if (shape.type === 'array' && shape.items && Array.isArray(value) && value.length > 0)
    return [...own, ...spoil(shape.items, value[0] as unknown, [...path, '0']).map((s) => ({ ...s, body: [s.body, ...(value.slice(1) as unknown[])] }))];
  return own;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
const without = (value: Record<string, unknown>, key: string) => Object.fromEntries(Object.entries(value).filter(([k]) => k !== key));
const short = (value: unknown): string => JSON.stringify(value)?.slice(0, 40) ?? 'nothing';
