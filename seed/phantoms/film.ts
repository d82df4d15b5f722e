/**
 * One picture from its parts. Bone is drawn as on film: a beam that grazes the edge crosses more of the
 * hard outer layer, so every bone is brighter along its outline, and where bones overlap they add up.
 */
export function film(width: number, height: number, parts: { soft: string; body: string }): string {
  const edge = 26;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">
<defs>
${boneFilter('bone', 9, 0.92, -0.56)}
${boneFilter('shaft', 13, 1, -0.7)}
<filter id="soft" x="-20%" y="-20%" width="140%" height="140%"><feGaussianBlur stdDeviation="16"/></filter>
<clipPath id="field"><rect x="${edge}" y="${edge}" width="${width - 2 * edge}" height="${height - 2 * edge}" rx="6"/></clipPath>
</defs>
<rect width="${width}" height="${height}" fill="#000"/>
<g clip-path="url(#field)">
<rect width="${width}" height="${height}" fill="#0b0b0b"/>
<g filter="url(#soft)">${parts.soft}</g>
${parts.body}
</g>
</svg>`;
}

/** Solid white shapes in, film-like bone out: k2 of the shape less k3 of its blurred self. */
function boneFilter(id: string, blur: number, shape: number, blurred: number): string {
  return `<filter id="${id}" x="-15%" y="-15%" width="130%" height="130%" color-interpolation-filters="sRGB"><feGaussianBlur in="SourceGraphic" stdDeviation="${blur}" result="b"/><feComposite in="SourceGraphic" in2="b" operator="arithmetic" k1="0" k2="${shape}" k3="${blurred}" k4="0"/></filter>`;
}
