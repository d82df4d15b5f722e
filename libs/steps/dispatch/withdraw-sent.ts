import { randomUUID } from 'node:crypto';
import type { REJECTIONS } from '#libs/dicom/rejection-note';
import type { Work } from '../record/work.js';
import { deliverSoon } from './start-delivery.js';

/** What the centre's archive is told of films that it has: a note that travels like a film. */
export interface SentNote {
  /** The sending that brought them. */
  of: string;
  why: keyof typeof REJECTIONS;
  words: string;
  /** Why a film is to be taken again, as it was chosen of the view's list. */
  reasons?: string[];
  films: { image: string; sopClassUid: string; sopInstanceUid: string; seriesUid: string }[];
  studyUid: string;
}

export type Withdrawn = Pick<SentNote, 'why' | 'words' | 'reasons'>;
/** All that was sent, but for what is named. */
export interface Which { images?: string[]; study?: string; centre?: string }

interface Sent { send: string; practice: string; package: string; study: string; centre: string; channel: string; films: SentNote['films']; studyUid: string }

/**
 * Films that are not to be used any more and that an archive has: each archive is told once, by the standard's rejection note. Other channels know
 * no such note; what goes by them is the desk's to say.
 */
export async function withdrawSent({ tx, order, now }: Work, { images, study: only, centre: at }: Which, said: Withdrawn): Promise<void> {
  // nothing is claimed meanwhile: see claimItem
  await tx.$queryRaw`SELECT 1 FROM delivery WHERE order_id = ${order.id}::uuid AND note IS NULL ORDER BY send_id FOR UPDATE`;
  const sent = await tx.$queryRaw<Sent[]>`
    SELECT d.send_id AS send, d.practice_id AS practice, d.package_id AS package, d.study_id AS study, d.centre_id AS centre, d.channel_id AS channel, min(i.study_uid) AS "studyUid",
      jsonb_agg(jsonb_build_object('image', i.image, 'sopClassUid', i.sop_class, 'sopInstanceUid', i.sop_uid, 'seriesUid', i.series_uid) ORDER BY i.place) AS films
    FROM delivery d JOIN delivery_item i ON i.send_id = d.send_id
    WHERE d.order_id = ${order.id}::uuid AND d.kind = 'dicomweb' AND d.note IS NULL AND i.state IN ('claimed', 'stored', 'arrived')
      AND (${images ?? null}::text[] IS NULL OR i.image = ANY(${images ?? null}::text[])) AND (${only ?? null}::uuid IS NULL OR d.study_id = ${only ?? null}::uuid) AND (${at ?? null}::uuid IS NULL OR d.centre_id = ${at ?? null}::uuid)
      AND NOT EXISTS (SELECT 1 FROM delivery n, jsonb_array_elements(n.note->'films') f WHERE n.order_id = d.order_id AND n.centre_id = d.centre_id AND f->>'sopInstanceUid' = i.sop_uid)
    GROUP BY d.send_id`;
  for (const { send, practice, package: sealed, study, centre, channel, films, studyUid } of sent) {
    const id = randomUUID();
    const note: SentNote = { of: send, ...said, films, studyUid };
    await tx.$executeRaw`INSERT INTO delivery (send_id, order_id, practice_id, package_id, study_id, centre_id, channel_id, kind, note, touched_at)
      VALUES (${id}::uuid, ${order.id}::uuid, ${practice}::uuid, ${sealed}::uuid, ${study}::uuid, ${centre}::uuid, ${channel}::uuid, 'dicomweb', ${JSON.stringify(note)}::jsonb, ${now})`;
    await tx.$executeRaw`INSERT INTO delivery_item (send_id, place, order_id, name) VALUES (${id}::uuid, 1, ${order.id}::uuid, ${said.words})`;
    await deliverSoon(tx, order.id, id);
  }
}
