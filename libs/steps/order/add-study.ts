import { randomUUID } from 'node:crypto';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** Always the newest version; the study keeps the version of its first film. */
export const addStudy = useCase('addStudy', (work, _on, input) => {
  const protocol = currentProtocols().find((p) => p.code === input.protocol);
  if (!protocol) throw badInput('protocol', t('This study is not installed.'));
  const centre = work.order.centres[input.centre];
  if (!centre?.protocols.includes(protocol.code)) throw badInput('centre', t('This centre does not read this study. Choose another centre.'));
  return [{ type: 'studyAdded', study: randomUUID(), protocol: protocol.code, version: protocol.version, centre: input.centre }];
});
