import { allProtocols } from './protocols/catalogue.js';
import { shortCitation } from './short-citation.js';

it.each([
  ['ICC: Smith et al. Am J Vet Res 1997;58:1076-1077. SD 0.15: Arq Bras Med Vet Zootec 2020;72(4), 230 hips.', 'Smith et al. 1997'],
  ['Ginja et al. Acta Vet Hung 2008;56:303-312', 'Ginja et al. 2008'],
  ['an invented figure, for this sample.', 'an invented figure, for this sample'],
])('%s is %s in short', (full, short) => expect(shortCitation(full)).toBe(short));

it('is short for every shipped figure', () => {
  const known = allProtocols().flatMap((p) => (p.repeatability.known ? [shortCitation(p.repeatability.citation)] : []));
  expect(known.length).toBeGreaterThan(0);
  for (const short of known) expect(short.length).toBeLessThan(40);
});
