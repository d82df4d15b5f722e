import { z } from 'zod';
import { id, localDay, sentence } from './common.js';

/** What a person may ask about their own data, in the words that people use at the desk. */
export const requestKinds = ['access', 'correction', 'restriction', 'erasure', 'objection'] as const;
export type RequestKind = (typeof requestKinds)[number];

export const newDataRequest = z.object({ person: id, kind: z.enum(requestKinds), asked: sentence, received: localDay });
export const requestVerified = z.object({ how: sentence });
export const requestExtended = z.object({ until: localDay, why: sentence });
export const requestNoted = z.object({ words: sentence });
export const requestClosed = z.object({ outcome: z.enum(['done', 'refused']), words: sentence });

export const dataRequest = z.object({
  id,
  kind: z.enum(requestKinds),
  asked: z.string(),
  received: localDay,
  /** The last day of the clock, an extension counted in. */
  due: localDay,
  /** No extension goes beyond it. */
  latest: localDay,
  overdue: z.boolean(),
  person: z.object({ id, name: z.string(), email: z.string().nullable(), phone: z.string().nullable(), erased: z.boolean() }),
  verified: z.object({ how: z.string(), by: z.string(), at: z.string() }).nullable(),
  /** The person's data are kept and not used. */
  restricted: z.boolean(),
  objected: z.boolean(),
  closed: z.object({ outcome: z.enum(['done', 'refused']), words: z.string(), by: z.string(), at: z.string() }).nullable(),
  events: z.array(z.object({ type: z.string(), words: z.string(), by: z.string(), at: z.string(), until: localDay.nullable() })),
  /** Orders under a legal hold: as long as there is one, nothing of this person is erased. */
  heldBy: z.array(z.object({ order: id, accession: z.string() })),
  /** What an erasure leaves, and on what ground. */
  kept: z.array(z.object({ what: z.string(), ground: z.string() })),
});
export type DataRequest = z.infer<typeof dataRequest>;
export const dataRequestList = z.object({ today: localDay, zone: z.string(), rows: z.array(dataRequest), more: z.boolean() });
export type DataRequestList = z.infer<typeof dataRequestList>;
