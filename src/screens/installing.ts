import { signal } from '@preact/signals';

/** What a browser offers when it can install the app by itself. The compiler's DOM library does not describe it. */
interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
}

/** The browser's offer to install; null: it made none. */
export const installOffer = signal<InstallEvent | null>(null);

/** Whether the app runs from the home screen. */
export const isInstalled = signal(false);

/** Whether this is a phone or tablet on which only the Share menu installs. */
export function isShareMenuOnly(): boolean {
  return /iPhone|iPad|iPod/.test(navigator.userAgent);
}

/** Catches the browser's offer to install before it makes it by itself. Called once, by the page. */
export function followInstalling(): void {
  const standalone = matchMedia('(display-mode: standalone)');
  isInstalled.value = standalone.matches;
  standalone.addEventListener('change', () => {
    isInstalled.value = standalone.matches;
  });
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    installOffer.value = event as InstallEvent;
  });
  addEventListener('appinstalled', () => {
    installOffer.value = null;
    isInstalled.value = true;
  });
}

/** Takes up the browser's offer; it can be taken up once. */
export async function install(): Promise<void> {
  const offer = installOffer.peek();
  installOffer.value = null;
  await offer?.prompt();
}
