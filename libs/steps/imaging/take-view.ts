import { randomUUID } from 'node:crypto';
import type { ActionInput } from '#libs/contracts/actions/all';
import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { staffNames } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated, Work } from '../record/work.js';
import { refuseServing } from './film-of.js';
import { sizedBy } from './stated-size.js';

export const takeView = useCase('takeView', exposureOf);

interface Taken extends Pick<ActionInput<'takeView'>, 'size'> { view: string; serves: string[]; image: string; people: string[]; technique: object; marker: string | null }

/**
 * One exposure, of an image that was uploaded to this order or came to it from the machine. One film may serve several studies
 * and is never taken twice for that reason alone. What the image itself says of the dog and the day is compared.
 */
export async function exposureOf(work: Work, on: string, input: Taken): Promise<Stated[]> {
  const image = await work.tx.image.findFirst({ where: { orderId: work.order.id, sha256: input.image } });
  if (!image) throw badInput('image', t('Upload the picture first.'));
  const serves = [...new Set([on, ...input.serves])];
  refuseServing(work, input.view, serves);
  const visit = visitAsleep(work, on);
  const exposure = randomUUID();
  const today = localDay(work.now.toISOString(), work.order.rules.practices[work.actor.practice]?.zone ?? 'UTC');
  const imageDay = image.imageDay ? image.imageDay.toISOString().slice(0, 10) : today;
  // Taken while the reader showed another number, and told only now: kept, and no film of this dog until somebody has looked.
  const unmatched = work.evaluation.visits[visit]!.holds.some((h) => h.code === 'IDENTITY_NOT_MATCHED') ? ['transponder'] : [];
  const differs = [...(imageDay === today ? [] : ['date']), ...(await otherDog(work, image.patientId)), ...unmatched];
  return [
    {
      type: 'exposureTaken', visit, exposure, view: input.view, serves, image: input.image, imageDay, people: input.people,
      detail: { names: await staffNames(work, input.people), technique: input.technique, marker: input.marker },
    },
    ...(input.size ? [await sizedBy(work, { exposure, view: input.view, kind: image.kind }, input.size)] : []),
    ...(image.kind === 'dicom' || unmatched.length > 0 ? [{ type: 'imageChecked' as const, exposure, match: differs.length === 0, fields: differs }] : []),
  ];
}

function visitAsleep(work: Work, study: string): string {
  const visit = Object.values(work.evaluation.visits).find((v) => v.step === 'sedated' && v.studies.includes(study)) ?? Object.values(work.evaluation.visits).find((v) => v.studies.includes(study));
  if (!visit) throw badInput('visit', t('No visit lists this study.'));
  return visit.id;
}

/** A picture without a patient id says nothing; one with another dog's says that it is another dog's. */
async function otherDog({ tx, order }: Work, patientId: string | null): Promise<string[]> {
  if (!patientId) return [];
  const dog = await tx.dog.findUnique({ where: { id: order.dog }, select: { animalId: true } });
  const numbers = await tx.dogIdentifier.findMany({ where: { dogId: order.dog }, select: { value: true } });
  // A dog that was entered twice has two animal numbers, and a film may carry either.
  const merged = await tx.dogMerge.findFirst({ where: { keptId: order.dog, animalId: patientId }, select: { goneId: true } });
  return merged || dog?.animalId === patientId || numbers.some((n) => n.value === patientId) ? [] : ['animalId'];
}
