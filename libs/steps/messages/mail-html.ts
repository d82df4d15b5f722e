import { languages, type Language } from '#libs/words/languages';

const escape = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
const linked = (text: string): string => escape(text).replace(/https?:\/\/[^\s<]+/g, (url) => `<a href="${url}" style="color:#1b2230">${url}</a>`);

/** The same words twice: as text, and as a plain page without pictures, tracking or anything to fetch. */
export function mailHtml(subject: string, paragraphs: string[], language: Language): string {
  const body = paragraphs.map((p) => `<p style="margin:0 0 16px">${linked(p).replaceAll('\n', '<br>')}</p>`).join('\n');
  return `<!doctype html><html lang="${language}" dir="${languages[language].dir}"><head><meta charset="utf-8"><title>${escape(subject)}</title></head><body style="margin:0;background:#eceee9"><div style="max-width:600px;margin:0 auto;padding:24px;background:#fbfbf8;color:#1b2230;font:16px/1.5 'Noto Sans',Arial,sans-serif">${body}</div></body></html>`;
}

export const mailText = (paragraphs: string[]): string => `${paragraphs.join('\n\n')}\n`;
