/** Who reads: somebody signed in at a centre, or whoever holds the link of one package. */
export interface Reader {
  id: string;
  name: string;
  centre: string;
  centreName: string;
  /** Set for a link: nothing else may be seen. */
  onlyPackage: string | null;
}
