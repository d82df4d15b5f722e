import type { Protocol } from '#libs/science/protocols/types';
import type { Words } from '#libs/words/words';
import { viewName } from '../record/view-name.js';

/** What the owner is told of a study before saying yes or no; the version is the protocol's consent text. */
export function studyConsentText(protocol: Protocol, centre: string, t: Words): string {
  const views = protocol.views.filter((v) => v.required);
  return [
    t('{study}. {count, plural, one {One X-ray picture is} other {# X-ray pictures are}} taken while your dog sleeps: {views}.', { study: t.known(protocol.name), count: views.length, views: views.map((v) => viewName(v.label, t)).join('; ') }),
    protocol.views.some((v) => v.device || v.load) ? t('For some of them the legs are gently pushed, in the way the method asks for.') : '',
    t('The pictures are read at {centre}, by somebody with no stake in the outcome.', { centre: centre || t('a reading centre') }),
    t('A picture that is not good enough may be taken again, while your dog sleeps well. Nobody keeps a dog asleep for a picture.'),
    t('X-rays are a small dose of radiation. Nobody is held to the table who can be spared.'),
    t('You can take this yes back at any time. Pictures that have been sent cannot be called back; the centre is told.'),
  ].filter(Boolean).join('\n\n');
}
