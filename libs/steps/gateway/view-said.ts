import { latin } from '#libs/dicom/dog-attributes';
import type { Says } from '#libs/dicom/says';
import type { View } from '#libs/science/protocols/types';

type Told = Pick<Says, 'procedures' | 'viewPosition' | 'laterality'>;

/** Which of the views that the order asks for this image says it is; undefined where it names none of them, or fits several. */
export function viewSaid(said: Told, asked: readonly View[]): View | undefined {
  const words = new Set(said.procedures.map(plain));
  const named = asked.filter((view) => [view.code, view.label, view.shortLabel].some((name) => words.has(plain(name))));
  if (named.length > 0) return only(named);
  const beam = BEAMS[said.viewPosition?.toUpperCase() ?? ''];
  return beam ? only(asked.filter((view) => view.code.startsWith(beam) && SIDES[view.side].includes(said.laterality ?? ''))) : undefined;
}

const only = (views: View[]): View | undefined => (views.length === 1 ? views[0] : undefined);
const plain = (name: string): string => latin(name).toLowerCase().replace(/[^a-z0-9]+/g, ' ').trim();

/** The ways of the beam as consoles write them, and how the codes of such views begin. */
const BEAMS: Record<string, string> = { VD: 'vd', ML: 'ml', MEDIOLATERAL: 'ml', CC: 'cc', CRCD: 'cc', CRANIOCAUDAL: 'cc' };
/** A view of both sides needs no letter for a side. */
const SIDES: Record<View['side'], string[]> = { left: ['L'], right: ['R'], both: ['B', 'U', ''] };
