import { z } from 'zod';
import { findingField, id, localDay, sentence } from '../common.js';
import { enteredResult } from '../actions/study.js';

/** What a reader sees: a package, never an owner or a practice. */
export const packageRow = z.object({ package: id, number: z.string(), study: z.string(), breed: z.string(), sex: z.string(), ageAtImaging: z.string(), films: z.int(), sentAt: z.string(), dueDay: localDay.nullable(), state: z.enum(['new', 'acknowledged', 'read', 'rejected']), overdue: z.boolean() });
export type PackageRow = z.infer<typeof packageRow>;
export const packageList = z.object({ centre: z.string(), rows: z.array(packageRow), more: z.boolean() });

export const packageScreen = packageRow.extend({
  dogNumber: z.string(),
  neutered: z.boolean(),
  imagedOn: localDay,
  manifest: z.string(),
  zipName: z.string(),
  images: z.array(z.object({ image: z.string(), view: z.string(), viewName: z.string(), attempt: z.int(), accepted: z.boolean(), previewable: z.boolean() })),
  joints: z.array(z.object({ joint: z.string(), name: z.string() })),
  value: z.object({ kind: z.enum(['number', 'grade']), unit: z.string(), min: z.number().nullable(), max: z.number().nullable(), decimals: z.int(), grades: z.array(z.string()) }),
  noValueReasons: z.array(z.object({ code: z.string(), words: z.string() })),
  findings: z.array(findingField),
  reading: z.object({ ref: z.string(), joints: z.array(z.object({ name: z.string(), words: z.string() })), comment: z.string().nullable(), signedBy: z.string(), at: z.string() }).nullable(),
  remarks: z.array(z.string()),
});
export type PackageScreen = z.infer<typeof packageScreen>;

export const readerReject = z.object({ views: z.array(z.string().max(40)).min(1, 'Which views?').max(12), reasons: z.array(sentence.max(200)).min(1, 'Say why.').max(8) });
export const readerResult = enteredResult.pick({ joints: true, comment: true }).extend({ ref: enteredResult.shape.ref.optional(), signedBy: z.string().trim().min(1, 'Sign with your name.').max(200) });
export type ReaderResult = z.infer<typeof readerResult>;
