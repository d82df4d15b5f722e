import type { BreedPicture } from '#libs/contracts/screens/breeds';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { of20 } from './figures.js';
import { Told } from '../../words/Told.js';

/** First of all, because it bends every figure below. */
export function WhoIsMissing({ breed }: { breed: BreedPicture }) {
  return (
    <Sheet title={t('Who is in it, and who is missing')}>
      <p className="not-sent">{missing(breed)}</p>
      <p className="after">{senders(breed)}</p>
    </Sheet>
  );
}

function missing({ unsent, sent, n }: BreedPicture) {
  if (unsent === null || !sent) return t('Fewer than 5 more dogs were X-rayed and not sent.');
  return (
    <Told text={t('**{unsent} more dogs were X-rayed and their films never sent.** Of every 20 that were X-rayed, {share} are among the {n} ({lower} to {upper}). Where films stay at home, the breed looks better than it is.', { unsent, share: of20(sent.share), n, lower: of20(sent.interval.lower), upper: of20(sent.interval.upper) })} />
  );
}

function senders({ senders: by }: BreedPicture): string {
  if (!by) return t('Who sent the films is not shown: one of the groups is so small that it could be told.');
  if (by.litter === 0) return t('None came with its whole litter: somebody chose each of these dogs.');
  if (by.chosen === 0) return t('All came with their whole litters: nobody chose among them.');
  return t('{litter} came with their whole litter. The other {chosen} were chosen by somebody. The two are counted together here, and may differ.', { litter: by.litter, chosen: by.chosen });
}
