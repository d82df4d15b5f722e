import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { t } from '../../words/t.js';

export type Exposure = OrderScreen['exposures'][number];
export interface ViewRow {
  view: string;
  name: string;
  required: boolean;
  /** Of this visit, the first attempt first. */
  films: Exposure[];
  state: 'accepted' | 'waits' | 'again' | 'toCome';
}

/** Each view that the visit's studies ask for, once, and how far it is. */
export function viewRows(screen: OrderScreen, visit: VisitView): ViewRow[] {
  const studies = screen.studies.filter((s) => visit.studies.includes(s.id));
  const views = studies.flatMap((s) => s.views);
  const rows = new Map(views.map((v) => [v.view, v.name]));
  return [...rows].map(([view, name]) => {
    const asked = views.filter((v) => v.view === view);
    const films = screen.exposures.filter((e) => e.view === view && e.visit === visit.id && !e.disowned);
    return { view, name, required: asked.some((v) => v.required), films, state: asked.every((v) => v.accepted) ? 'accepted' : stateOf(films.at(-1)) };
  });
}

function stateOf(last: Exposure | undefined): ViewRow['state'] {
  if (!last) return 'toCome';
  if (last.verdicts.some((v) => v.verdict === 'retake')) return 'again';
  return 'waits';
}

/** What is taken next: a view that has to be, and neither is accepted nor waits to be judged. */
export const nextRow = (rows: readonly ViewRow[]): ViewRow | undefined => rows.find((r) => r.required && (r.state === 'again' || r.state === 'toCome'));

export const rowWords = ({ state, films }: ViewRow): string => {
  const attempt = films.length;
  if (state === 'again') return t('to be taken again after attempt {attempt}', { attempt });
  if (state === 'toCome') return t('not taken yet');
  if (state === 'waits') return attempt > 1 ? t('to be judged, attempt {attempt}', { attempt }) : t('to be judged');
  return attempt > 1 ? t('accepted, attempt {attempt}', { attempt }) : t('accepted');
};

/** What a film is held beside: the attempt before it, else the one after. */
export function besideFilm(row: ViewRow | undefined, film: Exposure): Exposure | undefined {
  const at = row?.films.findIndex((f) => f.id === film.id) ?? -1;
  return at < 0 ? undefined : (row!.films[at - 1] ?? row!.films[at + 1]);
}
