import { prices, type Prices } from '#libs/contracts/register';

/** A practice that has set no prices yet asks for nothing; its list of what is missing says so. */
export const pricesOf = (stored: unknown, currency: string): Prices => prices.safeParse(stored).data ?? { currency, taxPercent: 0, sedationMinor: 0, radiographMinor: 0, sendingMinor: 0 };

export const unpriced = ({ sedationMinor, radiographMinor }: Prices): boolean => sedationMinor === 0 && radiographMinor === 0;
