import { useCase } from '../record/use-case.js';

export const seeProtocolChange = useCase('seeProtocolChange', (work, on) => {
  const changed = work.facts('protocolChanged').filter((f) => f.study === on).at(-1);
  return changed ? [{ type: 'protocolChangeSeen', study: on, version: changed.version }] : [];
});
