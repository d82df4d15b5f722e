import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import { instantOf } from '#libs/steps/record/local-time';

const MINUTE = 60_000;
/** How far back the first dog of today came in, when the day is old enough. */
const MORNING = 240;
const LAST_SLOT = 23 * 60 + 25;
/** Least age of the day for anything of today to have happened in it. */
const FIRST_SECONDS = 10_000;

/** Days and times of the demo, counted from now, so that today's board is lively whenever it is filled in. */
export class DemoDays {
  readonly now: Date;
  readonly zone: string;
  readonly today: string;
  /** Below 1 soon after midnight: then everything of today happens faster, and still today. */
  readonly pace: number;

  constructor(now: Date, zone: string) {
    this.zone = zone;
    this.today = localDay(now.toISOString(), zone);
    this.now = new Date(Math.max(now.getTime(), instantOf(this.today, '00:00', zone).getTime() + FIRST_SECONDS));
    this.pace = Math.min(1, this.#sinceMidnight / MORNING);
  }

  minutesAgo(minutes: number): Date {
    return new Date(this.now.getTime() - minutes * MINUTE);
  }

  /** The same for what has to have been today: drawn together when the day is young. */
  ago(minutes: number): Date {
    return new Date(this.now.getTime() - minutes * this.pace * MINUTE);
  }

  /** Start of a slot today, kept inside the day; all of a lane move together, so that none overlap. */
  slotToday(inMinutes: number, lane: number[]): string {
    const at = (m: number) => Math.round((this.#sinceMidnight + m) / 5) * 5;
    const [first, last] = [at(Math.min(...lane)), at(Math.max(...lane))];
    const shift = first < 0 ? -first : Math.min(0, LAST_SLOT - last);
    const minute = at(inMinutes) + shift;
    return `${pad(Math.floor(minute / 60))}:${pad(minute % 60)}`;
  }

  /** A day so many days away; from a weekend on to the next working day, or back to the one before. */
  day(inDays: number): string {
    let day = addDays(this.today, inDays);
    while (inDays !== 0 && [0, 6].includes(new Date(`${day}T00:00:00Z`).getUTCDay())) day = addDays(day, Math.sign(inDays));
    return day;
  }

  at(day: string, time: string): Date {
    return instantOf(day, time, this.zone);
  }

  get #sinceMidnight(): number {
    return (this.now.getTime() - instantOf(this.today, '00:00', this.zone).getTime()) / MINUTE;
  }
}

const pad = (n: number): string => String(n).padStart(2, '0');
