import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { ChannelKind } from '#libs/contracts/dispatch';
import type { Work } from '../record/work.js';
import type { PackageSummary } from './seal-package.js';

export interface WayOut { id: string; kind: Exclude<ChannelKind, 'link'> }

/** The channel that the practice has entered for this centre; undefined where a link is mailed. */
export async function wayTo({ tx, actor }: Work, centre: string): Promise<WayOut | undefined> {
  const [channel] = await tx.$queryRaw<{ id: string; kind: ChannelKind }[]>`SELECT id, kind FROM centre_channel WHERE practice_id = ${actor.practice}::uuid AND centre_id = ${centre}::uuid ORDER BY seq DESC LIMIT 1`;
  return channel && channel.kind !== 'link' ? { id: channel.id, kind: channel.kind } : undefined;
}

export interface Sending { send: string; package: string; study: string; centre: string }

/** One row for each film, in the package's order; the worker brings them out after the commit. */
export async function startDelivery(work: Work, way: WayOut, sending: Sending, films: PackageSummary['films']): Promise<void> {
  const { tx, order, actor, now } = work;
  await tx.$executeRaw`INSERT INTO delivery (send_id, order_id, practice_id, package_id, study_id, centre_id, channel_id, kind, touched_at)
    VALUES (${sending.send}::uuid, ${order.id}::uuid, ${actor.practice}::uuid, ${sending.package}::uuid, ${sending.study}::uuid, ${sending.centre}::uuid, ${way.id}::uuid, ${way.kind}, ${now})`;
  const items = films.map((film, i) => ({ place: i + 1, name: `${film.viewName}, attempt ${film.attempt}`, named: nameOf(film), image: film.image }));
  await tx.$executeRaw`INSERT INTO delivery_item (send_id, place, order_id, name, named, image)
    SELECT ${sending.send}::uuid, place, ${order.id}::uuid, name, named, image FROM jsonb_to_recordset(${JSON.stringify(items)}::jsonb) AS r(place int, name text, named jsonb, image text)`;
  await deliverSoon(tx, order.id, sending.send);
}

const nameOf = ({ viewName, attempt }: PackageSummary['films'][number]): Tellable => said('{film}, attempt {attempt}', { film: said(viewName), attempt });

export const deliverSoon = (tx: Work['tx'], order: string, send: string): Promise<void> => addToOutbox(tx, 'deliver-package', { order, send }, { dedupe: send });
