import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { markSchema } from '../../src/golf/mark.ts';
import { markDistance } from '../../src/golf/markDistance.ts';

const markAt = (lat_deg: number, lon_deg: number) => z.parse(markSchema, { lat_deg, lon_deg, accuracy_m: 4 });

/** Longitudes beyond ±180° of the source stand here less or plus a full turn, as a phone reports them. */
const rows: readonly { inputs: readonly [number, number, number, number]; expected: { m: number; bearing: number } }[] =
  [
    {
      inputs: [35.60777, -139.44815, -11.17491, -69.95921],
      expected: { m: 8935244.5604818305, bearing: 111.098748429560326 },
    },
    {
      inputs: [55.52454, 106.05087, 77.03196, -162.81766],
      expected: { m: 4105086.1713924406, bearing: 22.020059880982801 },
    },
    {
      inputs: [-21.97856, 142.59065, 41.84138, 98.56635],
      expected: { m: 8394328.894657671, bearing: -32.44456876433189 },
    },
    {
      inputs: [-66.99028, 112.2363, -12.70631, -74.09656],
      expected: { m: 11150344.2312080241, bearing: 173.73491240878403 },
    },
    {
      inputs: [-17.42761, 173.34268, -15.84784, 5.93557],
      expected: { m: 16076603.1631180673, bearing: -159.033557661192928 },
    },
    {
      inputs: [32.84994, 48.28919, -56.28556, -157.70868],
      expected: { m: 16727068.9438164461, bearing: 150.492927788121982 },
    },
    {
      inputs: [6.96833, 52.74123, -7.39675, -153.82709],
      expected: { m: 17102477.2496958388, bearing: 92.581585386317712 },
    },
    {
      inputs: [-50.56724, -16.30485, -33.56571, -94.97412],
      expected: { m: 6455670.5118668696, bearing: -105.439679907590164 },
    },
    {
      inputs: [-58.93002, -8.90775, -8.91104, 133.13503],
      expected: { m: 11756066.0219864627, bearing: 140.965397902500679 },
    },
    {
      inputs: [-68.82867, -74.28391, -50.63005, -8.36685],
      expected: { m: 3956936.926063544, bearing: 93.774347763114881 },
    },
    {
      inputs: [-10.62672, -32.0898, 5.883, -134.31681],
      expected: { m: 11470869.3864563009, bearing: -86.426713286747751 },
    },
    {
      inputs: [-21.76221, 166.90563, 48.72884, -146.02373],
      expected: { m: 9098627.3986554915, bearing: 29.319421206936428 },
    },
    {
      inputs: [-19.79938, -174.47484, -11.99349, -154.35109],
      expected: { m: 2319004.8601169389, bearing: 71.167275780171533 },
    },
    {
      inputs: [-11.95887, -116.94513, 4.57352, 7.16501],
      expected: { m: 13834722.5801401374, bearing: 92.712619830452549 },
    },
    {
      inputs: [-87.85331, 85.66836, 66.48646, 16.09921],
      expected: { m: 17286615.3147144645, bearing: -65.120313040242748 },
    },
    {
      inputs: [1.74708, 128.32011, -11.16617, 11.87109],
      expected: { m: 12942901.1241347408, bearing: -101.584843631173858 },
    },
    {
      inputs: [-25.72959, -144.90758, -57.70581, 90.82121],
      expected: { m: 9413446.7452453107, bearing: -153.647468693117198 },
    },
    {
      inputs: [-41.22777, 122.32875, -7.57291, 130.37946],
      expected: { m: 3812686.035106021, bearing: 14.285113402275739 },
    },
    {
      inputs: [11.01307, 138.25278, 6.62726, -112.94019],
      expected: { m: 11911190.819018408, bearing: 79.43682622782374 },
    },
    {
      inputs: [-29.47124, 95.14681, -27.46601, -69.15955],
      expected: { m: 13487015.8381145492, bearing: -163.779130441688382 },
    },
  ];
const tolerance = { m: 1e-6, bearing: 1e-9 };
const source =
  'Karney, GeodTest test set for geodesics on WGS 84 (2010), the rows printed in the tests of GeographicLib';

