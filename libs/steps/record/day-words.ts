import { longDay, moment, shortDay as shortDayIn } from '#libs/words/days';
import { t } from '#libs/words/spoken';

/** "Wednesday, 25 November 2026". */
export const dayWords = (day: string): string => longDay('en', day);
/** "25 November 2026". */
export const shortDay = (day: string): string => shortDayIn('en', day);
/** The same, to whoever asked and in their language; never for what is stored. */
export const spokenDay = (day: string): string => shortDayIn(t.language, day);
export const spokenMoment = (instant: string, zone: string): string => moment(t.language, instant, zone);
