import { z } from 'zod';
import { id, name, sentence } from './common.js';

/** DICOM PS3.5: an application's name has up to 16 signs of plain ASCII, and no backslash. */
const aeTitle = z.string().trim().min(1, 'Write the name that the machine gives itself.').max(16, 'Such a name has at most 16 signs.').regex(/^[\x20-\x5b\x5d-\x7e]*$/, 'Use plain letters, digits and signs, as they stand in the machine’s own settings.');
const address = z.string().trim().regex(/^(\d{1,3}(\.\d{1,3}){3}(\/\d{1,2})?|[0-9a-f:]+(\/\d{1,3})?)$/i, 'Write the machine’s IP address, such as 192.168.10.20, or a network, such as 192.168.10.0/24.').max(50);

const port = z.int('Write a port number such as 104.').min(1, 'A port is a number from 1 to 65535.').max(65_535, 'A port is a number from 1 to 65535.').optional();

/** An X-ray machine that may ask for the worklist and send images. */
export const newMachine = z.object({ name, aeTitle, address, port });
export const machines = z.object({
  /** By which a machine calls this program for this practice. */
  called: z.string(),
  port: z.int(),
  rows: z.array(z.object({
    id, name: z.string(), aeTitle: z.string(), address: z.string(),
    /** Where it listens for word of which images are safe. */
    port: z.int().nullable(),
    /** When it last asked whether its images are safe, and what it was told; `unsafe` is null until they were looked into. */
    asked: z.object({ at: z.string(), images: z.int(), unsafe: z.int().nullable(), told: z.boolean() }).nullable(),
  })),
});
export type Machines = z.infer<typeof machines>;

export const unmatchedImage = z.object({
  id,
  at: z.string(),
  from: z.string(),
  why: z.string(),
  previewable: z.boolean(),
  imageDay: z.string().nullable(),
  /** What the image says of itself; nothing of it was checked. */
  said: z.array(z.object({ what: z.string(), words: z.string() })),
});
export type UnmatchedImage = z.infer<typeof unmatchedImage>;
/** What a machine says of its own work, where its numbers led to no order. */
export const unmatchedPerformed = z.object({
  id,
  at: z.string(),
  from: z.string(),
  state: z.enum(['inProgress', 'completed', 'discontinued']),
  why: z.string(),
  said: z.array(z.object({ what: z.string(), words: z.string() })),
});
export type UnmatchedPerformed = z.infer<typeof unmatchedPerformed>;
export const unmatched = z.object({ rows: z.array(unmatchedImage), performed: z.array(unmatchedPerformed), more: z.boolean(), orders: z.array(z.object({ id, name: z.string() })) });
export type Unmatched = z.infer<typeof unmatched>;
export const assignImage = z.object({ order: id });
export const setAsideImage = z.object({ why: sentence });
