import { said, type Said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { StatedReading } from '#libs/contracts/results-in';
import { ScienceError } from '#libs/science/error';
import { parseAccession } from '#libs/science/identifiers/accession';
import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import { allProtocols } from '#libs/science/protocols/catalogue';
import type { PackageSummary } from '../dispatch/seal-package.js';
import type { StepDeps } from '../record/step-deps.js';
import { eyesOf, type Bringer } from './bringer.js';

export interface Found {
  id: string; orderId: string; practiceId: string; studyId: string; number: string; summary: PackageSummary; state: string;
  /** Ids of the readings that are there already. */
  there: string[];
  /** For who sees the order. */
  accession: string | null; dog: string | null;
}

/** Only what was sent to this centre; for a practice, only what it sees of that. A centre sees no order and no dog, so those two stay empty. */
const SENT = `SELECT p.id, p.order_id AS "orderId", p.practice_id AS "practiceId", p.study_id AS "studyId", p.number, p.summary, a.state, app.readings_there(p.id) AS there, o.accession, d.call_name AS dog
FROM package p JOIN package_access a ON a.package_id = p.id AND a.centre_id = $1::uuid LEFT JOIN orders o ON o.id = p.order_id LEFT JOIN dog d ON d.id = o.dog_id
WHERE ($2::text IS NULL OR p.number = $2) AND ($3::text IS NULL OR p.id IN (SELECT app.packages_of_order($3))) ORDER BY a.sent_at DESC`;

/** The package that a reading is of, by numbers alone; or why there is none, which tells nothing of what other centres and practices have. */
export async function findPackage(deps: StepDeps, bringer: Bringer, { package: parcel, order, study, film }: StatedReading): Promise<Found | { told: Tellable[] }> {
  let accession: string | null = null;
  try {
    if (order) accession = parseAccession(order).text;
  } catch (error) {
    if (error instanceof ScienceError) return { told: [error.said] };
    throw error;
  }
  const number = parcel ? numberOf(parcel) : null;
  const sent = await deps.db.read<Found>(eyesOf(bringer), SENT, [bringer.centre, number, accession]);
  const named = namedBy(number, accession);
  if (sent.length === 0) return { told: [number && accession ? said('Nothing under {named} was sent to this centre, or the two do not belong together. Compare the number with the films, then send the reading again.', { named }) : said('Nothing under {named} was sent to this centre. Compare the number with the films, then send the reading again.', { named })] };
  const right = sent.filter((p) => (!study || isNamed(p, study)) && (!film || p.summary.films.some((f) => f.image === film)));
  const [first] = right;
  if (!first) return { told: [film && sent.some((p) => !study || isNamed(p, study)) ? said('This film is not in what was sent under {named}. Compare the film with the number.', { named }) : said('What was sent under {named} is {studies}, and the reading says “{study}”. Correct one of the two.', { named, studies: namesOf(sent), study: study ?? '' })] };
  if (new Set(right.map((p) => p.studyId)).size > 1) return { told: [said('Under {named} this centre was sent {studies}. Name the study or the package.', { named, studies: namesOf(right) })] };
  return first;
}

/** As printed, `P-1A2B3C4D`; dashes and spaces do not matter. */
function numberOf(typed: string): string {
  const plain = normaliseScan(typed);
  return plain.startsWith('P') ? `P-${plain.slice(1)}` : plain;
}

function isNamed({ summary: { study } }: Found, named: string): boolean {
  const protocol = allProtocols().find((p) => p.code === study.protocol && p.version === study.version);
  return [study.protocol, study.name, protocol?.deskName].some((name) => name?.toLowerCase() === named.toLowerCase());
}

function namedBy(number: string | null, accession: string | null): Tellable {
  if (number && accession) return said('package {package} and order {order}', { package: number, order: accession });
  return number ? said('package {package}', { package: number }) : said('order {order}', { order: accession ?? '' });
}

function namesOf(sent: Found[]): Said {
  const each = new Map(sent.map(({ summary: { study } }) => [study.protocol, said('{study} ({code})', { study: said(study.name), code: study.protocol })]));
  const [first, ...others]: Said[] = [...each.values()];
  return others.reduce((all, one) => said('{all} and {one}', { all, one }), first!);
}
