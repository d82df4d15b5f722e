import { allProtocols } from '#libs/science/protocols/catalogue';

/** A study of an order, once for each centre that it was sent to; or once where it was not sent. */
export interface StudyAt {
  study: string;
  order: string;
  accession: string;
  dog: string;
  protocol: string;
  /** In the words of the desk. */
  name: string;
  centre: string;
  centreName: string;
  /** What the centre asks for one study. */
  feeMinor: number;
  sentOn: string | null;
  readOn: string | null;
  packages: string[];
}

export type Found = { of: StudyAt[] } | { why: 'unknownNumber' | 'otherStudy' | 'neverSent'; of?: StudyAt };

/** Letters and digits alone, so that dashes, spaces and capitals do not matter. */
export const plain = (text: string): string => text.normalize('NFKC').toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/** The protocol that these words name: by its code, or by a name of ours. */
export function protocolNamed(words: string): string | undefined {
  const wanted = plain(words);
  return allProtocols().find((p) => [p.code, p.deskName, p.name].some((name) => plain(name) === wanted))?.code;
}

/** A line's number is an order's or a package's; with the study's name it says which study is meant, and nothing is guessed. */
export function findStudy(line: { centre: string; reference: string; study: string }, studies: readonly StudyAt[]): Found {
  const number = plain(line.reference);
  const known = studies.filter((s) => plain(s.accession) === number || s.packages.some((p) => plain(p) === number));
  if (known.length === 0) return { why: 'unknownNumber' };
  const protocol = protocolNamed(line.study);
  const named = known.filter((s) => s.protocol === protocol);
  if (named.length === 0) return { why: 'otherStudy' };
  const here = named.filter((s) => s.centre === line.centre && s.sentOn !== null);
  return here.length > 0 ? { of: here } : { why: 'neverSent', of: named[0]! };
}
