/** How somebody signed, kept with the fact. */
export function signatureDetail(input: { signatureSvg?: string | undefined; typedName?: string | undefined }, name: string, how: string): Record<string, unknown> {
  return { name, how, ...(input.signatureSvg ? { signatureSvg: input.signatureSvg } : {}), ...(input.typedName ? { typedName: input.typedName } : {}) };
}
