import type { Protocol } from '#libs/science/protocols/types';

/** What the owner is told of a study before saying yes or no; the version is the protocol's consent text. */
export function studyConsentText(protocol: Protocol, centre: string): string {
  const views = protocol.views.filter((v) => v.required);
  return [
    `${protocol.name}. ${views.length === 1 ? 'One X-ray picture is' : `${views.length} X-ray pictures are`} taken while your dog sleeps: ${views.map((v) => v.label.toLowerCase()).join('; ')}.`,
    protocol.views.some((v) => v.device || v.load) ? 'For some of them the legs are gently pushed, in the way the method asks for.' : '',
    `The pictures are read at ${centre || 'a reading centre'}, by somebody with no stake in the outcome.`,
    'A picture that is not good enough may be taken again, while your dog sleeps well. Nobody keeps a dog asleep for a picture.',
    'X-rays are a small dose of radiation. Nobody is held to the table who can be spared.',
    'You can take this yes back at any time. Pictures that have been sent cannot be called back; the centre is told.',
  ].filter(Boolean).join('\n\n');
}
