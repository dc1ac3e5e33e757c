import LatLon from 'geodesy/latlon-ellipsoidal-vincenty.js';
import { describe, expect, test } from 'vitest';
import { distanceBetween } from '../../server/calculations/place/distance.ts';

const place = (latitude: number, longitude: number) => ({ latitude, longitude });

describe('the distance between two places', () => {
  test.each([
    [place(44.531, -78.2064), place(44.5312, -78.2064)],
    [place(44.531, -78.2064), place(44.54, -78.19)],
    [place(-33.9, 18.4), place(-34.1, 18.9)],
    [place(60, -179.999), place(60, 179.999)],
  ])('is within 0.6 %% of that on the ellipsoid (Vincenty, as in the geodesy library): %j %j', (a, b) => {
    const exact = new LatLon(a.latitude, a.longitude).distanceTo(new LatLon(b.latitude, b.longitude));
    expect(Math.abs(distanceBetween(a, b) / exact - 1)).toBeLessThan(0.006);
  });

  test('a minute of latitude is about a nautical mile, 1852 m', () => {
    expect(distanceBetween(place(45, 0), place(45 + 1 / 60, 0))).toBeCloseTo(1853.25, 1);
  });

  test('is nothing from a place to itself, and half the way round to the other side', () => {
    expect(distanceBetween(place(44, -78), place(44, -78))).toBe(0);
    expect(distanceBetween(place(0, 0), place(0, 180))).toBeCloseTo(Math.PI * 6_371_008.8, 0);
  });
});
