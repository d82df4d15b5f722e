import { ownerOf, perform, type Road } from './road.js';

/** Signs everything that this visit asks for, on the owner’s page; `statistics` is asked of no road. */
export async function consentTo(road: Road, { sedation = true, statistics = 'yes' }: { sedation?: boolean; statistics?: 'yes' | 'no' | null } = {}): Promise<void> {
  const owner = ownerOf(road);
  const signed = { answer: 'yes' as const, signer: road.dog.person.id, signerRole: 'owner' as const, typedName: road.dog.person.name };
  for (const study of road.evaluation.visits[road.visit]!.studies) {
    await perform(road, owner, 'consentStudy', study, signed);
    await perform(road, owner, 'consentSendAll', study, signed);
  }
  if (statistics) await perform(road, owner, 'answerStatistics', road.order, { answer: statistics, signer: road.dog.person.id });
  if (sedation) await consentToSedation(road);
}

export async function consentToSedation(road: Road): Promise<void> {
  const { person } = road.dog;
  const emergency = { resuscitate: 'yes' as const, limitMinor: 60_000, number: person.phone, collectors: [person.name] };
  await perform(road, ownerOf(road), 'consentSedation', road.visit, { answer: 'yes', signer: person.id, signerRole: 'owner', typedName: person.name, emergency });
}
