import type { OwnerPage } from '#libs/contracts/screens/owner';
import { longDay } from '#libs/words/days';
import { wordsIn } from '#libs/words/words';
import type { Fact } from '#libs/pathway/facts';
import { StepError } from '../record/step-error.js';
import type { Side } from '../order/transfer-parties.js';

const OWNERS_WORDS = new Set<Fact['type']>(['consentGiven', 'consentWithdrawn', 'answersGiven', 'estimateAccepted']);

/** Neither side reads the other's: a buyer's page begins at the sale, and a letter is its addressees' alone. */
export function isOfSide({ party, sale }: Side, person: string, fact: Fact): boolean {
  if (fact.type === 'letterReleased') return fact.to.includes(person);
  return party === 'seller' || fact.rec >= sale.rec || !OWNERS_WORDS.has(fact.type);
}

/** What each side sees of the page: a buyer nothing until both have said yes, a seller nothing new after that. */
export function pageOfSide(page: OwnerPage): OwnerPage {
  const { transfer, dog } = page;
  const t = wordsIn(page.language);
  if (!transfer || (transfer.party === 'buyer') === transfer.agreed) return page;
  const nothing = { answered: null, text: '', version: '', language: page.language };
  const empty: OwnerPage = { ...page, knots: [], waiting: [], visit: null, estimate: null, questions: [], results: [], consents: { sedation: null, studies: [], sendAll: nothing, statistics: nothing } };
  const about = { dog: dog.name, day: longDay(page.language, transfer.day) };
  if (transfer.party === 'buyer') {
    return { ...empty, documents: [], dog: { ...dog, transponder: '' }, toDo: page.toDo.filter((t) => t.code === 'TRANSFER_NOT_AGREED'), status: t('Pictures of {dog} were asked for before {day}. You see what comes of them once you and the earlier owner have both agreed.', about) };
  }
  if (!transfer.agreed) return page;
  return { ...empty, results: page.results, toDo: [], status: t('{dog} has a new owner since {day}. What was agreed with you until then stays in the record; the new owner sees nothing of it.', about) };
}

/** The same fence for what is sent: nobody answers for a dog that is no longer theirs, or not yet shared with them. */
export function refuseOutsider({ transfer }: OwnerPage, action: string): void {
  if (!transfer || action === 'agreeTransfer' || action === 'chooseLetterTime') return;
  if (transfer.party === 'seller' && transfer.agreed) throw new StepError('HELD', 'The dog has a new owner, who decides now.');
  if (transfer.party === 'buyer' && !transfer.agreed) throw new StepError('HELD', 'First you and the earlier owner both agree to sharing.');
}
