import type { Birth } from '#libs/contracts/register';

/** The earliest and latest day that the entry leaves possible. */
export function birthFrom(precision: Birth['precision'], day: string | undefined, latest: string | undefined): Birth | undefined {
  if (!day) return undefined;
  if (precision === 'estimate') return latest ? { earliest: day, latest, precision } : undefined;
  if (precision === 'day') return { earliest: day, latest: day, precision };
  const [year = '', month = ''] = day.split('-');
  if (precision === 'year') return { earliest: `${year}-01-01`, latest: `${year}-12-31`, precision };
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  return { earliest: `${year}-${month}-01`, latest: `${year}-${month}-${String(last).padStart(2, '0')}`, precision };
}
