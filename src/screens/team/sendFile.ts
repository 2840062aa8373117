/** How a file leaves: under which name, and as what the share sheet is told it is. */
export interface Sending {
  readonly text: string;
  readonly name: string;
  readonly type: 'application/json' | 'text/plain' | 'text/csv';
}

const fileOf = ({ text, name, type }: Sending) => new File([text], name, { type });

/** Whether this browser can hand such a file to another app. Some share sheets take no .json but a .txt. */
export function canSend(type: Sending['type']): boolean {
  const files = [fileOf({ text: '{}', name: type === 'text/plain' ? 'a.txt' : 'a.json', type })];
  return typeof navigator.canShare === 'function' && navigator.canShare({ files });
}

/** Hands the file to an app of the golfer's choice; false when they thought better of it. @throws what the browser says against it. */
export async function sendFile(sending: Sending): Promise<boolean> {
  try {
    await navigator.share({ files: [fileOf(sending)] });
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false;
    throw error;
  }
}

/** Saves the file where the browser saves its downloads. */
export function keepFile(sending: Sending): void {
  const address = URL.createObjectURL(fileOf(sending));
  const link = document.createElement('a');
  link.href = address;
  link.download = sending.name;
  link.click();
  // The download has begun by then; the address may go.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
