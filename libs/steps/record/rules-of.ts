import { youngestFor } from '#libs/science/age';
import { holidaysOf } from '#libs/science/holidays';
import { allProtocols } from '#libs/science/protocols/catalogue';
import type { CentreRules, PracticeRules, ProtocolRules, Reachable, Rules } from '#libs/pathway/rules';
import type { CentreRow, OrderRow, PracticeRow, SchemeBreeds } from './order-record.js';

/** The frozen data that this order is judged by, from the register's rows. */
export function rulesOf(row: Pick<OrderRow, 'breed' | 'breeds' | 'practices' | 'centres'>): Rules {
  return {
    sendAll: true,
    protocols: protocolRules(row.breed, row.breeds),
    centres: Object.fromEntries(Object.entries(row.centres ?? {}).map(([id, centre]) => [id, centreRules(centre)])),
    practices: Object.fromEntries(Object.entries(row.practices).map(([id, practice]) => [id, practiceRules(practice)])),
  };
}

// A breed changes no rule but the youngest age, and breeds are few: kept, as this is asked at every read.
const byBreed = new Map<string, Record<string, ProtocolRules>>();

function protocolRules(breed: string, scheme: SchemeBreeds | null): Record<string, ProtocolRules> {
  const key = `${breed} ${JSON.stringify(scheme?.older ?? {})}`;
  let rules = byBreed.get(key);
  if (!rules) {
    rules = Object.fromEntries(
      allProtocols().map((p) => [
        `${p.code}@${p.version}`,
        { views: p.views.filter((v) => v.required).map((v) => v.code), youngest: youngestFor(p, breed, scheme?.older?.[p.code]), consentText: p.consentText, certify: p.issuer.practiceMayCertify },
      ]),
    );
    if (byBreed.size < 2000) byBreed.set(key, rules);
  }
  return rules;
}

const holidays = new Map<string, string[]>();

function regionHolidays(region: string): string[] {
  const year = new Date().getUTCFullYear();
  const key = `${region} ${year}`;
  let days = holidays.get(key);
  if (!days) holidays.set(key, (days = holidaysOf(region, [year - 1, year, year + 1])));
  return days;
}

function centreRules(c: CentreRow): CentreRules {
  const days = c.region ? [...regionHolidays(c.region), ...c.holidays] : c.holidays;
  return { calendar: { zone: c.zone, holidays: days }, ackDays: c.ackDays, resultDays: c.resultDays, remindEvery: c.remindEvery, reminders: c.reminders, appealDays: c.appealDays };
}

const letterModes = { each: { mode: 'each' as const } };

interface ReachablePolicy { reachable?: { weekdays: number[]; closed: string[] }; region?: string; holidays?: string[] }

const WORKING_WEEK = [1, 2, 3, 4, 5];

/** Where a practice has said nothing else: Monday to Friday, without the holidays on which it takes no visits either. */
function reachableOf({ reachable, region, holidays: own = [] }: ReachablePolicy): Reachable {
  return { weekdays: reachable?.weekdays ?? WORKING_WEEK, closed: [...(reachable?.closed ?? []), ...own, ...(region ? regionHolidays(region) : [])] };
}

function practiceRules(p: PracticeRow): PracticeRules {
  const policy = p.policy as { letters?: PracticeRules['letters']; quiet?: PracticeRules['quiet'] } & ReachablePolicy;
  return {
    zone: p.zone,
    letters: policy.letters ?? letterModes.each,
    sedationText: p.texts.consentSedation ?? 'none',
    sendAllText: p.texts.consentSendAll ?? 'none',
    statisticsText: p.texts.consentStatistics ?? 'none',
    quiet: policy.quiet ?? { from: 20, to: 8 },
    reachable: reachableOf(policy),
  };
}
