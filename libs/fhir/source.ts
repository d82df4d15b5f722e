import type { Joint } from '#libs/contracts/common';
import type { Dog } from '#libs/contracts/register';
import type { Standing } from '#libs/contracts/standing';
import type { Evaluation } from '#libs/pathway/evaluation';
import type { Picture } from '#libs/pathway/picture';

/** Who somebody is to the dog, as far as whoever asks may know it. */
export interface FhirPerson {
  role: string;
  /** Of the role, not of the person: one person may be somebody to several dogs. */
  id: string;
  person: string;
  dog: string;
  from: string;
  until: string | null;
  name: string;
  email: string | null;
  phone: string | null;
  address: string | null;
  erased: boolean;
}

export interface FhirDog extends Pick<Dog, 'id' | 'animalId' | 'callName' | 'breed' | 'sex' | 'neutered' | 'birth' | 'died' | 'names' | 'studBook'> {
  identifiers: Pick<Dog['identifiers'][number], 'kind' | 'value' | 'from' | 'until'>[];
  /** Animal numbers of entries that turned out to be this dog. */
  merged: { animalId: string }[];
  practiceName: string | null;
}

/** A stored picture: what it is, and by which numbers its own file goes. */
export interface FhirImage {
  kind: 'dicom' | 'png' | 'jpeg';
  modality?: string;
  sopClassUid?: string;
  sopInstanceUid?: string;
  seriesInstanceUid?: string;
}

/** One order as its facts say it, with what the register adds to it. */
export interface FhirOrder {
  id: string;
  accession: string;
  /** When something about it was last recorded, ISO in UTC. */
  changed: string;
  dog: FhirDog;
  picture: Picture;
  evaluation: Evaluation;
  practices: Record<string, { name: string; zone: string }>;
  centres: Record<string, { name: string }>;
  /** What each result says of its joints; a result by post says what two people keyed alike. */
  joints: ReadonlyMap<string, Joint[]>;
  /** By their hash. */
  images: ReadonlyMap<string, FhirImage>;
  /** By study: the place that the last letter gave. */
  standings: ReadonlyMap<string, Standing>;
  /** Empty for whoever may not know owners. */
  people: FhirPerson[];
  /** Where this server's resources are found: https://…/fhir */
  base: string;
}
