import { z } from 'zod';
import { id, localDay, sentence } from './common.js';

// What happens around a dog's people, its practice and its centre while an order is on its way.

export const authorityCovers = ['sedation', 'study', 'sendAll'] as const;
/** An owner lets somebody else say yes: for what, and from which day to which. */
export const newAuthority = z.object({
  agent: id,
  owner: id,
  covers: z.array(z.enum(authorityCovers)).min(1, 'What may the agent say yes to?'),
  from: localDay,
  until: localDay,
  evidence: sentence,
});
export const authority = z.object({ id, agent: id, agentName: z.string(), owner: id, ownerName: z.string(), covers: z.array(z.enum(authorityCovers)), from: localDay, until: localDay, evidence: z.string(), ended: z.boolean() });
export type Authority = z.infer<typeof authority>;
export const authorityList = z.object({ rows: z.array(authority) });

const twin = z.object({ id, animalId: z.string(), name: z.string(), callName: z.string(), breed: z.string(), sex: z.enum(['male', 'female']), born: localDay, transponder: z.string(), owner: z.string(), orders: z.int() });
export const twins = z.object({ rows: z.array(z.object({ why: z.enum(['number', 'nameAndBirth']), dogs: z.array(twin) })), more: z.boolean() });
export type Twins = z.infer<typeof twins>;
/** `gone` is merged into the dog of the address; its animal number still finds it. */
export const mergeDogs = z.object({ gone: id, why: sentence });

export const startClosing = z.object({ lastDay: localDay });
export const closing = z.object({ lastDay: localDay.nullable(), orders: z.array(z.object({ id, accession: z.string(), dog: z.string(), owner: z.string(), stepLabel: z.string() })) });
export type Closing = z.infer<typeof closing>;

/** Without a last day it is closed for good. */
export const newClosure = z.object({ from: localDay, until: localDay.optional(), how: sentence });
export const closures = z.object({ rows: z.array(z.object({ centre: id, from: localDay, until: localDay.nullable(), how: z.string(), by: z.string() })) });
export type Closures = z.infer<typeof closures>;

/** 1 is Monday. */
const weekday = z.int().min(1).max(7);
/** When an owner who has just read a letter reaches somebody here. */
export const reachableDays = z.object({
  weekdays: z.array(weekday).min(1, 'On at least one day somebody must be reached.').max(7),
  closed: z.array(localDay).max(100).default([]),
  quietFrom: z.int().min(0).max(23),
  quietTo: z.int().min(0).max(23),
});
export type ReachableDays = z.infer<typeof reachableDays>;
