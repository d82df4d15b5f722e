import { said, type Said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { Tx } from '#libs/platform/database/db';
import { PermanentError, RetryableError } from '#libs/platform/queue/job-errors';
import type { WorkerDeps } from '../worker-deps.js';
import { ItemRefusedError, type Channel, type Item } from './channels/channel.js';
import { openChannel } from './channels/open-channel.js';
import { claimItem, closeDelivery, readDelivery, setItem, touchDelivery, type Delivery, type ItemRow, type ItemState } from './delivery.js';
import { noteSending } from './note-sending.js';
import { prepareItem } from './prepare-item.js';

export interface Try { signal: AbortSignal; lastAttempt: boolean }

/**
 * Brings out what has not arrived, from where it stood. Each object is claimed before it leaves the house; one that is found claimed was under way
 * when a worker died, so the centre is asked whether it has it before it is sent again. What the centre took is looked for there afterwards.
 */
export async function deliverPackage(deps: WorkerDeps, send: string, { signal, lastAttempt }: Try): Promise<void> {
  const system = <T>(work: (tx: Tx) => Promise<T>) => deps.db.system('deliver a package', work);
  const delivery = await system((tx) => readDelivery(tx, send));
  if (!delivery || !(await system((tx) => touchDelivery(tx, send, deps.clock.now())))) return;
  try {
    const channel = await openChannel(deps, delivery);
    for (const row of delivery.items) await bringOut(deps, channel, delivery, row, signal);
    await lookFor(deps, channel, delivery, signal);
    await finish(deps, channel, delivery);
  } catch (error) {
    if (error instanceof EndedError) return; // a person's word: there is nothing left to do, and nothing to tell
    const told = error instanceof PermanentError || error instanceof RetryableError ? error.said : said('Something broke on the server.');
    if (error instanceof PermanentError) await system((tx) => closeDelivery(tx, send, deps.clock.now(), 'stopped', [told]));
    // until then the queue tries again by itself; from here on it is a person's
    if (error instanceof PermanentError || lastAttempt) await noteSending(deps, delivery, 'failed', [told]);
    throw error;
  }
}

/** Somebody has ended the sending while it was under way. */
class EndedError extends Error {}

async function bringOut(deps: WorkerDeps, channel: Channel, delivery: Delivery, row: ItemRow, signal: AbortSignal): Promise<void> {
  if (row.state !== 'waiting' && row.state !== 'claimed') return;
  signal.throwIfAborted();
  try {
    const item = await prepareItem(deps, delivery, row);
    if (await channel.has(item, signal)) return await move(deps, delivery, row, 'arrived');
    await claim(deps, delivery, row);
    await channel.put(item, signal);
    await move(deps, delivery, row, 'stored');
  } catch (error) {
    if (!(error instanceof ItemRefusedError)) throw error;
    await move(deps, delivery, row, 'refused', error.said);
  }
}

/** The last word before something leaves the house. */
async function claim({ db, clock }: WorkerDeps, delivery: Delivery, row: ItemRow): Promise<void> {
  const answer = await db.system('claim a film', (tx) => claimItem(tx, delivery, row, clock.now()));
  if (answer === 'ended') throw new EndedError();
  if (answer === 'takenOut') throw new ItemRefusedError(said('It was taken out of the order and stays here.'));
  row.state = 'claimed';
}

async function lookFor(deps: WorkerDeps, channel: Channel, delivery: Delivery, signal: AbortSignal): Promise<void> {
  const missing: Said[] = [];
  for (const row of delivery.items.filter((one) => one.state === 'stored')) {
    if (await channel.has(await prepareItem(deps, delivery, row), signal)) await move(deps, delivery, row, 'arrived');
    else missing.push(nameOf(row));
  }
  if (missing.length > 0) throw new RetryableError(said('The centre said that it has stored {films}, and does not list it.', { films: listed(missing) }));
}

async function finish(deps: WorkerDeps, channel: Channel, delivery: Delivery): Promise<void> {
  const refused = delivery.items.filter((row) => row.state === 'refused');
  if (refused.length > 0) {
    const told = refused.map((row) => whyOf(delivery, row));
    return noteSending(deps, delivery, 'failed', told, 'refused');
  }
  const items: Item[] = [];
  for (const row of delivery.items) items.push(await prepareItem(deps, delivery, row));
  await channel.finish?.(items);
  await noteSending(deps, delivery, channel.handsOver ? 'handedOver' : undefined, [said('the centre has {has} of {of} images', { has: items.length, of: items.length })], 'arrived');
}

/** A note is about many films and has none's name. Rows from before have their text alone. */
function whyOf({ note }: Delivery, row: ItemRow): Tellable {
  const why = row.sentences?.[0] ?? (said(row.words ?? '') as Tellable);
  return note ? why : said('{film}: {why}', { film: nameOf(row), why });
}

const nameOf = ({ named, name }: ItemRow): Said => named ?? said(name);
/** One after the other, as a row of names. */
const listed = ([first, ...others]: Said[]): Said => others.reduce((all, one) => said('{all}; {one}', { all, one }), first!);

async function move(deps: WorkerDeps, { send }: Delivery, row: ItemRow, state: ItemState, why?: Tellable): Promise<void> {
  const now = deps.clock.now();
  await deps.db.system('note how far a film is', (tx) => setItem(tx, { send, place: row.place, state, now, ...(why && { told: [why] }) }));
  Object.assign(row, { state, words: null, sentences: why ? [why] : null });
}
