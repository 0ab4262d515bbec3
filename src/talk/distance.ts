/** A place on the map, degrees north and east. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** Mean radius of the earth, km (IUGG). A sphere is good to about 0.6 %, far better than a road. */
const EARTH_KM = 6371.0088;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * Kilometres along the great circle between two places, by the haversine formula.
 * @returns at least 0, at most half the earth's girth
 */
export function greatCircleKm(a: Place, b: Place): number {
  const [north, east] = [b.latitude - a.latitude, b.longitude - a.longitude].map(radians);
  const h =
    Math.sin((north ?? 0) / 2) ** 2 +
    Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * Math.sin((east ?? 0) / 2) ** 2;
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(h)));
}

interface Roads {
  /** Road distance ÷ great-circle distance. */
  readonly roadFactor: number;
  /** km/h. */
  readonly roadSpeed: number;
}

/** How far and how long it is by road, as far as a straight line can tell. */
export function byRoad(
  a: Place,
  b: Place,
  roads: Roads,
): { readonly km: number; readonly minutes: number } {
  const km = greatCircleKm(a, b) * roads.roadFactor;
  return { km, minutes: (60 * km) / roads.roadSpeed };
}

/** The place, where both its numbers are known. */
export function placeKnown(
  where: { readonly latitude?: number; readonly longitude?: number } | null | undefined,
): Place | null {
  const { latitude, longitude } = where ?? {};
  return latitude === undefined || longitude === undefined ? null : { latitude, longitude };
}
