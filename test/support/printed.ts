import type { CertificateCheck } from '#libs/contracts/screens/owner';

/** A line of a certificate, as its page shows it. */
export const printedLine = ({ printed }: CertificateCheck, label: string): string => printed.find((line) => line.label === label)?.value ?? '';

export const printedHips = (check: CertificateCheck): string[] => [printedLine(check, 'Left hip'), printedLine(check, 'Right hip')];
