import { createHash, randomUUID } from 'node:crypto';
import { ageWords } from '../record/age-words.js';
import type { ToldOfFilm } from '#libs/dicom/copy-for-centre';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Stated, Work } from '../record/work.js';
import { sizeOfFilm } from '../imaging/stated-size.js';
import { filmsOf, type Film } from './films-of.js';

type SaidSize = NonNullable<ToldOfFilm['stated']>;

/** What the centre may know: the dog's number, breed, sex and age, never an owner, a practice or a room estimate. */
export interface PackageSummary {
  number: string;
  study: { protocol: string; version: string; name: string };
  dog: { number: string; breed: string; sex: string; neutered: boolean; ageAtImaging: string };
  imagedOn: string;
  films: (Omit<Film, 'exposure'> & { viewName: string; kind: string; size: number; previewSha: string | null; width: number; height: number; stated?: SaidSize })[];
  remarks: string[];
}

/** Seals a list of films for one study, once and for ever, with the hash of every one. */
export async function sealPackage(work: Work, study: string, supplements?: string): Promise<Stated[]> {
  const { tx, order, now } = work;
  const standing = work.evaluation.studies[study]!;
  await refuseUnnamed(work);
  const packed = new Set(supplements ? work.facts('packageSealed').filter((f) => f.study === study).flatMap((f) => f.exposures) : []);
  const films = filmsOf(work, study).filter((f) => !packed.has(f.exposure));
  if (films.length === 0) throw new StepError('NOT_AT_THIS_STEP', t('There is no film to pack.'));
  const id = randomUUID();
  const number = await packageNumber(work);
  const summary = await summaryOf(work, standing, number, films);
  const manifest = createHash('sha256').update(JSON.stringify(summary)).digest('hex');
  await tx.$executeRaw`INSERT INTO package (id, order_id, practice_id, study_id, number, manifest, summary, sealed_at)
    VALUES (${id}::uuid, ${order.id}::uuid, ${order.practice}::uuid, ${study}::uuid, ${number}, ${manifest}, ${JSON.stringify(summary)}::jsonb, ${now})`;
  return [{ type: 'packageSealed', study, package: id, exposures: films.map((f) => f.exposure), manifest, ...(supplements ? { supplements } : {}), detail: { number } }];
}

/** Every film that was taken is sent; one that nobody has named would be left behind. */
async function refuseUnnamed({ tx, order, facts }: Work): Promise<void> {
  const named = facts('exposureTaken').map((f) => f.image);
  const left = await tx.receivedImage.count({ where: { OR: [{ orderId: order.id }, { settledOrder: order.id }], leftOutAt: null, sha256: { notIn: named } } });
  if (left > 0) throw new StepError('HELD', left === 1 ? t('An image from the X-ray machine is not named yet. Say which view it is, or leave it out with a reason; then seal.') : t('{left} images from the X-ray machine are not named yet. Say which views they are, or leave them out with a reason; then seal.', { left }));
}

/** Blind: it says nothing of the practice whose order it is. */
async function packageNumber({ tx }: Work): Promise<string> {
  for (;;) {
    const number = `P-${randomUUID().replaceAll('-', '').slice(0, 8).toUpperCase()}`;
    const [taken] = await tx.$queryRaw<object[]>`SELECT 1 FROM package WHERE number = ${number}`;
    if (!taken) return number;
  }
}

async function summaryOf(work: Work, study: { protocol: string; version: string }, number: string, films: Film[]): Promise<PackageSummary> {
  const { tx, order } = work;
  const protocol = findProtocol(study.protocol, study.version)!;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog } });
  const images = await tx.image.findMany({ where: { orderId: order.id, sha256: { in: films.map((f) => f.image) } } });
  const transponder = await tx.dogIdentifier.findFirst({ where: { dogId: order.dog, until: null, kind: { not: 'none' } }, orderBy: { from: 'desc' } });
  const imagedOn = films.map((f) => f.imageDay).sort().at(-1)!;
  const settled = work.facts('viewsSettled').filter((f) => f.study in work.evaluation.studies).map((f) => f.why);
  return {
    number,
    study: { protocol: protocol.code, version: protocol.version, name: protocol.name },
    dog: { number: transponder?.value ?? dog.animalId, breed: dog.breed, sex: dog.sex, neutered: dog.neutered, ageAtImaging: ageWords(dog.bornLatest.toISOString().slice(0, 10), imagedOn) },
    imagedOn,
    films: films.map(({ exposure, ...film }) => {
      const image = images.find((i) => i.sha256 === film.image)!;
      const stated = sizeOfFilm(work, exposure) as SaidSize | null;
      return { ...film, viewName: protocol.views.find((v) => v.code === film.view)?.label ?? film.view, kind: image.kind, size: image.size, previewSha: image.previewSha, width: image.width, height: image.height, ...(stated && { stated }) };
    }),
    remarks: settled.map((why) => `Sent with views missing: ${why}`),
  };
}
