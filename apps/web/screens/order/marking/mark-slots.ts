import { type Mark } from '#libs/science/measurement/check-marks';
import { kindsOfMarks, type KindOfMark } from '#libs/science/measurement/mark-kinds';
import type { Point } from '#libs/science/measurement/plane';
import { t } from '../../../words/t.js';

/** One thing to mark on a film: a kind, and a side where it has one. */
export interface MarkSlot { key: string; name: string; rule: KindOfMark; side?: 'left' | 'right' }

type SavedMark = { kind: string; side?: string | undefined; points: readonly Point[] };

export type SetPoints = Readonly<Record<string, readonly Point[]>>;

const SIDES = ['left', 'right'] as const;

export function slotsOf(view: string): MarkSlot[] {
  return kindsOfMarks(view).flatMap((rule): MarkSlot[] =>
    rule.sided ? SIDES.map((side) => ({ key: `${rule.kind} ${side}`, name: rule.kind === 'marker' ? t('Side marker {letter}', { letter: side === 'left' ? 'L' : 'R' }) : t('{mark}, {side}', { mark: t.known(rule.label), side: t(side) }), rule, side })) : [{ key: rule.kind, name: t.known(rule.label), rule }],
  );
}

export const pointsIn = (set: SetPoints, key: string): readonly Point[] => set[key] ?? [];

/** The marks that have as many points as they need; the others are still being set. */
export function marksOf(slots: readonly MarkSlot[], set: SetPoints): Mark[] {
  return slots.filter(({ key, rule }) => pointsIn(set, key).length >= rule.atLeast).map(({ key, rule, side }) => ({ kind: rule.kind, points: [...pointsIn(set, key)], ...(side ? { side } : {}) }));
}

/** The other way round: points as they were kept. */
export const setOf = (marks: readonly SavedMark[]): SetPoints => Object.fromEntries(marks.map(({ kind, side, points }) => [side ? `${kind} ${side}` : kind, points]));

/** Begun and not finished, in words. */
export function unfinished(slots: readonly MarkSlot[], set: SetPoints): string[] {
  return slots.flatMap(({ key, name, rule }) => {
    const missing = rule.atLeast - pointsIn(set, key).length;
    return missing > 0 && missing < rule.atLeast ? [t('{name}: {missing, plural, one {# more point} other {# more points}}.', { name, missing })] : [];
  });
}
