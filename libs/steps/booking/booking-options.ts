import type { z } from 'zod';
import { bookingOptionsAsked, type BookingOptions } from '#libs/contracts/booking';
import { localDay } from '#libs/pathway/zones';
import type { Actor } from '#libs/register/actor';
import type { RegisterDeps } from '#libs/register/deps';
import { existingDay, parseInput } from '#libs/register/parse-input';
import { pricesOf } from '#libs/register/practice/prices-of';
import { badInput, notFound } from '#libs/register/refusal';
import { viewer } from '#libs/register/viewed-sql';
import { staffOnly } from '#libs/register/who-may';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { Protocol } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { BOOKING, type BookingSource } from './booking-source.js';
import { earlierOrders } from './earlier-orders.js';
import { estimateOf } from './estimate-of.js';
import { findSlots } from './find-slots.js';
import { fitOfStudy } from './fit-of-study.js';
import { questionsFor } from './questions-for.js';

type Asked = z.output<typeof bookingOptionsAsked>;
type Chosen = { protocol: Protocol; centre: BookingSource['centres'][number] };

/** Everything the booking form shows for a dog, while it is being filled in. */
export async function bookingOptions(deps: RegisterDeps, actor: Actor, input: z.input<typeof bookingOptionsAsked>): Promise<BookingOptions> {
  staffOnly(actor);
  const asked = parseInput(bookingOptionsAsked, input);
  const now = deps.clock.now();
  const [source] = await deps.db.read<BookingSource>({ practice: actor.practice }, BOOKING, [...viewer(actor), asked.dog, now]);
  if (!source) throw notFound();
  const today = localDay(now.toISOString(), source.zone);
  const day = asked.from === undefined ? today : latest([today, existingDay('from', asked.from)]);
  const chosen = asked.studies.map((study, i) => chosenStudy(source, asked.studies, study, i));
  const studies = offered(source).map((protocol) => ({ protocol, ...fitOfStudy(source, protocol, day) }));
  const blocked = studies.filter((s) => chosen.some((c) => c.protocol === s.protocol)).flatMap((s) => s.problems);
  return {
    day,
    studies: studies.map(({ protocol, problems, says }) => ({
      protocol: protocol.code, version: protocol.version, name: t.known(protocol.deskName), views: protocol.views.filter((v) => v.required).length,
      centres: readersOf(source, protocol).map(({ id, name }) => ({ id, name })), problems, says,
    })),
    slots: source.dog.died ? [] : findSlots(source, { protocols: chosen.map((c) => c.protocol), from: latest([day, ...blocked.flatMap((p) => p.earliestDate ?? [])]), days: asked.days, now }),
    estimate: estimate(source, chosen),
    questions: questionsFor(source.dog),
    advice: source.advice,
    people: source.people,
    repeats: earlierOrders(source.orders),
  };
}

const latest = (days: string[]): string => days.reduce((a, b) => (a > b ? a : b));
const readersOf = ({ centres }: BookingSource, { code }: Protocol) => centres.filter((c) => c.protocols.includes(code));

/** An invented study is offered only where a centre says that it reads it. */
const offered = (source: BookingSource): Protocol[] => currentProtocols().filter((p) => !p.invented || readersOf(source, p).length > 0);

function chosenStudy(source: BookingSource, all: Asked['studies'], study: Asked['studies'][number], i: number): Chosen {
  const protocol = currentProtocols().find((p) => p.code === study.protocol && p.version === study.version);
  if (!protocol) throw badInput(`studies.${i}`, t('This study is not offered in that version. Reload the page.'));
  if (all.findIndex((s) => s.protocol === study.protocol) !== i) throw badInput(`studies.${i}`, t('{deskName} is chosen twice. One of each is enough.', { deskName: protocol.deskName }));
  const centre = readersOf(source, protocol).find((c) => c.id === study.centre);
  if (!centre) throw badInput(`studies.${i}.centre`, t('This centre does not read this study. Choose another centre.'));
  return { protocol, centre };
}

/** Nothing is asked for while nothing is chosen. */
function estimate(source: BookingSource, chosen: Chosen[]): BookingOptions['estimate'] {
  const prices = pricesOf(source.prices, source.currency);
  if (chosen.length === 0) return { lines: [], total: { amountMinor: 0, currency: prices.currency } };
  return estimateOf({ prices, studies: chosen.map(({ protocol, centre }) => ({ protocol: protocol.code, version: protocol.version, centre })) });
}