test(`distances and bearings are those of: ${source}`, () => {
  expect(rows.length).toBe(20);
  for (const { inputs, expected } of rows) {
    const [lat1, lon1, lat2, lon2] = inputs;
    const { m, bearing_deg } = markDistance(markAt(lat1, lon1), markAt(lat2, lon2));
    expect(Math.abs(m - expected.m), `${inputs}`).toBeLessThan(tolerance.m);
    const turn = Math.abs(bearing_deg - expected.bearing) % 360;
    expect(Math.min(turn, 360 - turn), `${inputs}`).toBeLessThan(tolerance.bearing);
  }
});

test('a distance of a hand’s breadth is right too', () => {
  // GeographicLib's own test GeodSolve4, a short line: 0.072 m, given there to half a millimetre.
  const { m } = markDistance(markAt(36.493349428792, 0), markAt(36.49334942879201, 0.0000008));
  expect(Math.abs(m - 0.072)).toBeLessThan(0.0005);
});

/** Inverse formula on WGS 84. Source: Vincenty (1975), Direct and inverse solutions of geodesics, Survey Review 23, 88–93. */
function vincenty(lat1: number, lon1: number, lat2: number, lon2: number): number {
  const a = 6378137;
  const f = 1 / 298.257223563;
  const b = a * (1 - f);
  const radians = Math.PI / 180;
  const u1 = Math.atan((1 - f) * Math.tan(lat1 * radians));
  const u2 = Math.atan((1 - f) * Math.tan(lat2 * radians));
  const l = (lon2 - lon1) * radians;
  let lambda = l;
  for (let turn = 0; turn < 100; turn++) {
    const sinSigma = Math.hypot(
      Math.cos(u2) * Math.sin(lambda),
      Math.cos(u1) * Math.sin(u2) - Math.sin(u1) * Math.cos(u2) * Math.cos(lambda),
    );
    if (sinSigma === 0) return 0;
    const cosSigma = Math.sin(u1) * Math.sin(u2) + Math.cos(u1) * Math.cos(u2) * Math.cos(lambda);
    const sigma = Math.atan2(sinSigma, cosSigma);
    const sinAlpha = (Math.cos(u1) * Math.cos(u2) * Math.sin(lambda)) / sinSigma;
    const cos2Alpha = 1 - sinAlpha ** 2;
    const cos2m = cos2Alpha === 0 ? 0 : cosSigma - (2 * Math.sin(u1) * Math.sin(u2)) / cos2Alpha;
    const c = (f / 16) * cos2Alpha * (4 + f * (4 - 3 * cos2Alpha));
    const next = l + (1 - c) * f * sinAlpha * (sigma + c * sinSigma * (cos2m + c * cosSigma * (2 * cos2m ** 2 - 1)));
    if (Math.abs(next - lambda) < 1e-15) {
      const uu = (cos2Alpha * (a * a - b * b)) / (b * b);
      const big = 1 + (uu / 16384) * (4096 + uu * (-768 + uu * (320 - 175 * uu)));
      const small = (uu / 1024) * (256 + uu * (-128 + uu * (74 - 47 * uu)));
      const delta =
        small *
        sinSigma *
        (cos2m +
          (small / 4) *
            (cosSigma * (2 * cos2m ** 2 - 1) - (small / 6) * cos2m * (4 * sinSigma ** 2 - 3) * (4 * cos2m ** 2 - 3)));
      return b * big * (sigma - delta);
    }
    lambda = next;
  }
  throw new Error('no convergence');
}

test('shots of 5 to 300 m agree with an independent formula to a millimetre, at every latitude golf is played', () => {
  for (const lat of [-54.8, -33.9, 0.001, 21.3, 40.2, 56.3, 69.6]) {
    for (const length of [5, 40, 137, 300]) {
      for (let turn = 0; turn < 12; turn++) {
        const angle = (turn * Math.PI) / 6;
        const lat2 = lat + (length * Math.cos(angle)) / 111_000;
        const lon2 = -3 + (length * Math.sin(angle)) / (111_000 * Math.cos((lat * Math.PI) / 180));
        const { m } = markDistance(markAt(lat, -3), markAt(lat2, lon2));
        expect(Math.abs(m - vincenty(lat, -3, lat2, lon2)), `${lat} ${length} ${turn}`).toBeLessThan(1e-3);
      }
    }
  }
});
