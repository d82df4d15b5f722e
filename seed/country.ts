import type { LocalDay } from '#libs/science/local-day';

/** An inland river country that does not exist: its towns, money and free days are invented. */
export const country = {
  name: 'Aldra',
  scheme: 'Aldra Basin scheme',
  towns: ['Dellin', 'Karsby', 'Sorn', 'Threnfold', 'Upper Aldra', 'Mill Stair', 'Sluice Green', 'Long Reach'],
  /** Marks of 100 cents. The code is ours and stands in no list of real money. */
  currency: 'ALM',
  /** Clock data only: some real zone is needed for summer time to be tried. */
  zone: 'Europe/Vienna',
} as const;

/** Month and day of each, invented. */
const FREE = { 'Ice-out Day': '03-14', 'Ferrymen’s Day': '06-02', 'High Water Feast': '09-21', 'Lamp Night': '12-13' };

/** The invented free days from the year before to the year after, as local days. */
export function freeDays(year: number): LocalDay[] {
  return [year - 1, year, year + 1].flatMap((y) => Object.values(FREE).map((day) => `${y}-${day}`));
}
