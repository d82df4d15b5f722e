import type { Choosing, ChoosingAsked } from '#libs/contracts/choosing';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { fixed } from '../../design/format.js';
import { Told } from '../../words/Told.js';

/** What is left to breed from. It stands first: what a share costs is certain, what it does is not. */
export function Cost({ found: { left, secondLook }, asked }: { found: Choosing; asked: ChoosingAsked }) {
  return (
    <Sheet title={t('What is left to breed from')}>
      <p className="said">
        <Told text={t('**{dogs, plural, one {# dog} other {# dogs}} and {bitches, plural, one {# bitch} other {# bitches}}**, of {allDogs} and {allBitches}. {otherDogs} and {otherBitches} would not be bred from.', { dogs: left.dogs, bitches: left.bitches, allDogs: asked.dogs, allBitches: asked.bitches, otherDogs: asked.dogs - left.dogs, otherBitches: asked.bitches - left.bitches })} />
      </p>
      <p>
        <Told strong="val" text={t('If all of these were bred from alike and none were related, they would count as **{effective}** animals, and inbreeding would rise by **{share} of 100** in every generation. Relatives and favourite sires make it narrower, and every other thing that a breed is chosen for takes its own part.', { effective: Math.round(left.effective), share: fixed(100 * left.inbreeding, left.inbreeding < 0.001 ? 2 : 1) })} />
      </p>
      <p className="small quiet">{t('Effective number 4·d·b/(d + b) and 1/(2·effective number): Wright, Genetics 1931;16:97-159.')}</p>
      {secondLook && (
        <p>
          <Told strong="val" text={t('A second X-ray would not choose the same animals: of every 100 chosen dogs about **{dogs}**, and of every 100 chosen bitches about **{bitches}**, would then lie outside the share.', { dogs: Math.round(100 * secondLook.dogs), bitches: Math.round(100 * secondLook.bitches) })} />{' '}<span className="small quiet">{t('From the published repeatability. {source}.', { source: secondLook.source })}</span>
        </p>
      )}
    </Sheet>
  );
}
