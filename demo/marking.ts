import type { CourseHole } from './courses.ts';
import { centimetres, type ShotRecord } from './records.ts';
import type { Place } from './resting.ts';
import type { SeededNumbers } from './seededNumbers.ts';

/** Metres in a degree of latitude and of longitude at the equator. Source: WGS 84 ellipsoid, to 10 m. */
const DEGREE_m = { latitude: 110_574, longitude: 111_320 } as const;

/** The invented courses lie in the open ocean, near 0° N 0° E, so that no real place is named. */
const OCEAN = { lat_deg: 0.01, lon_deg: 0.01, hole_deg: 0.006 } as const;

type Fix = {
  lat_deg: number;
  lon_deg: number;
  accuracy_m: number;
  at: string;
};

function fix(hole: CourseHole, place: Place, at: string, numbers: SeededNumbers): Fix {
  const bearing = (hole.bearing_deg * Math.PI) / 180;
  const accuracy_m = centimetres(numbers.between(3.5, 6.5));
  const north = place.along * Math.cos(bearing) - place.right * Math.sin(bearing);
  const east = place.along * Math.sin(bearing) + place.right * Math.cos(bearing);
  const blur = (): number => (accuracy_m / 2.448) * numbers.normal();
  const rounded = (degrees: number): number => Math.round(degrees * 1e7) / 1e7;
  return {
    lat_deg: rounded(OCEAN.lat_deg + OCEAN.hole_deg * hole.number + (north + blur()) / DEGREE_m.latitude),
    lon_deg: rounded(OCEAN.lon_deg + (east + blur()) / DEGREE_m.longitude),
    accuracy_m,
    at,
  };
}

/** A shot marked where it was played and where it came to rest: the total is what the two fixes say. */
export function markedTotal(
  hole: CourseHole,
  from: Place,
  rest: Place,
  times: readonly [played: string, found: string],
  numbers: SeededNumbers,
): Pick<ShotRecord, 'total' | 'marks'> {
  const ball = fix(hole, from, times[0], numbers);
  const end = fix(hole, rest, times[1], numbers);
  const north = (end.lat_deg - ball.lat_deg) * DEGREE_m.latitude;
  const east = (end.lon_deg - ball.lon_deg) * DEGREE_m.longitude;
  return {
    total: { m: centimetres(Math.hypot(north, east)), by: 'gnss', error_m: null },
    marks: { ball, pitch: null, rest: end },
  };
}
