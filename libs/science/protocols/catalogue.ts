import { elbow } from './elbow.js';
import { hipExtended } from './hip-extended.js';
import { hipLaxity } from './hip-laxity.js';
import { hipLoaded } from './hip-loaded.js';
import type { Protocol } from './types.js';

/** Versions of one code in the order they came. */
const shipped: Protocol[][] = [hipLaxity, hipLoaded, hipExtended, elbow];

/** The row of one version, or undefined when it is not installed. */
export function findProtocol(code: string, version: string): Protocol | undefined {
  return shipped.flat().find((protocol) => protocol.code === code && protocol.version === version);
}

/** The newest version of every protocol: what a desk may order today. */
export function currentProtocols(): Protocol[] {
  return shipped.map((versions) => versions.at(-1)!);
}

/** Every version that a study may have been imaged under. */
export function allProtocols(): Protocol[] {
  return shipped.flat();
}
