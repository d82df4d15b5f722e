import type { Prices } from '#libs/contracts/register';
import type { Actor } from '#libs/steps/record/actor';
import type { CentreKey } from './centre.js';
import type { SeedDog } from './dogs.js';
import type { PracticeKey } from './practices.js';

/** What a visit occupies. */
export interface Lane { room: string; operator: Actor; nurse: Actor; vet: Actor }

export interface House {
  id: string;
  name: string;
  zone: string;
  prices: Prices;
  desk: Actor;
  manager: Actor;
  vets: Actor[];
  lanes: Lane[];
  advice: { grown: string; young: string };
}

export interface Centre { id: string; name: string; feeMinor: number; readers: { id: string; name: string }[] }

export interface DemoDog extends SeedDog {
  id: string;
  house: House;
  transponder: string;
  /** Who stands for the dog: books, signs, pays and gets the letter. */
  person: { id: string; name: string; phone: string; channel: 'mail' | 'post' };
}

/** Everybody and everything the demo begins with, before the first order. */
export interface DemoScheme {
  houses: Record<PracticeKey, House>;
  centres: Record<CentreKey, Centre>;
  dogs: Map<string, DemoDog>;
}

export function dogNamed(scheme: DemoScheme, call: string): DemoDog {
  const dog = scheme.dogs.get(call);
  if (!dog) throw new Error(`The demo has no dog called ${call}.`);
  return dog;
}
