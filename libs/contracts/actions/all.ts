import { z } from 'zod';
import { id, key } from '../common.js';
import { orderActions } from './order.js';
import { studyActions } from './study.js';
import { visitActions } from './visit.js';

/** Everything a person can do to an order, by the pathway's name for it. */
export const actionInputs = { ...orderActions, ...visitActions, ...studyActions };
export type ActionName = keyof typeof actionInputs;
export type ActionInput<A extends ActionName> = z.output<(typeof actionInputs)[A]>;
export const actionNames = Object.keys(actionInputs) as ActionName[];
export const isActionName = (s: string): s is ActionName => Object.hasOwn(actionInputs, s);

/**
 * POST /api/orders/:order/actions/:action. `key` makes a repeated request the same one;
 * `version` is the order as it was looked at: needed for what is decided, ignored for what is witnessed.
 * `at` is when it happened, for witnessed entries made without a network.
 */
export const actionRequest = z.object({ key, version: z.int().min(0).optional(), on: id, at: z.iso.datetime().optional(), input: z.record(z.string(), z.unknown()).default({}) });
export type ActionRequest = z.infer<typeof actionRequest>;
