import { z } from 'zod';
import { id, localDay, sentence } from '../common.js';

/**
 * Fields of the forms. `title` labels the field; `pick` says which of the order screen's
 * choices it is chosen from, so that one form component can draw every plain action.
 */
export type Pick = 'staff' | 'vets' | 'operators' | 'nurses' | 'rooms' | 'people' | 'authorities' | 'practices' | 'centres' | 'studies' | 'exposures' | 'sends' | 'notes' | 'results' | 'letters' | 'reasons' | 'plans' | 'views' | 'protocols';

export const field = <T extends z.ZodType>(schema: T, title: string, more: { pick?: Pick; help?: string } = {}): T => schema.meta({ title, ...more }) as T;

export const why = field(sentence, 'Why');
export const day = (title: string, help?: string) => field(localDay, title, help ? { help } : {});
export const pickOne = (pick: Pick, title: string, help?: string) => field(id, title, help ? { pick, help } : { pick });
export const pickSome = (pick: Pick, title: string) => field(z.array(z.string().max(80)).min(1, 'Choose at least one.').max(60), title, { pick });
export const yes = (title: string) => field(z.boolean(), title);
export const nothing = z.object({});
