/** Who signed and how, kept with the fact: the name as it was then, and an agent's authority in words. */
export function signatureDetail(input: { signatureSvg?: string | undefined; typedName?: string | undefined }, who: { name: string; authority?: string; language?: string }, how: string): Record<string, unknown> {
  return { ...who, how, ...(input.signatureSvg ? { signatureSvg: input.signatureSvg } : {}), ...(input.typedName ? { typedName: input.typedName } : {}) };
}
