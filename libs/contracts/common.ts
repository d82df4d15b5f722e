import { z } from 'zod';
import type { Sentence } from '#libs/words/words';

/** Building blocks that several requests and replies share. */
export const id = z.uuid();
export const key = z.uuid();
const DAY = 'A day is written like 2026-11-25, and must be in the calendar.';
/** A day of the calendar; the years are those of living dogs and of plans, so that a slip of the finger is seen. */
export const localDay = z.iso.date(DAY).refine((day) => day >= '1900-01-01' && day < '2200-01-01', DAY);
export const localTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'A time is written like 09:15.');
export const instant = z.iso.datetime();
export const sentence = z.string().trim().min(1, 'Please write a few words.').max(2000, 'At most 2,000 signs.');
export const name = z.string().trim().min(1, 'A name is needed.').max(200, 'At most 200 signs.');
export const email = z.email('This is not a mail address.').max(254);
export const phone = z.string().trim().min(3, 'A phone number is needed.').max(40);
/** A page of a list, counted from 1. */
export const page = z.coerce.number().int().min(1).max(10_000).default(1);
export const paged = z.object({ page });
export type Paged = z.output<typeof paged>;
export const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

export const roles = ['desk', 'nurse', 'radiographer', 'vet', 'manager', 'lead', 'reader'] as const;
export const role = z.enum(roles);
export type Role = z.infer<typeof role>;

export const roleNames: Record<Role, string> = {
  desk: 'front desk',
  nurse: 'nurse',
  radiographer: 'radiographer',
  vet: 'veterinarian',
  manager: 'practice manager',
  lead: 'scheme lead',
  reader: 'reader',
};

export const questions = ['season', 'pregnant', 'nursing', 'ill', 'medicine', 'operated'] as const;
export const question = z.enum(questions);
export type Question = z.infer<typeof question>;
export const answer = z.enum(['yes', 'no', 'unknown']);
export type Answer = z.infer<typeof answer>;

export const questionWords = {
  season: 'In season now, or due in the next weeks?',
  pregnant: 'Pregnant, or mated since the last season?',
  nursing: 'Nursing pups?',
  ill: 'Ill, coughing or off food in the last two weeks?',
  medicine: 'Any medicine, drops or tablets now?',
  operated: 'Any operation on hips, legs or elbows before?',
} as const satisfies Record<Question, Sentence>;

export const money = z.object({ amountMinor: z.int().min(0), currency: z.string().length(3) });
export type Money = z.infer<typeof money>;

export const joint = z.object({
  joint: z.string().max(40),
  value: z.union([z.number(), z.string().max(20)]).optional(),
  reason: z.string().max(40).optional(),
  /** Recorded beside the value: arthrosis, primary lesion, Norberg angle. Which ones, the study's row says. */
  findings: z.record(z.string().max(40), z.union([z.boolean(), z.string().max(40), z.number()])).optional(),
});
export type Joint = z.infer<typeof joint>;

export const password = z.string().min(10, 'At least 10 signs.').max(200);

/** A finding that may stand beside a joint's value, as a form needs it. */
export const findingField = z.object({
  code: z.string(),
  words: z.string(),
  kind: z.enum(['yesNo', 'choice', 'number']),
  choices: z.array(z.object({ code: z.string(), words: z.string() })),
  unit: z.string(),
  min: z.number().nullable(),
  max: z.number().nullable(),
  required: z.boolean(),
});
export type FindingField = z.infer<typeof findingField>;
