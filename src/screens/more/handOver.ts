/** The backup as a file that can be saved or shared. */
function fileOf(text: string, name: string): File {
  return new File([text], name, { type: 'application/json' });
}

/** Whether this browser can hand such a file to another app. */
export function canHandOver(): boolean {
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [fileOf('{}', 'carrybook.json')] });
}

/** Saves the file where the browser saves its downloads. */
export function saveFile(text: string, name: string): void {
  const address = URL.createObjectURL(fileOf(text, name));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has begun by then; the address may go.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** What came of handing the file to another app. */
export type HandedOver =
  | { readonly kind: 'handed over' }
  | { readonly kind: 'put off' }
  | { readonly kind: 'failed'; readonly why: string };

/** Hands the file to the app that the golfer picks: mail, messages, a drive. */
export async function handOver(text: string, name: string): Promise<HandedOver> {
  try {
    await navigator.share({ files: [fileOf(text, name)], title: name });
    return { kind: 'handed over' };
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return { kind: 'put off' };
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
}
