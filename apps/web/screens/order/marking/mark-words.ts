import type { MarksEvaluation } from '#libs/science/measurement/evaluate-marks';
import { FEMUR_LIMIT } from '#libs/science/measurement/femoral-axis';
import { SYMMETRY_LIMIT, type Symmetry } from '#libs/science/measurement/pelvic-symmetry';
import { t } from '../../../words/t.js';
import { capital, fixed, whole } from '../../../design/format.js';

export interface Remark { good: boolean; head: string; rest: string }

const SIDES = ['left', 'right'] as const;
/** Below, a circle rests on so little of its rim that one more point helps: our own choice, no source. */
const ENOUGH_RIM = 150;
const percent = (share: number) => t('{number}%', { number: whole(share * 100) });

/** What the marks say of how the dog lies. Nothing here stops anybody. */
export function remarksOn(found: MarksEvaluation): Remark[] {
  return [
    ...symmetry(found.foramina, t('Openings'), found.unit),
    ...symmetry(found.wings, t('Wings'), found.unit),
    ...femora(found),
    ...SIDES.flatMap((side) => [
      rim(found.heads[side]?.arc, t('{side, select, left {Left} other {Right}} head unsure.', { side })),
      rim(found.sockets[side]?.arc, t('{side, select, left {Left} other {Right}} socket unsure.', { side })),
    ]).filter((remark) => remark !== undefined),
    ...(found.sides && found.problems.length === 0 ? [{ good: found.sides.verdict === 'agree', head: found.sides.verdict === 'agree' ? t('Sides agree.') : t('Side not checked.'), rest: t.said(found.sides.said) }] : []),
  ];
}

function symmetry(found: Symmetry | undefined, what: string, unit: string): Remark[] {
  if (!found) return [];
  const wider = found.wider ?? 'left';
  const widths = t('{wider, select, left {Left} other {Right}} {widest} {unit} wide, {wider, select, left {right} other {left}} {other}', { wider, widest: fixed(found[wider], 0), unit, other: fixed(found[wider === 'right' ? 'left' : 'right'], 0) });
  if (!found.beyond) return [{ good: true, head: t('{what} alike.', { what }), rest: t('{widths}: {share} apart.', { widths, share: percent(found.apart.value) }) }];
  return [{ good: false, head: t('{what} unequal: the pelvis may lie turned.', { what }), rest: t('{widths}: {share} apart ({from} to {to}), our own limit is {limit}. You may accept it all the same.', { widths, share: percent(found.apart.value), from: percent(found.apart.from), to: percent(found.apart.to), limit: percent(SYMMETRY_LIMIT) }) }];
}

function femora({ femora: found }: MarksEvaluation): Remark[] {
  const sides = SIDES.filter((side) => found[side]);
  if (sides.length === 0) return [];
  const off = sides.some((side) => found[side]!.beyond);
  const words = capital(sides.map((side) => axis(side, found[side]!.value)).join(', '));
  return [{ good: !off, head: off ? t('Legs off line.') : t('Legs straight.'), rest: off ? t('{words}; our own limit is {limit}°. You may accept it all the same.', { words, limit: FEMUR_LIMIT }) : `${words}.` }];
}

function axis(side: 'left' | 'right', value: number): string {
  const degrees = Math.abs(value).toFixed(0);
  return t('{side, select, left {left} other {right}} {degrees}°{way, select, none {} outward { outward} other { inward}}', { side, degrees, way: degrees === '0' ? 'none' : value > 0 ? 'outward' : 'inward' });
}

function rim(arc: number | undefined, head: string): Remark | undefined {
  if (arc === undefined || arc >= ENOUGH_RIM) return undefined;
  return { good: false, head, rest: t('Its circle rests on {arc} of the rim. A point further round would help.', { arc: percent(arc / 360) }) };
}

export interface Estimate { what: string; side: 'left' | 'right'; value: number; words: string; more: string }

/** What may be measured in the room, as a range; the reader decides. */
export function estimatesOf(found: MarksEvaluation): Estimate[] {
  const index = SIDES.flatMap((side): Estimate[] => {
    const m = found.index[side];
    if (!m) return [];
    const shift = t('{distance} {unit} between the centres.', { distance: fixed(m.distance, 1), unit: found.unit });
    const near = m.from === 0 ? t('Cannot be told from 0: a hip without any shift would read {mean} on average.', { mean: fixed(m.ofNoDistance.mean, 2) }) : m.nearZero ? t('So near to 0 a reading comes out too large.') : '';
    return [{ what: t('Distraction index'), side, value: m.value, words: t('{from} to {to}', { from: fixed(m.from, 2), to: fixed(m.to, 2) }), more: [shift, near].filter(Boolean).join(' ') }];
  });
  const angles = SIDES.flatMap((side): Estimate[] => {
    const m = found.norberg[side];
    if (!m) return [];
    const edge = found.coverage[side];
    const cover = edge ? t('Centre {radii} radii {where, select, outside {outside} other {inside}} the back edge, {share} of the head within it.', { radii: fixed(Math.abs(edge.centreInside), 2), where: edge.centreInside < 0 ? 'outside' : 'inside', share: percent(edge.share) }) : '';
    return [{ what: t('Norberg angle'), side, value: m.value, words: t('{from}° to {to}°', { from: fixed(m.from, 0), to: fixed(m.to, 0) }), more: [t('No grade follows from it.'), cover].filter(Boolean).join(' ') }];
  });
  return [...index, ...angles];
}
