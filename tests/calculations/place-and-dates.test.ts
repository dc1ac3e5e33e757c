import fc from 'fast-check';
import LatLon from 'geodesy/latlon-spherical.js';
import { describe, expect, it } from 'vitest';
import {
  centralMeridian,
  daysBetween,
  distanceBetween,
  dueDate,
  hoursBetween,
  placeOfUtm,
  utmOf,
  zoneFits,
  zoneOfLongitude,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const degrees = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('UTM', () => {
  it('leads there and back within a millimetre', () => {
    fc.assert(
      fc.property(fc.oneof(degrees(-79, -1e-6), degrees(0, 83)), degrees(-179.99, 179.99), (latitude, longitude) => {
        const back = figureOf(placeOfUtm(figureOf(utmOf({ latitude, longitude }))));
        expect(back.latitude).toBeCloseTo(latitude, 8);
        expect(back.longitude).toBeCloseTo(longitude, 7);
      }),
    );
  });

  it('takes a neighbouring zone near the edge, and no other', () => {
    const place = { latitude: 44.6128, longitude: -78.3042 };
    expect(figureOf(utmOf(place)).zone).toBe(17);
    expect(figureOf(utmOf(place, 'WGS84', 18)).zone).toBe(18);
    expectRefused(/does not lie in that zone/, utmOf(place, 'WGS84', 16), utmOf(place, 'WGS84', 19));
    expectRefused(/1 to 60/, utmOf(place, 'WGS84', 0), utmOf(place, 'WGS84', 61), utmOf(place, 'WGS84', 1.5));
  });

  it('depends on the datum: NAD27 lies some 200 m from WGS84 by its grid figures, NAD83 within a millimetre', () => {
    const place = { latitude: 44.6128, longitude: -78.3042 };
    const northing = (datum: 'WGS84' | 'NAD83' | 'NAD27'): number => figureOf(utmOf(place, datum)).northing;
    expect(Math.abs(northing('NAD83') - northing('WGS84'))).toBeLessThan(0.001);
    expect(Math.abs(northing('NAD27') - northing('WGS84'))).toBeGreaterThan(100);
    const old = figureOf(utmOf(place, 'NAD27'));
    expect(figureOf(placeOfUtm(old, 'NAD27')).latitude).toBeCloseTo(44.6128, 8);
  });

  it('is refused off its grid', () => {
    expectRefused(/80 degrees south/, utmOf({ latitude: -81, longitude: 0 }), utmOf({ latitude: 85, longitude: 0 }));
    expectRefused(
      /longitude is outside/,
      utmOf({ latitude: 0, longitude: 181 }),
      utmOf({ latitude: 0, longitude: -181 }),
    );
    const place = { zone: 17, hemisphere: 'N', easting: 500_000, northing: 5_000_000 } as const;
    expectRefused(/1 to 60/, placeOfUtm({ ...place, zone: 61 }), placeOfUtm({ ...place, zone: 0 }));
    expectRefused(/easting/, placeOfUtm({ ...place, easting: 99_999 }), placeOfUtm({ ...place, easting: 900_001 }));
    expectRefused(/northing/, placeOfUtm({ ...place, northing: -1 }), placeOfUtm({ ...place, northing: 10_000_001 }));
    expect(utmOf({ latitude: 84, longitude: 179.9 }).ok).toBe(true);
    expect(utmOf({ latitude: -79.9, longitude: -180 }).ok).toBe(true);
    expect(figureOf(utmOf({ latitude: 0, longitude: 180 })).zone).toBe(1);
  });
});

describe('zones', () => {
  it('are those that the grid uses away from Norway', () => {
    fc.assert(
      fc.property(degrees(-79, 55), degrees(-179.99, 179.99), (latitude, longitude) => {
        expect(figureOf(zoneOfLongitude(longitude))).toBe(figureOf(utmOf({ latitude, longitude })).zone);
      }),
    );
    expect(figureOf(zoneOfLongitude(180))).toBe(1);
    expectRefused(/outside/, zoneOfLongitude(180.1), zoneOfLongitude(-180.1));
  });

  it('have their meridians', () => {
    expect(figureOf(centralMeridian(17))).toBe(-81);
    expect(figureOf(centralMeridian(1))).toBe(-177);
    expect(figureOf(centralMeridian(60))).toBe(177);
    expectRefused(/1 to 60/, centralMeridian(0), centralMeridian(61), centralMeridian(1.5));
  });

  it('fit half a degree beyond their edges, across the date line too', () => {
    expect(zoneFits(17, -78.3042, 44)).toBe(true);
    expect(zoneFits(17, -77.5, 44)).toBe(true);
    expect(zoneFits(17, -77.4, 44)).toBe(false);
    expect(zoneFits(16, -78.3042, 44)).toBe(false);
    expect(zoneFits(1, 179.8, 0)).toBe(true);
    expect(zoneFits(60, -179.8, 0)).toBe(true);
    expect(zoneFits(1, 179.4, 0)).toBe(false);
    expect(zoneFits(0, -183, 0)).toBe(false);
  });

  it('are wider in Norway and Svalbard, as the grid uses them', () => {
    for (const [latitude, longitude, zone] of [
      [60, 4, 32],
      [78, 10, 33],
      [78, 30, 35],
      [78, 40, 37],
      [78, 1, 31],
    ] as const) {
      expect(figureOf(utmOf({ latitude, longitude })).zone).toBe(zone);
      expect(zoneFits(zone, longitude, latitude)).toBe(true);
    }
    expect([zoneFits(32, 3, 56), zoneFits(33, 9, 72), zoneFits(31, 0, 72)]).toEqual([true, true, true]);
    expect([zoneFits(32, 12.6, 60), zoneFits(33, 21.1, 78), zoneFits(37, 43, 78)]).toEqual([false, false, false]);
    expect([zoneFits(31, -1, 78), zoneFits(33, 10, 71.9), zoneFits(32, 4, 55.9)]).toEqual([false, false, false]);
    expect(zoneFits(32, 4, 50)).toBe(false);
    expect(zoneFits(32, 4, 64)).toBe(false);
    expect(zoneFits(32, 2, 60)).toBe(false);
    expect(zoneFits(33, 10, 60)).toBe(false);
    expect(zoneFits(33, 30, 78)).toBe(false);
    expect(zoneFits(34, 15, 78)).toBe(false);
  });
});

/** Farther apart, in m, the haversine itself keeps half of its digits only: a square root near one. */
const otherSide = 19_900_000;

describe('the distance between two places', () => {
  it('is that of a general geodesy library on the same sphere', () => {
    fc.assert(
      fc.property(degrees(-89, 89), degrees(-180, 180), degrees(-89, 89), degrees(-180, 180), (f1, l1, f2, l2) => {
        const published = new LatLon(f1, l1).distanceTo(new LatLon(f2, l2), 6_371_008.8);
        const found = distanceBetween({ latitude: f1, longitude: l1 }, { latitude: f2, longitude: l2 });
        if (published < otherSide) expect(found).toBeCloseTo(published, 3);
        else expect(Math.abs(found - published)).toBeLessThan(0.5);
      }),
    );
    expect(distanceBetween({ latitude: 90, longitude: 0 }, { latitude: -90, longitude: 0 })).toBeCloseTo(
      20_015_115,
      -1,
    );
  });
});

describe('days', () => {
  it('lead to the due date and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200_000, max: 200_000 }), (days) => {
        expect(figureOf(daysBetween('2026-05-06', figureOf(dueDate('2026-05-06', days))))).toBe(days);
      }),
    );
    expect(figureOf(dueDate('2026-05-06', 30))).toBe('2026-06-05');
    expect(figureOf(daysBetween('2026-05-06', '2026-05-04'))).toBe(-2);
  });

  it('are refused for dates that the calendar does not have', () => {
    expectRefused(/not a date/, daysBetween('2026-02-30', '2026-03-01'), daysBetween('2026-03-01', '2025-02-29'));
    expectRefused(/not a date/, dueDate('2026-13-01', 1), dueDate('0000-01-01', 1), dueDate('2026-1-01', 1));
    expectRefused(/not a date/, dueDate(' 2026-01-01', 1), dueDate('2026-01-01x', 1));
    expectRefused(/whole number/, dueDate('2026-01-01', 1.5));
    expectRefused(
      /beyond the calendar/,
      dueDate('9999-12-31', 1),
      dueDate('0001-01-01', -1),
      dueDate('2026-01-01', 1e12),
    );
  });
});

describe('hours', () => {
  it('run across midnight, and backwards', () => {
    expect(figureOf(hoursBetween('2026-05-05 09:30', '2026-05-06 08:00'))).toBeCloseTo(22.5, 12);
    expect(figureOf(hoursBetween('2026-05-06T8:00', '2026-05-05T09:30'))).toBeCloseTo(-22.5, 12);
    expect(figureOf(hoursBetween('2026-05-05 00:00', '2026-05-05 24:00'))).toBe(24);
  });

  it('are refused for times that no clock shows', () => {
    const noon = '2026-05-05 12:00';
    expectRefused(/time of day/, hoursBetween(noon, '2026-05-05 24:01'), hoursBetween('2026-05-05 12:60', noon));
    expectRefused(/time of day/, hoursBetween('2026-05-05', noon), hoursBetween(noon, '2026-05-05 25:00'));
    expectRefused(/time of day/, hoursBetween(noon, 'x2026-05-05 12:00'), hoursBetween(noon, '2026-05-05 12:001'));
    expectRefused(/not a date/, hoursBetween(noon, '2026-02-30 12:00'));
  });
});
