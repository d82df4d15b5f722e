import { z } from 'zod';
import { id, name } from './common.js';
import { lineAnswer } from './line.js';

/** What another program may read. Each is its own yes. */
export const scopes = ['orders', 'results', 'owners'] as const;
export const scope = z.enum(scopes);
export type Scope = z.infer<typeof scope>;
export const scopeWords: Record<Scope, string> = {
  orders: 'Read orders: dogs, studies, visits, consents, films (not the pictures), packages',
  results: 'Read results: values, grades, reports, places in the breed',
  owners: 'Read owners: names, addresses, phones, and who signed',
};

/** Another program of the practice, such as its practice software, that reads by a key of its own. */
export const newKey = z.object({ name, scopes: z.array(scope).min(1, 'Choose at least one.').max(scopes.length, 'Choose each at most once.') });
const keyRow = z.object({ id, name: z.string(), scopes: z.array(scope), at: z.string(), by: z.string(), lastUsed: z.string().nullable() });
export const keys = z.object({
  rows: z.array(keyRow),
  /** Where the programs ask. */
  address: z.string(),
  /** Only in the answer to making one, and never again. */
  made: z.object({ name: z.string(), key: z.string() }).nullable(),
});
export type Keys = z.infer<typeof keys>;

/** What can happen to an order that another program may want to hear of. */
export const orderEvents = [
  'order.opened', 'order.cancelled', 'visit.booked', 'visit.cancelled', 'visit.home', 'films.sent', 'films.acknowledged', 'films.rejected', 'result.accepted', 'result.amended', 'result.withdrawn', 'letter.released', 'dog.died',
] as const;
export const orderEvent = z.enum(orderEvents);
export type OrderEvent = z.infer<typeof orderEvent>;
export const eventWords: Record<OrderEvent, string> = {
  'order.opened': 'An order was opened',
  'order.cancelled': 'An order was cancelled',
  'visit.booked': 'A visit was booked or moved',
  'visit.cancelled': 'A visit was cancelled or missed',
  'visit.home': 'A dog went home',
  'films.sent': 'Films were sent to a centre',
  'films.acknowledged': 'A centre has the films',
  'films.rejected': 'A centre sent films back',
  'result.accepted': 'A result was accepted',
  'result.amended': 'An accepted result was replaced by another',
  'result.withdrawn': 'A result was taken back',
  'letter.released': 'A letter was released',
  'dog.died': 'A dog died',
};

/** What a call is named that a person asked for, to see whether it is heard. */
export const TEST_EVENT = 'test';

/** An address of another program that is called when something happens. */
export const newWebhook = z.object({
  name,
  address: z.url('Write the whole address, such as https://software.example/cotyla.').max(500),
  events: z.array(orderEvent).min(1, 'Choose at least one.').max(orderEvents.length, 'Choose each at most once.'),
});
const webhookRow = z.object({ id, name: z.string(), address: z.string(), events: z.array(orderEvent), at: z.string(), by: z.string(), earlierUntil: z.string().nullable(), /** It was sealed with a key that the server does not have any more. */ secretLost: z.boolean() });
const delivery = z.object({
  id,
  webhook: z.string(),
  of: id,
  /** None of a test call. */
  order: id.nullable(),
  accession: z.string().nullable(),
  event: z.enum([...orderEvents, TEST_EVENT]),
  at: z.string(),
  state: z.enum(['waiting', 'sending', 'delivered', 'givenUp']),
  /** When it is tried next. */
  due: z.string(),
  tries: z.array(z.object({ at: z.string(), words: z.string(), answer: lineAnswer.nullable(), status: z.int().nullable(), detail: z.string().nullable() })),
});
export const webhooks = z.object({
  rows: z.array(webhookRow),
  /** Given up first, then the newest. */
  deliveries: z.array(delivery),
  /** Only in the answer to making one or changing its secret, and never again. */
  secret: z.object({ name: z.string(), secret: z.string() }).nullable(),
});
export type Webhooks = z.infer<typeof webhooks>;
