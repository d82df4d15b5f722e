import { ScienceError } from '../error.js';
import { elbow } from './elbow.js';
import { hipExtended } from './hip-extended.js';
import { hipLaxity } from './hip-laxity.js';
import { hipLoaded } from './hip-loaded.js';
import { ownStudy } from './own-study.js';
import type { Protocol } from './types.js';

/** Versions of one code in the order they came. */
const installed: Protocol[][] = [hipLaxity, hipLoaded, hipExtended, elbow].map((versions) => [...versions]);

/**
 * Installs the scheme's own studies beside the shipped ones, when the program starts. A row that is already installed
 * may come again unchanged; a changed study is a new version, because studies keep the version they were imaged under.
 * @param rows as read from a file, in the order of their versions
 * @throws ScienceError OWN_STUDY, OWN_STUDY_THERE; nothing is installed then
 */
export function installStudies(rows: unknown): void {
  if (!Array.isArray(rows)) throw new ScienceError('OWN_STUDY', 'The studies must be a list: [ { … }, { … } ].');
  const studies = rows.map(ownStudy);
  for (const study of studies) {
    const there = findProtocol(study.code, study.version);
    if (there && JSON.stringify(ownStudy(structuredClone(there))) !== JSON.stringify(study)) {
      throw new ScienceError('OWN_STUDY_THERE', `Study "${study.code}", version ${study.version}, is installed with other content. Give the changed row a new version.`);
    }
  }
  for (const study of studies) {
    if (findProtocol(study.code, study.version)) continue;
    const versions = installed.find(([first]) => first!.code === study.code);
    if (versions) versions.push(study);
    else installed.push([study]);
  }
}

/** The row of one version, or undefined when it is not installed. */
export function findProtocol(code: string, version: string): Protocol | undefined {
  return installed.flat().find((protocol) => protocol.code === code && protocol.version === version);
}

/** The newest version of every protocol: what a desk may order today. */
export function currentProtocols(): Protocol[] {
  return installed.map((versions) => versions.at(-1)!);
}

/** How a desk calls a study. One whose row is not installed here is called by its code. */
export const nameAtDesk = ({ protocol, version }: { protocol: string; version: string }): string => findProtocol(protocol, version)?.deskName ?? protocol;

/** As its newest version is called. */
export const nameAtDeskNow = (code: string): string => currentProtocols().find((protocol) => protocol.code === code)?.deskName ?? code;

/** Every version that a study may have been imaged under. */
export function allProtocols(): Protocol[] {
  return installed.flat();
}
