import type { Told } from '#libs/fhir/resources';

/** One page, and where the next begins. */
export interface Found { resources: Told[]; next?: string | undefined }
