import type { Bundle, BundleEntry, OperationOutcome, Resource } from '@medplum/fhirtypes';
import type { Told } from './resources.js';

export interface Page {
  found: Told[];
  self: string;
  next: string | undefined;
  /** What was asked for and is not done. */
  note?: OperationOutcome;
}

/** One page of what was searched for. How many there are in all is not said: it would have to be counted each time. */
export function searchBundle({ found, self, next, note }: Page, base: string): Bundle {
  return {
    resourceType: 'Bundle',
    type: 'searchset',
    link: [{ relation: 'self', url: self }, ...(next ? [{ relation: 'next', url: next }] : [])],
    ...entries([...found.map((resource): BundleEntry => ({ fullUrl: addressOf(resource, base), resource, search: { mode: 'match' } })), ...(note ? [{ resource: note, search: { mode: 'outcome' as const } }] : [])]),
  };
}

/** Every version of one resource, the newest first. */
export function historyBundle(versions: Told[], self: string, base: string): Bundle {
  return {
    resourceType: 'Bundle',
    type: 'history',
    total: versions.length,
    link: [{ relation: 'self', url: self }],
    ...entries(versions.toReversed().map((resource, i): BundleEntry => ({
      fullUrl: addressOf(resource, base), resource, request: { method: i === versions.length - 1 ? 'POST' : 'PUT', url: `${resource.resourceType}/${resource.id}` }, response: { status: i === versions.length - 1 ? '201' : '200', lastModified: resource.meta!.lastUpdated! },
    }))),
  };
}

const addressOf = (resource: Resource, base: string): string => `${base}/${resource.resourceType}/${resource.id}`;
/** The standard has no empty lists. */
const entries = (entry: BundleEntry[]): Pick<Bundle, 'entry'> => (entry.length > 0 ? { entry } : {});
