import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byRoad, greatCircleKm } from "../../src/talk/distance.ts";

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});

describe("distance", () => {
  // Great circle on a sphere of R = 6371.0088 km (IUGG mean radius); the places are an example of
  // the geodesic library's documentation.
  it.each([
    [{ latitude: 40.6, longitude: -73.8 }, { latitude: 51.6, longitude: -0.5 }, 5536.892],
    [{ latitude: -41.32, longitude: 174.81 }, { latitude: 40.96, longitude: -5.5 }, 19967.4036],
    [{ latitude: 0, longitude: 0 }, { latitude: 1, longitude: 0 }, 111.19508],
  ])("is that of the great circle", (a, b, km) => {
    expect(greatCircleKm(a, b)).toBeCloseTo(km, 3);
  });

  it("is the same both ways and never more than half round the earth", () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        const there = greatCircleKm(a, b);
        expect(there).toBeCloseTo(greatCircleKm(b, a), 6);
        expect(there).toBeGreaterThanOrEqual(0);
        expect(there).toBeLessThanOrEqual(Math.PI * 6371.0088 + 1e-6);
      }),
      { seed: 3 },
    );
  });

  it("takes the road's detour and speed into account", () => {
    const [a, b] = [
      { latitude: 0, longitude: 0 },
      { latitude: 1, longitude: 0 },
    ];
    const { km, minutes } = byRoad(a, b, { roadFactor: 2, roadSpeed: 60 });
    expect(km).toBeCloseTo(222.39, 1);
    expect(minutes).toBeCloseTo(km, 9);
  });
});
