export interface Accreditation { staff: string; protocol: string; from: string; until: string }

/** Both its days count. */
const holds = (a: Accreditation, protocol: string, day: string): boolean => a.protocol === protocol && a.from <= day && a.until >= day;

/** Of those listed, the first that holds for somebody on a day. */
export const accreditationOn = (listed: readonly Accreditation[], staff: string, protocol: string, day: string): Accreditation | undefined => listed.find((a) => a.staff === staff && holds(a, protocol, day));

export const anybodyAccredited = (listed: readonly Accreditation[], protocol: string, day: string): boolean => listed.some((a) => holds(a, protocol, day));

/** Which of these studies somebody may not take on a day. */
export const notAccreditedFor = <P extends { code: string; needsAccreditation: boolean }>(listed: readonly Accreditation[], staff: string, protocols: readonly P[], day: string): P[] =>
  protocols.filter((p) => p.needsAccreditation && !accreditationOn(listed, staff, p.code, day));

/** Who may be at the machine at all. */
export const takesFilms = ({ roles }: { roles: readonly string[] }): boolean => roles.some((r) => r === 'radiographer' || r === 'vet');
