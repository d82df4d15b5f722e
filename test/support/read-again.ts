import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { actionInputs } from '#libs/contracts/actions/all';
import { addDays } from '#libs/pathway/days';
import type { BookingOptions } from '#libs/contracts/booking';
import { aFilm } from './film.js';
import type { Road } from './road.js';

/** Another slot for the order's newest visit, some days on. */
export async function bookAgain(road: Road, inDays: number): Promise<void> {
  const studies = road.screen.studies.filter((s) => road.visit.studies.includes(s.id)).map((s) => ({ protocol: s.protocol, version: s.version, centre: s.centre.id }));
  const options = await (await road.as('desk')).send<BookingOptions>('/api/booking/options', { dog: road.dog.id, studies, from: addDays(road.today, inDays), days: 7 });
  road.slot = options.slots[0]!;
  const { day, start, minutes, room, operator, nurse, vet } = road.slot;
  await road.act('desk', 'book', road.visit.id, { day, start, minutes, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id });
}

/** A result as the desk enters it from a sheet or a file. */
export async function enters(road: Road, who: 'desk' | 'nurse', input: z.input<(typeof actionInputs)['enterResult']>, study = road.study().id): Promise<string> {
  await road.look();
  await road.act(who, 'enterResult', study, input);
  return road.screen.studies.find((s) => s.id === study)!.results.at(-1)!.id;
}

/** The scan of a sheet of paper, kept as a picture of the order. */
export async function scanOf(road: Road): Promise<string> {
  const desk = await road.as('desk');
  const { body } = await desk.upload(`/api/orders/${road.id}/images`, await aFilm('png'), `sheet-${randomUUID()}.png`).expect(201);
  return (body as { image: string }).image;
}
