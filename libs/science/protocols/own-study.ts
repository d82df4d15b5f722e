import { z } from 'zod';
import { ScienceError } from '../error.js';
import type { Protocol } from './types.js';

const words = z.string().trim().min(1).max(600);
const code = z.string().regex(/^[A-Za-z][A-Za-z0-9]{0,39}$/, 'is a code: letters and digits, starting with a letter');
const side = z.enum(['left', 'right']);
const equipment = z.enum(['xray', 'distractionDevice', 'loadFrame']);
const youngest = z.union([z.strictObject({ days: z.int().min(0) }), z.strictObject({ months: z.int().min(0) })]);
const range = { unit: z.string().max(12), decimals: z.int().min(0).max(4), min: z.number(), max: z.number() };

const finding = z.intersection(
  z.object({ code, label: words, words, requiredWithValue: z.boolean().optional(), sameOnBothSides: z.boolean().optional(), keepsOutOfStandings: z.boolean().optional(), onlyWith: z.strictObject({ finding: code, answers: z.array(z.string()).min(1) }).optional() }),
  z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('yesNo') }),
    z.object({ kind: z.literal('choice'), choices: z.array(z.strictObject({ code: z.string().min(1).max(40), words, gradeAtLeast: z.string().optional() })).min(2), bindsGrade: z.boolean().optional() }),
    z.object({ kind: z.literal('number'), ...range }),
  ]),
);

const view = z.strictObject({
  code: z.enum(['vdExtended', 'vdCompression', 'vdDistraction', 'vdLoaded', 'mlFlexedLeft', 'mlFlexedRight', 'ccLeft', 'ccRight']),
  label: words, shortLabel: words, side: z.union([side, z.literal('both')]), required: z.boolean(), checklist: z.array(words).min(1), device: equipment.optional(), load: words.optional(),
});

const value = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('number'), name: words, ...range, rangeReason: words, askAbove: z.strictObject({ value: z.number(), reason: words }).optional() }),
  z.strictObject({ kind: z.literal('grade'), name: words, grades: z.array(z.strictObject({ code: z.string().min(1).max(12), words })).min(2), shownBy: z.array(code).min(1).optional() }),
]);

const repeatability = z.discriminatedUnion('known', [
  z.strictObject({ known: z.literal(true), sd: z.number().positive(), icc: z.number().min(0).max(1), n: z.int().positive(), words, citation: words }),
  z.strictObject({ known: z.literal(false), reason: words }),
]);

const row: z.ZodType<Protocol> = z.strictObject({
  code, version: z.string().regex(/^\d{1,4}$/, 'is a whole number, as text'), changes: words, invented: z.boolean(), name: words, deskName: words,
  region: z.enum(['hip', 'elbow']), views: z.array(view).min(1), joints: z.array(side).min(1).max(2), value, findings: z.array(finding),
  noValue: z.array(z.strictObject({ code, words, waitDays: z.int().min(0).optional() })).min(1),
  dog: z.strictObject({ worse: z.literal('higher'), worseWords: words, oneJoint: z.enum(['atLeast', 'incomplete']) }),
  youngest, olderBreeds: z.array(z.strictObject({ breeds: z.array(words).min(1), youngest, source: words })), repeatAfterDays: z.int().min(0),
  needsAccreditation: z.boolean(), equipment: z.array(equipment).min(1), consentText: z.string().min(1).max(20),
  issuer: z.strictObject({ practiceMayCertify: z.boolean(), words }), repeatability,
  statistics: z.strictObject({ counts: z.literal('firstAccepted'), words }), sources: z.array(z.strictObject({ what: words, citation: words })).min(1),
}) as z.ZodType<Protocol>;

/**
 * A scheme's own study from a row of data, in the form of the shipped ones.
 * @param data one row as read from a file
 * @throws ScienceError OWN_STUDY, naming the first field that is wrong and why
 */
export function ownStudy(data: unknown): Protocol {
  const named = (data as { code?: unknown } | null)?.code;
  const refuse = (why: string) => new ScienceError('OWN_STUDY', `Study ${typeof named === 'string' ? `"${named}"` : 'without a code'}: ${why}`);
  const parsed = row.safeParse(data);
  if (!parsed.success) {
    const { path, message } = parsed.error.issues[0]!;
    throw refuse(`${path.join('.') || 'the row'}: ${message}. Correct the row.`);
  }
  const study = parsed.data;
  const contradiction = contradictionIn(study);
  if (contradiction) throw refuse(contradiction);
  return study;
}

function contradictionIn({ value: rule, views, noValue, findings, equipment: owned }: Protocol): string | undefined {
  for (const [what, codes] of [['views', views], ['noValue', noValue], ['findings', findings], ['value.grades', rule.kind === 'grade' ? rule.grades : []]] as const) {
    const twice = codes.map((c) => c.code).find((c, i, all) => all.indexOf(c) !== i);
    if (twice) return `${what}: "${twice}" stands twice. Keep one.`;
  }
  if (rule.kind === 'number' && !(rule.min < rule.max)) return `value: min ${rule.min} is not below max ${rule.max}. Exchange them.`;
  if (!views.some((v) => v.required)) return 'views: none is required, so nothing would be taken. Make one required.';
  const device = views.find((v) => v.device && !owned.includes(v.device))?.device;
  if (device) return `equipment: a view needs "${device}", which is not listed. Add it.`;
  const grades = new Set(rule.kind === 'grade' ? rule.grades.map((g) => g.code) : []);
  for (const f of findings) {
    const grade = f.kind === 'choice' ? f.choices.find((c) => c.gradeAtLeast !== undefined && !grades.has(c.gradeAtLeast))?.gradeAtLeast : undefined;
    if (grade !== undefined) return `findings: "${f.code}" names grade "${grade}", which the study does not have. Use one of its grades.`;
  }
  const [shownBy, unknown] = [rule.kind === 'grade' ? rule.shownBy ?? [] : [], (named: string) => !findings.some((f) => f.code === named)];
  const named = [...shownBy, ...findings.flatMap((f) => f.onlyWith?.finding ?? [])].find(unknown);
  if (named !== undefined) return `findings: "${named}" is named and not listed. Add it, or take the name out.`;
  if (!noValue.some((r) => r.code === 'notImaged')) return 'noValue: "notImaged" is needed for a joint of which no picture could be taken. Add it.';
  return undefined;
}
