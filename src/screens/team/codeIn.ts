/** As much of the W3C Barcode Detection interface as is used; the compiler's DOM library does not describe it. */
interface Detector {
  detect(picture: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorClass = {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats(): Promise<string[]>;
};

/** Reads the code in a picture; null when there is none that can be read. */
export type ReadCode = (
  picture: ImageBitmap | HTMLVideoElement,
  width: number,
  height: number,
) => Promise<string | null>;

async function byBrowser(): Promise<ReadCode | null> {
  const { BarcodeDetector } = globalThis as { BarcodeDetector?: DetectorClass };
  if (!BarcodeDetector || !(await BarcodeDetector.getSupportedFormats()).includes('qr_code')) return null;
  const detector = new BarcodeDetector({ formats: ['qr_code'] });
  return async (picture) => (await detector.detect(picture))[0]?.rawValue ?? null;
}

/** Longest side of a picture that is searched, px: larger only takes longer. */
const MOST_SIDE = 1200;

async function byLibrary(): Promise<ReadCode> {
  // Large, so fetched only when a code is read and the browser itself reads none.
  const { default: jsQR } = await import('jsqr');
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('this browser draws no pictures');
  return async (picture, width, height) => {
    const scale = Math.min(1, MOST_SIDE / Math.max(width, height));
    canvas.width = Math.max(1, Math.round(width * scale));
    canvas.height = Math.max(1, Math.round(height * scale));
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
    return jsQR(data, canvas.width, canvas.height)?.data || null;
  };
}

let reader: Promise<ReadCode> | null = null;

/** The browser's own reader of codes where it has one, else a library's. */
export function codeReader(): Promise<ReadCode> {
  reader ??= byBrowser().then((read) => read ?? byLibrary());
  return reader;
}
