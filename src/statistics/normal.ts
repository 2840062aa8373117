/** 1/√(2π). */
const DENSITY_AT_ZERO = 0.3989422804014327;

/** √32: beyond it the tail series of Cody takes over. */
const TAIL_FROM = 5.656854249492381;

/**
 * Density of the standard normal distribution, φ(z) = e^(−z²/2) / √(2π).
 *
 * Any real z; underflows to 0 beyond |z| ≈ 38.6. Relative error about z²/2 units in the last place.
 * @throws RangeError when z is NaN.
 */
export function normalDensity(z: number): number {
  if (Number.isNaN(z)) throw notANumber(z);
  return DENSITY_AT_ZERO * Math.exp(-0.5 * z * z);
}

/**
 * Standard normal distribution function, Φ(z) = ½ erfc(−z/√2), by rational minimax approximations on
 * |z| ≤ 0.66, ≤ √32 and beyond.
 *
 * Absolute error below 1e-15; relative error of the lower tail below 1e-12 for z ≥ −37. ±∞ give 0 and 1.
 * @throws RangeError when z is NaN.
 * Source: Cody (1969), Rational Chebyshev approximations for the error function, Math. Comp. 23, 631–637;
 * coefficients in the normal form of Cody (1993), Algorithm 715 (ANORM), ACM TOMS 19, 22–32.
 */
export function normalDistribution(z: number): number {
  const size = Math.abs(z);
  if (size <= 0.66291) return 0.5 + centre(z);
  if (Number.isNaN(size)) throw notANumber(z);
  const tail = Math.exp(-0.5 * z * z) * (size <= TAIL_FROM ? middleFactor(size) : tailFactor(size));
  return z < 0 ? tail : 1 - tail;
}

/**
 * ln Φ(z), stable where Φ(z) itself underflows (z ≪ −38) and where it rounds to 1.
 *
 * Relative error below 1e-12 for any finite z. −∞ gives −∞, +∞ gives 0.
 * @throws RangeError when z is NaN.
 * Source: the tail and middle factors of Cody (1969), as in {@link normalDistribution}.
 */
export function logNormalDistribution(z: number): number {
  if (Number.isNaN(z)) throw notANumber(z);
  if (z < -TAIL_FROM) return -0.5 * z * z + Math.log(tailFactor(-z));
  if (z < -0.66291) return -0.5 * z * z + Math.log(middleFactor(-z));
  if (z <= 0.66291) return Math.log(normalDistribution(z));
  return Math.log1p(-normalDistribution(-z));
}

/**
 * Quantile of the standard normal distribution: the z with Φ(z) = p. Relative error below 1e-15.
 *
 * @param p a probability strictly between 0 and 1.
 * @throws RangeError when p is not strictly between 0 and 1.
 * Source: Wichura (1988), Algorithm AS 241 (PPND16), Applied Statistics 37, 477–484.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`probability ${p} is not strictly between 0 and 1`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (
      (q *
        (((((((r * 2509.0809287301226727 + 33430.575583588128105) * r + 67265.770927008700853) * r +
          45921.953931549871457) *
          r +
          13731.693765509461125) *
          r +
          1971.5909503065514427) *
          r +
          133.14166789178437745) *
          r +
          3.387132872796366608)) /
      (((((((r * 5226.495278852545925 + 28729.085735721942674) * r + 39307.89580009271061) * r +
        21213.794301586595867) *
        r +
        5394.1960214247511077) *
        r +
        687.1870074920579083) *
        r +
        42.313330701600911252) *
        r +
        1)
    );
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const size = r <= 5 ? quantileShoulder(r - 1.6) : quantileTail(r - 5);
  return q < 0 ? -size : size;
}

function notANumber(z: number): RangeError {
  return new RangeError(`standard score ${z} is not a number`);
}

/** Φ(z) − ½ for |z| ≤ 0.66291. */
function centre(z: number): number {
  const s = z * z;
  return (
    (z *
      ((((0.065682337918207449113 * s + 2.2352520354606839287) * s + 161.02823106855587881) * s +
        1067.6894854603709582) *
        s +
        18154.981253343561249)) /
    ((((s + 47.20258190468824187) * s + 976.09855173777669322) * s + 10260.932208618978205) * s + 45507.789335026729956)
  );
}

/** Φ(−x) e^(x²/2) for 0.66291 ≤ x ≤ √32. */
function middleFactor(x: number): number {
  return (
    ((((((((1.0765576773720192317e-8 * x + 0.39894151208813466764) * x + 8.8831497943883759412) * x +
      93.506656132177855979) *
      x +
      597.27027639480026226) *
      x +
      2494.5375852903726711) *
      x +
      6848.1904505362823326) *
      x +
      11602.651437647350124) *
      x +
      9842.7148383839780218) /
    ((((((((x + 22.266688044328115691) * x + 235.38790178262499861) * x + 1519.377599407554805) * x +
      6485.558298266760755) *
      x +
      18615.571640885098091) *
      x +
      34900.952721145977266) *
      x +
      38912.003286093271411) *
      x +
      19685.429676859990727)
  );
}

/** Φ(−x) e^(x²/2) for x > √32. */
function tailFactor(x: number): number {
  const s = 1 / (x * x);
  const series =
    (s *
      (((((0.02307344176494017303 * s + 0.21589853405795699) * s + 0.1274011611602473639) * s + 0.022235277870649807) *
        s +
        0.001421619193227893466) *
        s +
        2.9112874951168792e-5)) /
    (((((s + 1.28426009614491121) * s + 0.468238212480865118) * s + 0.0659881378689285515) * s +
      0.00378239633202758244) *
      s +
      7.29751555083966205e-5);
  return (DENSITY_AT_ZERO - series) / x;
}

function quantileShoulder(r: number): number {
  return (
    (((((((r * 7.7454501427834140764e-4 + 0.0227238449892691845833) * r + 0.24178072517745061177) * r +
      1.27045825245236838258) *
      r +
      3.64784832476320460504) *
      r +
      5.7694972214606914055) *
      r +
      4.6303378461565452959) *
      r +
      1.42343711074968357734) /
    (((((((r * 1.05075007164441684324e-9 + 5.475938084995344946e-4) * r + 0.0151986665636164571966) * r +
      0.14810397642748007459) *
      r +
      0.68976733498510000455) *
      r +
      1.6763848301838038494) *
      r +
      2.05319162663775882187) *
      r +
      1)
  );
}

function quantileTail(r: number): number {
  return (
    (((((((r * 2.01033439929228813265e-7 + 2.71155556874348757815e-5) * r + 0.0012426609473880784386) * r +
      0.026532189526576123093) *
      r +
      0.29656057182850489123) *
      r +
      1.7848265399172913358) *
      r +
      5.4637849111641143699) *
      r +
      6.6579046435011037772) /
    (((((((r * 2.04426310338993978564e-15 + 1.4215117583164458887e-7) * r + 1.8463183175100546818e-5) * r +
      7.868691311456132591e-4) *
      r +
      0.0148753612908506148525) *
      r +
      0.13692988092273580531) *
      r +
      0.59983220655588793769) *
      r +
      1)
  );
}
