import { type Celsius, celsius } from './celsius.ts';
import { type Quantity, quantity } from './quantity.ts';

/** A temperature in degrees Fahrenheit. Only the edges of the program speak it. */
export type Fahrenheit = Quantity<'°F'>;

/** A temperature in °F. @throws RangeError when the figure is not finite. */
export function fahrenheit(value: number): Fahrenheit {
  return quantity<'°F'>(value, '°F');
}

/** °C to °F: F = 1.8 C + 32, exact by definition. */
export function fahrenheitFromCelsius(temperature: Celsius): Fahrenheit {
  return fahrenheit(temperature * 1.8 + 32);
}

/** °F to °C: C = (F − 32) / 1.8, exact by definition. */
export function celsiusFromFahrenheit(temperature: Fahrenheit): Celsius {
  return celsius((temperature - 32) / 1.8);
}
