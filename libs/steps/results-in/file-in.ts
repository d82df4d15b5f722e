import { t } from '#libs/words/spoken';
import { createHash, randomUUID } from 'node:crypto';
import type { DeliveryAnswer, FilePreview, PreviewRow, ResultsFile } from '#libs/contracts/results-in';
import { audit } from '#libs/platform/audit/audit';
import { dogWords, jointWords } from '../order-screen/reading-words.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput } from '../record/step-error.js';
import { answerOf, sayAll, type Kept } from './answer-of.js';
import { eyesOf, type Bringer } from './bringer.js';
import { checkStated, isMeant } from './check-stated.js';
import { readResultsFile } from './read-results-file.js';
import { isStated, type Read } from './stated.js';
import { takeOne } from './take-one.js';

/** What each row would be. Nothing is stored. */
export async function previewFile(deps: StepDeps, bringer: Bringer, file: ResultsFile): Promise<FilePreview> {
  const bytes = Buffer.from(file.content, 'base64');
  const rows: PreviewRow[] = [];
  const { rows: reads, sheet = null } = await readResultsFile(bytes);
  for (const read of reads) rows.push(await previewRow(deps, bringer, read));
  return { hash: hashOf(bytes), sheet, rows: rows.map((row, i) => twice(row, rows.slice(0, i))) };
}

/** The rows that are right, each whole or not at all. What was looked at is what is taken. */
export async function takeFile(deps: StepDeps, bringer: Bringer, file: ResultsFile & { hash: string }): Promise<DeliveryAnswer> {
  const bytes = Buffer.from(file.content, 'base64');
  if (hashOf(bytes) !== file.hash) throw badInput('content', t('The file is not the one that was looked at. Look at it again, then take it.'));
  const delivery = randomUUID();
  const at = deps.clock.now();
  const kept: Kept[] = [];
  for (const read of (await readResultsFile(bytes)).rows) kept.push((await takeOne(deps, bringer, read)).kept);
  const eyes = eyesOf(bringer);
  await ('practice' in eyes ? deps.db.practice(eyes.practice, note) : deps.db.centre(bringer.centre, note));
  return { delivery, at: at.toISOString(), readings: kept.map(answerOf) };

  async function note(tx: Parameters<typeof audit>[0]): Promise<void> {
    const practice = bringer.actor?.practice ?? null;
    await tx.$executeRaw`INSERT INTO result_delivery (id, centre_id, practice_id, way, key, hash, name, at, by, by_name, answer)
      VALUES (${delivery}::uuid, ${bringer.centre}::uuid, ${practice}::uuid, 'file', ${delivery}, ${file.hash}, ${file.name}, ${at}, ${bringer.id}, ${bringer.name}, ${JSON.stringify(kept)}::jsonb)`;
    await audit(tx, { by: bringer.id, role: bringer.role, action: 'bringReadings', practice, subject: delivery, detail: { way: 'file', taken: kept.filter((r) => r.outcome === 'taken').length, of: kept.length } });
  }
}

async function previewRow(deps: StepDeps, bringer: Bringer, read: Read): Promise<PreviewRow> {
  const nothing = { row: read.place, reference: '', number: '', readBy: '', study: null, order: null, joints: [], dog: null, asks: [] };
  if (!isStated(read)) return { ...nothing, state: 'wrong', words: sayAll(read.told) };
  const { number, readBy, package: parcel, order } = read.reading;
  const checked = await checkStated(deps, bringer, read);
  const { found } = checked;
  const row = {
    ...nothing, reference: [parcel, order].filter(Boolean).join(', '), number, readBy, study: found?.summary.study.name ?? null,
    order: found?.accession && found.dog ? { id: found.orderId, accession: found.accession, dog: found.dog } : null,
  };
  if (!isMeant(checked)) return { ...row, state: 'wrong', words: sayAll(checked.told) };
  const { protocol, joints, asks } = checked;
  const shown = joints.map((j) => jointWords(protocol, j, t)).map(({ name, words, flags }) => ({ name, words: [words, ...flags].join('; ') }));
  const there = checked.found.there.includes(checked.key);
  return { ...row, joints: shown, dog: dogWords(protocol, joints, t), asks: asks.map((one) => t.said(one)), state: there ? 'alreadyThere' : 'ready', words: there ? t('This reading is there already. It is not taken twice.') : t('It can be taken.') };
}

/** The same row once more in the same file. */
const twice = (row: PreviewRow, before: PreviewRow[]): PreviewRow =>
  row.state === 'ready' && before.some((b) => b.state === 'ready' && JSON.stringify({ ...b, row: 0 }) === JSON.stringify({ ...row, row: 0 })) ? { ...row, state: 'alreadyThere', words: t('This row stands in the file before. It is not taken twice.') } : row;

const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
