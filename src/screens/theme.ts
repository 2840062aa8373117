import { effect, signal } from '@preact/signals';

/** How the app is drawn: by the device's own setting, ink on paper, light on dark, or for full sun. */
export const themes = ['auto', 'paper', 'night', 'glare'] as const;
export type Theme = (typeof themes)[number];

/** Where the choice is kept. It belongs to the device, not to the logbook, and must be known before the first paint. */
const KEPT_AS = 'carrybook.theme';

function kept(): Theme {
  try {
    const value = localStorage.getItem(KEPT_AS);
    return themes.find((theme) => theme === value) ?? 'auto';
  } catch (error) {
    console.error('the theme cannot be read from this browser', error);
    return 'auto';
  }
}

/** The theme chosen on this device. */
export const theme = signal<Theme>(kept());

/** Keeps the theme and draws the page in it; `auto` follows the device as it changes. Called once, by the page. */
export function followTheme(): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const contrast = matchMedia('(prefers-contrast: more)');
  const draw = () => {
    const auto = dark.matches ? 'night' : contrast.matches ? 'glare' : 'paper';
    const root = document.documentElement;
    root.dataset.theme = theme.value === 'auto' ? auto : theme.value;
    const paper = getComputedStyle(root).getPropertyValue('--paper').trim();
    for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')) meta.content = paper;
  };
  effect(draw);
  dark.addEventListener('change', draw);
  contrast.addEventListener('change', draw);
}

let known: Theme | null = null;

/**
 * Takes over the theme from the stored settings: when it changed there (in another tab, or all was
 * deleted), or when this browser knew none before.
 */
export function applySettings(stored: Theme): void {
  const isNews = known === null ? theme.peek() === 'auto' : known !== stored;
  known = stored;
  if (isNews && theme.peek() !== stored) chooseTheme(stored);
}

/** Chooses a theme and keeps it, so that the next visit is drawn in it from the first moment. */
export function chooseTheme(choice: Theme): void {
  theme.value = choice;
  try {
    localStorage.setItem(KEPT_AS, choice);
  } catch (error) {
    // A browser that keeps nothing still shows the choice until it is closed.
    console.error('the theme cannot be kept in this browser', error);
  }
}
