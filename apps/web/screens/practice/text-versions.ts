import type { PracticeText } from '#libs/contracts/register';
import type { PageSentence } from '#libs/words/de/staff/page-words';

export const textKindNames: Record<PracticeText['kind'], PageSentence> = {
  advice: 'Advice before the visit',
  goingHome: 'Going-home sheet',
  consentSedation: 'Consent to sedation',
  consentSendAll: 'Consent to sending every film',
  consentStatistics: 'Consent to counting in the breed',
};

/** One text of the practice with the versions before it; the newest is in force. */
export interface TextLine { inForce: PracticeText; before: PracticeText[] }

export function textLines(texts: readonly PracticeText[]): TextLine[] {
  const lines = new Map<string, PracticeText[]>();
  for (const text of texts) {
    const key = `${text.kind} ${text.title} ${text.forDogs} ${text.language}`;
    lines.set(key, [...(lines.get(key) ?? []), text]);
  }
  const order = Object.keys(textKindNames);
  return [...lines.values()]
    .flatMap((versions) => {
      const [inForce, ...before] = versions.sort((a, b) => b.approvedAt.localeCompare(a.approvedAt));
      return inForce ? [{ inForce, before }] : [];
    })
    .sort((a, b) => order.indexOf(a.inForce.kind) - order.indexOf(b.inForce.kind) || a.inForce.title.localeCompare(b.inForce.title));
}
