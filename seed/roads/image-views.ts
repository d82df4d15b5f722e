import { findProtocol } from '#libs/science/protocols/catalogue';
import type { FilmKind } from '../films.js';
import { factsOf, perform, type Road } from './road.js';
import { uploadFilm } from './upload-film.js';
import { scanDog, watch } from './visit.js';

export interface Imaging {
  /** The views to take; left out, all that the visit’s studies ask for. */
  views?: string[];
  kind?: FilmKind;
}

/** Scans at the table and takes each view once for all the studies that it serves, every one accepted. */
export async function imageViews(road: Road, { views, kind }: Imaging = {}): Promise<void> {
  await scanDog(road, 'table');
  for (const view of views ?? viewsWanted(road)) {
    await takeView(road, view, kind);
    await judge(road, 'accept');
  }
}

/** Required views of the visit’s open studies, each once. */
export function viewsWanted(road: Road): string[] {
  const studies = road.evaluation.visits[road.visit]!.studies.map((id) => road.evaluation.studies[id]!);
  return [...new Set(studies.flatMap((s) => s.missing))];
}

export async function takeView(road: Road, view: string, kind: FilmKind = 'even'): Promise<void> {
  await watch(road, 1);
  const serves = road.evaluation.visits[road.visit]!.studies.filter((id) => {
    const { protocol, version } = road.evaluation.studies[id]!;
    return findProtocol(protocol, version)!.views.some((v) => v.code === view);
  });
  const image = await uploadFilm(road, view, kind);
  await perform(road, road.lane.operator, 'takeView', serves[0]!, {
    view, serves, image, marker: 'L', people: [road.lane.operator.id, road.lane.nurse.id], technique: { kv: 66, mas: 12, distanceCm: 110 },
  });
}

/** The last film, for each study that it serves. */
export async function judge(road: Road, verdict: 'accept' | 'retake', reasons: string[] = []): Promise<void> {
  const film = factsOf(road, 'exposureTaken').at(-1)!;
  for (const study of film.serves) await perform(road, road.lane.operator, 'judgeView', study, { exposure: film.exposure, verdict, reasons });
}

export async function endImaging(road: Road): Promise<void> {
  await perform(road, road.lane.operator, 'endImaging', road.visit, {});
}
