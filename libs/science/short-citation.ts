/** "Smith et al. 1997" of a full citation, as a letter names a source; the citation itself where it has no such form. */
export function shortCitation(citation: string): string {
  const [, name, others, year] = /(?:^|:\s*)(\p{Lu}[\p{L}’'-]+)( et al\.)?[^:]*?\b((?:19|20)\d\d);/u.exec(citation) ?? [];
  return name ? `${name}${others ?? ''} ${year}` : citation.replace(/\.$/, '');
}
