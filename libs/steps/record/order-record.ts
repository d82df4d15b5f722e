import { z } from 'zod';
import type { AgeException } from '#libs/science/protocols/types';
import type { Fact } from '#libs/pathway/facts';
import type { Rules } from '#libs/pathway/rules';
import type { Tx } from '#libs/platform/database/db';
import { RECORD, RECORD_FROM } from './order-sql.js';
import { rulesOf } from './rules-of.js';

export interface CentreRow {
  name: string; email: string; zone: string; region: string | null; holidays: string[];
  ackDays: number; resultDays: number; remindEvery: number; reminders: number; appealDays: number; feeMinor: number; protocols: string[];
}
export interface PracticeRow {
  name: string; place: string; address: string; phone: string; zone: string; mayCertify: boolean;
  policy: Record<string, unknown>; texts: Record<string, string>;
}
/** A stored fact with the name of its author as it was then. */
export type StoredFact = Fact & { byName: string };

/** The scheme's breeds by name, and the ages it asks of some of them. */
export interface SchemeBreeds { names?: string[]; older?: Record<string, AgeException[]> }

/** One order as the database gives it, before the pathway has read it. */
export interface OrderRow {
  id: string; practice: string; accession: string; dog: string; version: number; closed: boolean;
  breed: string; breeds: SchemeBreeds | null; born: { earliest: string; latest: string };
  facts: StoredFact[];
  practices: Record<string, PracticeRow>;
  centres: Record<string, CentreRow>;
}

export interface OrderRecord extends OrderRow {
  rules: Rules;
}

const ids = z.uuid();

export const withRules = (row: OrderRow): OrderRecord => ({ ...row, rules: rulesOf(row) });

/** Reads an order for changing it: nobody else changes it until the transaction ends. Undefined when this practice sees no such order. */
export async function lockOrder(tx: Tx, order: string): Promise<OrderRecord | undefined> {
  if (!ids.safeParse(order).success) return undefined;
  await tx.$executeRaw`SELECT 1 FROM orders WHERE id = ${order}::uuid FOR UPDATE`;
  return readOrder(tx, order);
}

export async function readOrder(tx: Tx, order: string): Promise<OrderRecord | undefined> {
  if (!ids.safeParse(order).success) return undefined;
  const [row] = await tx.$queryRawUnsafe<{ record: OrderRow }[]>(`SELECT ${RECORD} AS record ${RECORD_FROM} WHERE o.id = $1::uuid`, order);
  return row && withRules(row.record);
}
