import type { Direction, Orientation } from './orientation.js';
import type { Says } from './says.js';
import { deviationFits, deviationIndex as deviationOf } from './deviation-index.js';

/** What is kept of a film's own words beside its picture. */
export type KeptWords = Pick<Says, 'exposureIndex' | 'targetExposureIndex' | 'deviationIndex' | 'orientation' | 'modality' | 'sopClassUid' | 'sopInstanceUid' | 'seriesInstanceUid'>;

export interface SaidOfFilm {
  exposure: { index: number; target: number | null; deviation: number | null; percent: number | null; fits: boolean } | null;
  orientation: { right: Direction; foot: Direction; asOfPeople: boolean } | null;
}

export const keptWords = ({ exposureIndex, targetExposureIndex, deviationIndex, orientation, modality, sopClassUid, sopInstanceUid, seriesInstanceUid }: Partial<Says>): KeptWords =>
  ({ exposureIndex, targetExposureIndex, deviationIndex, orientation, modality, sopClassUid, sopInstanceUid, seriesInstanceUid });

/** The exposure against the machine's own target: by its two indices where both are there, else by the deviation that it sent. */
export function saidOfFilm({ exposureIndex: index, targetExposureIndex: target, deviationIndex: sent, orientation }: Partial<KeptWords>): SaidOfFilm {
  return { exposure: index === undefined ? null : exposureOf(index, target, sent), orientation: (orientation satisfies Orientation | undefined) ?? null };
}

function exposureOf(index: number, target: number | undefined, sent: number | undefined): SaidOfFilm['exposure'] {
  const deviation = deviationOf(index, target) ?? sent;
  return {
    index, target: target ?? null, deviation: deviation === undefined ? null : Math.round(deviation * 10) / 10,
    percent: deviation === undefined ? null : Math.round((10 ** (deviation / 10) - 1) * 100),
    fits: sent === undefined || deviationFits(sent, index, target),
  };
}
