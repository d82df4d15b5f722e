import { z } from 'zod';
import { badInput } from '../record/step-error.js';

/** Where a page ended: at an order or a dog, and within it. */
export interface Cursor { at: Date; id: string; resource?: string | undefined }

const shape = z.tuple([z.int().positive(), z.uuid(), z.string().max(64)]);

export const writeCursor = ({ at, id, resource = '' }: Cursor): string => Buffer.from(JSON.stringify([at.getTime(), id, resource])).toString('base64url');

export function readCursor(written: string): Cursor {
  try {
    const [at, id, resource] = shape.parse(JSON.parse(Buffer.from(written, 'base64url').toString()));
    return { at: new Date(at), id, ...(resource && { resource }) };
  } catch {
    throw badInput('after', 'This is no place in a search. Follow the next link as it was given.');
  }
}
