import type { OwnSwing } from '../golf/swing.ts';

/** What the golfer has chosen about the app on this phone; the hand and the unit of length belong to the player. */
export interface Settings {
  readonly theme: 'auto' | 'paper' | 'night' | 'glare';
  readonly temperature: '°F' | '°C';
  readonly windSpeed: 'mph' | 'm/s' | 'km/h';
  /** Whether the golfer has begun a bag, from typical clubs or from nothing. */
  readonly bagStarted: boolean;
  /** When a backup was last made; null: never. */
  readonly lastBackupAt: string | null;
  /** Which logbook is on the screen: the golfer's own or the demo season. Kept in the own logbook. */
  readonly showing: 'own' | 'demo';
  /** Where earlier versions kept the golfer's own swings; they belong to the player since, and are read from here once. */
  readonly ownSwings?: readonly OwnSwing[];
}

/** What holds until the golfer has chosen. */
export const defaultSettings: Settings = {
  theme: 'auto',
  temperature: '°F',
  windSpeed: 'mph',
  bagStarted: false,
  lastBackupAt: null,
  showing: 'own',
};
