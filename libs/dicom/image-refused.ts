export type ImageRefusal =
  | 'NOT_AN_IMAGE'
  | 'EXTENSION_DIFFERS'
  | 'IMAGE_TRUNCATED'
  | 'IMAGE_TOO_LARGE'
  | 'DICOM_WITHOUT_IMAGE'
  | 'DICOM_INCONSISTENT'
  | 'DICOM_TRANSFER_SYNTAX_UNKNOWN';

export class ImageRefused extends Error {
  readonly code: ImageRefusal;

  /** `sentence` is for the person who sent the file: what is wrong and what to do. */
  constructor(code: ImageRefusal, sentence: string, options?: ErrorOptions) {
    super(sentence, options);
    this.name = 'ImageRefused';
    this.code = code;
  }
}
