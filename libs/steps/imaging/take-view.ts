import { randomUUID } from 'node:crypto';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { localDay } from '#libs/pathway/zones';
import { staffNames } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Work } from '../record/work.js';

/**
 * One exposure, of an image that was uploaded to this order. One film may serve several studies and is
 * never taken twice for that reason alone. What the image itself says of the dog and the day is compared.
 */
export const takeView = useCase('takeView', async (work, on, input) => {
  const image = await work.tx.image.findFirst({ where: { orderId: work.order.id, sha256: input.image } });
  if (!image) throw badInput('image', 'Upload the picture first.');
  const serves = [...new Set([on, ...input.serves])];
  for (const study of serves) {
    const standing = work.evaluation.studies[study];
    const views = standing && findProtocol(standing.protocol, standing.version)?.views;
    if (!views?.some((v) => v.code === input.view)) throw badInput('serves', 'This view does not belong to one of the studies.');
  }
  const visit = visitAsleep(work, on);
  const exposure = randomUUID();
  const today = localDay(work.now.toISOString(), work.order.rules.practices[work.actor.practice]?.zone ?? 'UTC');
  const imageDay = image.imageDay ? image.imageDay.toISOString().slice(0, 10) : today;
  const differs = [...(imageDay === today ? [] : ['date']), ...(await otherDog(work, image.patientId))];
  return [
    {
      type: 'exposureTaken', visit, exposure, view: input.view, serves, image: input.image, imageDay, people: input.people,
      detail: { names: await staffNames(work, input.people), technique: input.technique, marker: input.marker },
    },
    ...(image.kind === 'dicom' ? [{ type: 'imageChecked' as const, exposure, match: differs.length === 0, fields: differs }] : []),
  ];
});

function visitAsleep(work: Work, study: string): string {
  const visit = Object.values(work.evaluation.visits).find((v) => v.step === 'sedated' && v.studies.includes(study)) ?? Object.values(work.evaluation.visits).find((v) => v.studies.includes(study));
  if (!visit) throw badInput('visit', 'No visit lists this study.');
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
