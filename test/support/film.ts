import sharp from 'sharp';

let drawn = 0;

/** A small picture that no other is equal to: a store by content would take two equal ones for one. */
export function aFilm(kind: 'png' | 'jpeg' = 'png'): Promise<Buffer> {
  drawn++;
  const shade = `<svg xmlns="http://www.w3.org/2000/svg" width="240" height="320"><rect width="240" height="320" fill="#222"/><circle cx="${60 + (drawn % 40)}" cy="160" r="30" fill="#bbb"/><text x="10" y="300" fill="#fff">L ${drawn}</text></svg>`;
  const picture = sharp(Buffer.from(shade)).greyscale();
  return (kind === 'png' ? picture.png() : picture.jpeg()).toBuffer();
}
