import type { Said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import { stored } from '#libs/words/stored';
import type { Tx } from '#libs/platform/database/db';
import type { ChannelKind } from '#libs/contracts/dispatch';
import type { Line } from './channels/open-channel.js';
import type { Work } from '../record/work.js';
import type { PackageSummary } from './seal-package.js';
import type { SentNote } from './withdraw-sent.js';

export type DeliveryState = 'open' | 'stopped' | 'arrived' | 'refused' | 'ended';
export type ItemState = 'waiting' | 'claimed' | 'stored' | 'arrived' | 'refused';

export interface ItemRow {
  place: number; name: string; named: Said | null; image: string | null; state: ItemState; words: string | null; sentences: Tellable[] | null;
  sopClass: string | null; sopUid: string | null; studyUid: string | null; seriesUid: string | null; sentSha: string | null; size: number | null;
}

/** One sending as it stands, with the channel that it was given. */
export interface Delivery extends Line {
  send: string; order: string; practice: string; package: string; study: string; centre: string;
  kind: Exclude<ChannelKind, 'link'>; state: DeliveryState; manifest: string; summary: PackageSummary; note: SentNote | null; zone: string;
  items: ItemRow[];
}

export async function readDelivery(tx: Tx, send: string): Promise<Delivery | undefined> {
  const [row] = await tx.$queryRaw<Delivery[]>`
    SELECT d.send_id AS send, d.order_id AS order, d.practice_id AS practice, d.package_id AS package, d.study_id AS study, d.centre_id AS centre, d.kind, d.state, d.note, p.manifest, p.summary, (SELECT zone FROM practice WHERE id = d.practice_id) AS zone,
      c.id AS channel, c.address, c.bucket, c.region, c.account, s.secret,
      (SELECT jsonb_agg(jsonb_build_object('place', i.place, 'name', i.name, 'named', i.named, 'image', i.image, 'state', i.state, 'words', i.words, 'sentences', i.sentences, 'sopClass', i.sop_class, 'sopUid', i.sop_uid, 'studyUid', i.study_uid, 'seriesUid', i.series_uid, 'sentSha', i.sent_sha, 'size', i.size) ORDER BY i.place)
        FROM delivery_item i WHERE i.send_id = d.send_id) AS items
    FROM delivery d JOIN package p ON p.id = d.package_id JOIN LATERAL (
      SELECT * FROM centre_channel n WHERE n.practice_id = d.practice_id AND n.centre_id = d.centre_id AND n.kind = d.kind ORDER BY n.seq DESC LIMIT 1
    ) c ON true LEFT JOIN centre_channel_secret s ON s.channel_id = c.id
    WHERE d.send_id = ${send}::uuid`;
  return row;
}

/** False when a person has ended the sending meanwhile. */
export async function touchDelivery(tx: Tx, send: string, now: Date): Promise<boolean> {
  return (await tx.$executeRaw`UPDATE delivery SET state = 'open', words = NULL, sentences = NULL, touched_at = ${now} WHERE send_id = ${send}::uuid AND state IN ('open', 'stopped')`) > 0;
}

export const closeDelivery = (tx: Tx, send: string, now: Date, state: DeliveryState, told: Tellable[] | null): Promise<number> => {
  const { words, sentences } = told ? stored(told) : { words: null, sentences: null };
  return tx.$executeRaw`UPDATE delivery SET state = ${state}, words = ${words?.slice(0, 500) ?? null}, sentences = ${sentences}::jsonb, touched_at = ${now} WHERE send_id = ${send}::uuid AND state IN ('open', 'stopped')`;
};

export const setItem = (tx: Tx, { send, place, state, told, now }: { send: string; place: number; state: ItemState; told?: Tellable[]; now: Date }): Promise<number> => {
  const { words, sentences } = told ? stored(told) : { words: null, sentences: null };
  return tx.$executeRaw`UPDATE delivery_item SET state = ${state}, words = ${words?.slice(0, 500) ?? null}, sentences = ${sentences}::jsonb, claimed_at = CASE WHEN ${state} = 'claimed' THEN ${now}::timestamptz ELSE claimed_at END, done_at = CASE WHEN ${state} IN ('arrived', 'refused') THEN ${now}::timestamptz END
    WHERE send_id = ${send}::uuid AND place = ${place}`;
};

/**
 * From here on a film may be on its way. The sending is held fast meanwhile, as it is by whoever ends it or calls films back: what they find
 * claimed is told to the archive, and what is not claimed by then stays here.
 */
export async function claimItem(tx: Tx, { send, order }: Delivery, { place, image }: ItemRow, now: Date): Promise<'claimed' | 'ended' | 'takenOut'> {
  if (!(await touchDelivery(tx, send, now))) return 'ended';
  if (image && (await isTakenOut(tx, order, image))) return 'takenOut';
  await setItem(tx, { send, place, state: 'claimed', now });
  return 'claimed';
}

/** Films of a study that are still on their way stay here from now on: to one centre, or to any. */
export const endSendings = ({ tx, order, now }: Work, study: string, centre?: string): Promise<number> =>
  tx.$executeRaw`UPDATE delivery SET state = 'ended', touched_at = ${now}
    WHERE order_id = ${order.id}::uuid AND study_id = ${study}::uuid AND note IS NULL AND state IN ('open', 'stopped') AND (${centre ?? null}::uuid IS NULL OR centre_id = ${centre ?? null}::uuid)`;

/** How many notes told the centre of a film of this package. */
export async function timesCalledBack(tx: Tx, { order, package: sealed, centre }: Delivery, image: string): Promise<number> {
  const [row] = await tx.$queryRaw<{ times: bigint }[]>`SELECT count(*) AS times FROM delivery
    WHERE order_id = ${order}::uuid AND package_id = ${sealed}::uuid AND centre_id = ${centre}::uuid AND note->'films' @> ${JSON.stringify([{ image }])}::jsonb`;
  return Number(row!.times);
}

/** A film that somebody has taken out of the order since it was packed. */
async function isTakenOut(tx: Tx, order: string, image: string): Promise<boolean> {
  const [found] = await tx.$queryRaw<object[]>`SELECT 1 FROM fact out JOIN fact taken ON taken.order_id = out.order_id AND taken.type = 'exposureTaken' AND taken.body->>'exposure' = out.body->>'exposure'
    WHERE out.order_id = ${order}::uuid AND out.type = 'exposureDisowned' AND taken.body->>'image' = ${image}`;
  return found !== undefined;
}
