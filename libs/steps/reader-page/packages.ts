import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { PackageRow, PackageScreen } from '#libs/contracts/screens/reader';
import { localDay } from '#libs/pathway/zones';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import type { PackageSummary } from '../dispatch/seal-package.js';
import { readingForm } from '../order-screen/reading-words.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import type { Reader } from './reader.js';

const PAGE = 50;

export interface ReaderPackage {
  id: string; orderId: string; practiceId: string; studyId: string; manifest: string; summary: PackageSummary;
  sentAt: string; zone: string; state: PackageRow['state']; dueDay: string | null; reading: PackageScreen['reading'];
  /** The zip that was made for this centre, where its films go as a DICOM medium. */
  medium: string | null;
}

const SELECT = `SELECT p.id, p.order_id AS "orderId", p.practice_id AS "practiceId", p.study_id AS "studyId", p.manifest, p.summary,
  to_char(a.sent_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS "sentAt", c.zone, a.state, to_char(a.due_day, 'YYYY-MM-DD') AS "dueDay", a.reading,
  (SELECT d.zip_sha FROM delivery d WHERE d.package_id = p.id AND d.centre_id = $1::uuid AND d.zip_sha IS NOT NULL ORDER BY d.touched_at DESC LIMIT 1) AS medium
  FROM package p JOIN package_access a ON a.package_id = p.id AND a.centre_id = $1::uuid JOIN centre c ON c.id = a.centre_id`;

export async function listPackages(deps: StepDeps, reader: Reader, page: number, perPage = PAGE): Promise<{ centre: string; rows: PackageRow[]; more: boolean }> {
  const rows = await deps.db.read<ReaderPackage>({ centre: reader.centre }, `${SELECT} WHERE ($2::uuid IS NULL OR p.id = $2::uuid) ORDER BY a.state IN ('read', 'rejected'), a.due_day NULLS LAST, a.sent_at, p.id LIMIT $4 OFFSET $3`, [reader.centre, reader.onlyPackage, (page - 1) * perPage, perPage + 1]);
  return { centre: reader.centreName, rows: rows.slice(0, perPage).map((r) => rowOf(r, deps.clock.now())), more: rows.length > perPage };
}

/** The same list as a file for a spreadsheet: as blind as the page. */
export async function packagesAsCsv(deps: StepDeps, reader: Reader): Promise<string> {
  const { rows, more } = await listPackages(deps, reader, 1, MOST_ROWS);
  return csv(['Package', 'Study', 'Breed', 'Sex', 'Age when imaged', 'Films', 'Sent', 'Due', 'State', 'Overdue'], rows.map((r) => [r.number, r.study, r.breed, r.sex, r.ageAtImaging, r.films, r.sentAt, r.dueDay, r.state, r.overdue ? 'yes' : 'no']), more);
}

export async function readPackage(deps: StepDeps, reader: Reader, id: string): Promise<ReaderPackage> {
  if (reader.onlyPackage && reader.onlyPackage !== id) throw notFound();
  const [row] = await deps.db.read<ReaderPackage>({ centre: reader.centre }, `${SELECT} WHERE p.id = $2::uuid`, [reader.centre, id]);
  if (!row) throw notFound();
  return row;
}

const LOOK = `WITH looked AS (
  INSERT INTO audit (practice_id, order_id, by, role, action, subject) SELECT p.practice_id, p.order_id, $3, 'reader', $4, p.number FROM package p JOIN package_access a ON a.package_id = p.id AND a.centre_id = $1::uuid WHERE p.id = $2::uuid
) ${SELECT} WHERE p.id = $2::uuid`;

/** As readPackage, for somebody's eyes or disk: who it was is written down where the practice can read it. */
export async function lookAtPackage(deps: StepDeps, reader: Reader, id: string, action: 'viewPackage' | 'downloadPackage' | 'viewFilm'): Promise<ReaderPackage> {
  if (reader.onlyPackage && reader.onlyPackage !== id) throw notFound();
  const [row] = await deps.db.read<ReaderPackage>({ centre: reader.centre }, LOOK, [reader.centre, id, reader.id, action]);
  if (!row) throw notFound();
  return row;
}

function rowOf(p: ReaderPackage, now: Date): PackageRow {
  const { summary: s } = p;
  return {
    package: p.id, number: s.number, study: s.study.name, breed: s.dog.breed, sex: s.dog.sex, ageAtImaging: s.dog.ageAtImaging, films: s.films.length, sentAt: p.sentAt, dueDay: p.dueDay, state: p.state,
    overdue: p.dueDay !== null && p.state !== 'read' && p.state !== 'rejected' && localDay(now.toISOString(), p.zone) > p.dueDay,
  };
}

/** Blind: the dog's number, breed, sex and age, the films, and nothing of whose they are. */
export async function packageScreen(deps: StepDeps, reader: Reader, id: string): Promise<PackageScreen> {
  const row = await lookAtPackage(deps, reader, id, 'viewPackage');
  const { summary: s } = row;
  const protocol = findProtocol(s.study.protocol, s.study.version)!;
  return {
    ...rowOf(row, deps.clock.now()),
    dogNumber: s.dog.number,
    neutered: s.dog.neutered,
    imagedOn: s.imagedOn,
    manifest: row.manifest,
    zipName: `${s.number}.zip`,
    images: s.films.map((f) => ({ image: f.image, view: f.view, viewName: f.viewName, attempt: f.attempt, accepted: f.accepted, previewable: f.previewSha !== null })),
    ...readingForm(protocol, t),
    reading: row.reading,
    remarks: s.remarks,
  };
}
