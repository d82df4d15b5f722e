import type { z } from 'zod';
import { questions } from '#libs/contracts/common';
import { groupOptionsAsked, type GroupOptions } from '#libs/contracts/group-booking';
import { localDay } from '#libs/pathway/zones';
import { shown } from '#libs/register/dog-of-row';
import { existingDay, parseInput } from '#libs/register/parse-input';
import { badInput, notFound } from '#libs/register/refusal';
import { viewer } from '#libs/register/viewed-sql';
import { staffOnly } from '#libs/register/who-may';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { bookingOptions } from '../booking/booking-options.js';
import { BOOKING, type BookingSource } from '../booking/booking-source.js';
import { slotsOfDay } from '../booking/find-slots.js';
import { fitOfStudy } from '../booking/fit-of-study.js';
import { questionsFor } from '../booking/questions-for.js';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';

/** Everything the form for several dogs shows: what each could have on that day, and the times of the day. */
export async function groupOptions(deps: StepDeps, actor: Actor, input: z.input<typeof groupOptionsAsked>): Promise<GroupOptions> {
  staffOnly(actor);
  const asked = parseInput(groupOptionsAsked, input);
  const now = deps.clock.now();
  const sources: BookingSource[] = [];
  for (const dog of asked.dogs) {
    const [source] = await deps.db.read<BookingSource>({ practice: actor.practice }, BOOKING, [...viewer(actor), dog, now]);
    if (!source) throw notFound();
    sources.push(source);
  }
  const [first] = sources;
  const day = existingDay('day', asked.day);
  if (day < localDay(now.toISOString(), first!.zone)) throw badInput('day', t('This day has passed. Choose another one.'));
  // What is the same for all of them is asked for once.
  const one = await bookingOptions(deps, actor, { dog: asked.dogs[0]!, studies: asked.studies, from: day });
  const chosen = currentProtocols().filter((p) => asked.studies.some((s) => s.protocol === p.code && s.version === p.version));
  const rows = await dogRows(deps, actor, asked.dogs);
  return {
    day,
    dogs: asked.dogs.map((dog, i) => ({ ...rows.find((r) => r.dog === dog)!, born: sources[i]!.dog.birth.latest, sex: sources[i]!.dog.sex, problems: chosen.flatMap((p) => fitOfStudy(sources[i]!, p, day).problems) })),
    studies: one.studies.map(({ protocol, version, name, views, centres }) => ({ protocol, version, name, views, centres })),
    slots: slotsOfDay(first!, { protocols: chosen, from: day, now }),
    estimate: one.estimate,
    questions: askedOfAny(sources),
    advice: one.advice,
    people: first!.people.filter((p) => sources.every((s) => s.people.some((q) => q.id === p.id))),
  };
}

/** Season, pregnancy and nursing are asked where one of the dogs may be concerned; of the others they are not. */
function askedOfAny(sources: BookingSource[]): GroupOptions['questions'] {
  const all = sources.flatMap((s) => questionsFor(s.dog));
  return questions.flatMap((q) => all.find((a) => a.question === q) ?? []);
}

type DogRow = Pick<GroupOptions['dogs'][number], 'dog' | 'name' | 'registered' | 'transponder' | 'dam'>;

async function dogRows(deps: StepDeps, actor: Actor, dogs: string[]): Promise<DogRow[]> {
  const rows = await deps.db.read<DogRow & { kind: string }>({ practice: actor.practice }, `SELECT d.id AS dog, d.call_name AS name, COALESCE(n.name, d.call_name) AS registered, COALESCE(i.kind, 'none') AS kind, COALESCE(i.value, '') AS transponder, d.dam_name AS dam
    FROM dog d LEFT JOIN LATERAL (SELECT name FROM dog_name WHERE dog_id = d.id ORDER BY valid_from DESC LIMIT 1) n ON true
    LEFT JOIN LATERAL (SELECT kind, value FROM dog_identifier WHERE dog_id = d.id AND valid_until IS NULL AND kind <> 'none' ORDER BY valid_from DESC LIMIT 1) i ON true WHERE d.id = ANY($1::uuid[])`, [dogs]);
  return rows.map(({ kind, ...row }) => ({ ...row, transponder: shown(kind, row.transponder) }));
}
