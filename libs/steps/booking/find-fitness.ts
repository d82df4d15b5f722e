import { findProtocol } from '#libs/science/protocols/catalogue';
import { addDays } from '#libs/pathway/days';
import type { FitnessProblem } from '#libs/pathway/facts';
import type { Tx } from '#libs/platform/database/db';

export interface FitnessAsked {
  practice: string;
  dog: string;
  order?: string;
  protocol: string;
  version: string;
  day: string;
  operator: string | null;
}

/** What the register knows against a study on a day: operator, equipment, an earlier result of the same study. */
export async function findFitness(tx: Tx, asked: FitnessAsked): Promise<FitnessProblem[]> {
  const protocol = findProtocol(asked.protocol, asked.version);
  if (!protocol) return [];
  const day = new Date(`${asked.day}T00:00:00Z`);
  const problems: FitnessProblem[] = [];
  if (protocol.needsAccreditation && asked.operator) {
    const held = await tx.accreditation.findFirst({ where: { practiceId: asked.practice, staffId: asked.operator, protocol: protocol.code, from: { lte: day }, until: { gte: day } } });
    if (!held) problems.push({ code: 'OPERATOR' });
  }
  const fit = await tx.equipment.findMany({ where: { practiceId: asked.practice, kind: { in: protocol.equipment }, checkedUntil: { gte: day } }, select: { kind: true } });
  if (protocol.equipment.some((kind) => !fit.some((e) => e.kind === kind))) problems.push({ code: 'EQUIPMENT' });
  const repeat = await lastResultDay(tx, asked);
  if (repeat && addDays(repeat, protocol.repeatAfterDays) > asked.day) problems.push({ code: 'REPEAT_TOO_SOON', until: addDays(repeat, protocol.repeatAfterDays) });
  return problems;
}

/** The day of the latest accepted result of this study in another order of the same dog. */
export async function lastResultDay(tx: Tx, { dog, order, protocol }: Pick<FitnessAsked, 'dog' | 'order' | 'protocol'>): Promise<string | null> {
  const [row] = await tx.$queryRaw<{ day: string | null }[]>`
    SELECT to_char(max(f.at), 'YYYY-MM-DD') AS day FROM fact f JOIN orders o ON o.id = f.order_id JOIN study s ON s.id = (f.body->>'study')::uuid
    WHERE o.dog_id = ${dog}::uuid AND o.id <> ${order ?? '00000000-0000-0000-0000-000000000000'}::uuid AND f.type = 'resultAccepted' AND s.protocol = ${protocol}`;
  return row?.day ?? null;
}
