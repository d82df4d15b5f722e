/** An amount of medicine, as English and German write it: "5 mg", "0.3 ml/kg", "two tablets", "eine halbe Tablette". A going-home sheet never carries one. */
const AMOUNT = /\d[\d.,]*\s*(?:mg|mcg|µg|μg|ug|ml|mL|cc|iu|units?)\b|\b(?:\d+|half|one|two|three|four)\s+(?:a\s+)?(?:tablets?|pills?|drops|capsules?)\b|\b(?:\d+|eine?|zwei|drei|vier|halbe)\s+(?:halbe\s+)?(?:Tabletten?|Pillen?|Tropfen|Kapseln?)\b/giu;

/** The doses found in a text, so that the vet who approves it can be shown them. */
export function dosesIn(text: string): string[] {
  return text.match(AMOUNT) ?? [];
}

export class DoseOnPaperError extends Error {
  readonly code = 'DOSE_ON_PAPER';

  constructor(doses: string[]) {
    super(`The going-home text names a dose (${doses.join(', ')}). Take it out; a vet gives doses by prescription, not on this sheet.`);
  }
}
