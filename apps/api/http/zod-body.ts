import { Body, Param, Query, type PipeTransform } from '@nestjs/common';
import { z } from 'zod';
import { t } from '#libs/words/spoken';
import { badInput, StepError } from '#libs/steps/record/step-error';

/** Input is what the contract says, or a sentence for every field that is not. */
export class ZodPipe<T extends z.ZodType> implements PipeTransform<unknown, z.output<T>> {
  constructor(private readonly schema: T, private readonly code: 'BAD_INPUT' | 'NOT_FOUND' = 'BAD_INPUT') {}

  transform(value: unknown): z.output<T> {
    const parsed = this.schema.safeParse(value ?? {});
    if (parsed.success) {
      const path = unwritable(value, []);
      if (path) throw badInput(path.join('.'), t('This holds a sign that cannot be kept. Type it again.'));
      return parsed.data;
    }
    if (this.code === 'NOT_FOUND') throw new StepError('NOT_FOUND');
    throw new StepError('BAD_INPUT', undefined, { fields: parsed.error.issues.map((i) => ({ path: i.path.join('.'), message: t.known(i.message) })) });
  }
}

/** Where a text holds a zero sign or half a sign, which the database does not keep. */
function unwritable(value: unknown, path: string[]): string[] | undefined {
  if (typeof value === 'string') return /\0|\p{Surrogate}/u.test(value) ? path : undefined;
  if (value === null || typeof value !== 'object') return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = unwritable(key, [...path, key]) ?? unwritable(inner, [...path, key]);
    if (found) return found;
  }
  return undefined;
}

export const Input = <T extends z.ZodType>(schema: T) => Body(new ZodPipe(schema));
export const Asked = <T extends z.ZodType>(schema: T) => Query(new ZodPipe(schema));
/** An id that cannot be one is answered like an id that is not there. */
export const Id = (name: string) => Param(name, new ZodPipe(z.uuid(), 'NOT_FOUND'));
export const Sha = (name: string) => Param(name, new ZodPipe(z.string().regex(/^[0-9a-f]{64}$/), 'NOT_FOUND'));
