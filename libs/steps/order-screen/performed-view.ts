import type { OrderScreen } from '#libs/contracts/screens/order';
import type { ScreenSource } from './screen-source.js';

type Films = Pick<OrderScreen['exposures'][number], 'image' | 'viewName' | 'attempt'>;

/** What machines say that they did for this order, the newest word of each step. It stands beside what people wrote down, and changes nothing of it. */
export function performedView({ performed, dog }: ScreenSource, films: readonly Films[]): OrderScreen['performed'] {
  const known = new Set([dog.animalId, ...dog.identifiers.map((i) => i.value), ...dog.merged.map((m) => m.animalId)]);
  const steps = grouped(performed);
  return [...steps.entries()].map(([id, rows]) => {
    const last = rows.at(-1)!;
    const said = Object.assign({}, ...rows.map((row) => row.said)) as ScreenSource['performed'][number]['said'];
    const { images = [], patientId = null, each = [], accessionNumber: _, ...rest } = said;
    const here = new Set(rows.flatMap((row) => row.here));
    return {
      ...NOTHING, ...rest, id, from: last.from, at: last.at, state: last.state, each, patientId, otherDog: patientId !== null && !known.has(patientId),
      images: images.length, here: here.size, films: films.filter((film) => here.has(film.image)).map((film) => `${film.viewName}, attempt ${film.attempt}`),
    };
  });
}

const NOTHING = { started: null, ended: null, what: null, reason: null, exposures: null, areaDose: null, entranceDose: null, distanceCm: null };

/** By step, in the order in which they were said. */
export function grouped<Row extends { step: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const steps = new Map<string, Row[]>();
  for (const row of rows) steps.set(row.step, [...(steps.get(row.step) ?? []), row]);
  return steps;
}
