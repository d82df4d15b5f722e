/** Joins what stands in elements of these names, but not how it is pronounced. */
export class TextRuns {
  text = '';
  #inside = false;
  #spoken = false;
  readonly #names: string[];

  constructor(...names: string[]) {
    this.#names = names;
  }

  begin(): void {
    this.text = '';
  }

  open(name: string): void {
    if (name === 'rPh') this.#spoken = true;
    this.#inside = this.#names.includes(name) && !this.#spoken;
  }

  add(text: string): void {
    if (this.#inside) this.text += text;
  }

  close(name: string): void {
    if (name === 'rPh') this.#spoken = false;
    this.#inside = false;
  }
}

/** Signs that XML cannot hold are written as “_x000D_”; what cannot be kept either becomes a sign that shows it. */
export const plainText = (text: string): string =>
  text.replaceAll(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16))).replaceAll(/\0|\p{Surrogate}/gu, '\ufffd').trim();
