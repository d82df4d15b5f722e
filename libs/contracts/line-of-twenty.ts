/** The line of twenty dogs: where each outline stands, for paper and screen alike. Units are those of the outline. */

/** A dog from the side, in a box of 60 by 43. */
export const DOG_OUTLINE = 'M10.4 16.6C6.6 15.4 4.2 12.2 3.2 7.4C2.9 5.8 4.9 5.2 5.5 6.7C6.8 10.6 8.9 12.6 12.2 13.2C19 14.4 27 14.4 33.2 13.2C37 12.4 39.4 10.2 41 7C41.8 4.6 43.2 2.6 45.6 2.2C48.2 1.9 50.2 3.2 51.2 5.4L56.4 7.6C58.2 8.4 58.4 10.6 57 11.7C54.8 13.1 52.4 13.5 50 13.4C48.4 15.8 47.2 18.2 46.4 21C45.8 23.6 44.8 25.6 43.4 27.2L43 38.2C44.4 38.5 45.2 39.4 45.2 40.8L38.6 40.8L37.6 28.4C31.6 29.6 26 28.6 21 26.2C20.2 28 19 29.6 17.4 31L18.2 38.2C19.6 38.5 20.4 39.4 20.4 40.8L13.8 40.8L12 33C9.4 30.4 8.2 27 8.4 22.6C8.5 20.4 9.2 18.4 10.4 16.6Z';

const STEP = 60;
const ROW = 82;
const LABEL = 60;
/** Room for the words at both ends, above the dogs. */
const TOP = 30;
const MOST_DASHED = 20;

export interface LineDog { x: number; y: number; kind: 'out' | 'may' | 'dash'; label: string | null; labelX: number; labelY: number }
export interface LineLayout { width: number; height: number; dogs: LineDog[]; ends: { lowX: number; highX: number; highY: number }; unsentAt: { x: number; y: number; anchor: 'start' | 'end' } | null }

/** How many dashed dogs stand beside twenty: those X-rayed and not sent, for every 20 that were. */
export const unsentOfTwenty = (unsent: number, n: number): number => Math.min(MOST_DASHED, Math.round((20 * unsent) / n));

/** `perRow` dogs in a row; the dashed ones follow the last row, or stand in one of their own where there are several rows. */
export function layLine({ from, to, unsent }: { from: number; to: number; unsent: number }, perRow: 20 | 10): LineLayout {
  const rows = 20 / perRow;
  const place = (i: number) => ({ x: (i % perRow) * STEP, y: TOP + Math.floor(i / perRow) * ROW });
  const twenty = Array.from({ length: 20 }, (_, i): LineDog => {
    const at = place(i);
    const labelled = i + 1 === from || i + 1 === to;
    return { ...at, kind: i + 1 >= from && i + 1 <= to ? 'may' : 'out', label: labelled ? String(i + 1) : null, labelX: at.x + STEP / 2 - 2, labelY: at.y + LABEL };
  });
  const own = rows > 1;
  const start = own ? 0 : 20 * STEP + STEP * 0.8;
  const dashed = Array.from({ length: unsent }, (_, i): LineDog => {
    const row = own ? rows + Math.floor(i / perRow) : 0;
    return { x: start + (own ? i % perRow : i) * STEP, y: TOP + row * ROW, kind: 'dash', label: null, labelX: 0, labelY: 0 };
  });
  const width = own || unsent === 0 ? perRow * STEP : start + Math.max(unsent, 3.4) * STEP;
  const dashedRows = own ? Math.ceil(unsent / perRow) : 0;
  return {
    width, height: TOP + (rows + dashedRows) * ROW - (own ? 0 : 14), dogs: [...twenty, ...dashed],
    ends: { lowX: 0, highX: perRow * STEP - 4, highY: own ? TOP + (rows - 1) * ROW + LABEL : 0 },
    unsentAt: unsent === 0 ? null : own ? { x: 0, y: TOP + (rows + dashedRows - 1) * ROW + LABEL, anchor: 'start' } : { x: start, y: TOP + LABEL, anchor: 'start' },
  };
}
