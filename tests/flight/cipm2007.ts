/**
 * Density of moist air, kg/m³, by the CIPM-2007 formula at 400 µmol/mol of CO₂: the oracle of our simple one.
 *
 * @param celsius temperature, 15 to 27 °C by its authors; used a little beyond.
 * @param pascals 60,000 to 110,000 Pa.
 * @param humidity relative, 0 to 1.
 * Source: Picard, Davis, Gläser, Fujii 2008, Metrologia 45, 149, equations 1 and A1; coefficients from memory.
 */
export function cipm2007(celsius: number, pascals: number, humidity: number): number {
  const kelvin = celsius + 273.15;
  const saturation = Math.exp(1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
  const enhancement = 1.00062 + 3.14e-8 * pascals + 5.6e-7 * celsius ** 2;
  const vapour = (humidity * enhancement * saturation) / pascals;
  const compressibility =
    1 -
    (pascals / kelvin) *
      (1.58123e-6 -
        2.9331e-8 * celsius +
        1.1043e-10 * celsius ** 2 +
        (5.707e-6 - 2.051e-8 * celsius) * vapour +
        (1.9898e-4 - 2.376e-6 * celsius) * vapour ** 2) +
    (pascals / kelvin) ** 2 * (1.83e-11 - 0.765e-8 * vapour ** 2);
  return ((3.48374e-3 * pascals) / (compressibility * kelvin)) * (1 - 0.378 * vapour);
}
