import { describe, expect, it } from 'vitest';
import { daysBetween, dueDate, placeOfUtm, utmOf, zoneOfLongitude } from '../../server/calculations/index.ts';
import { expectNear, figureOf } from './measures.ts';

describe('UTM', () => {
  // A tower in Toronto, the example of encyclopaedias, from memory: 43°38′33.24″ N 79°23′13.7″ W is 17T 630084 4833438.
  const latitude = 43 + 38 / 60 + 33.24 / 3600;
  const longitude = -(79 + 23 / 60 + 13.7 / 3600);

  it('zone 17, 630,084 E, 4,833,438 N', () => {
    const found = figureOf(utmOf({ latitude, longitude }));
    expect([found.zone, found.hemisphere]).toEqual([17, 'N']);
    expectNear(found.easting, 630_084, 1);
    expectNear(found.northing, 4_833_438, 1);
  });

  it('and back, within the metre that the grid figures carry', () => {
    const found = figureOf(placeOfUtm({ zone: 17, hemisphere: 'N', easting: 630_084, northing: 4_833_438 }));
    expectNear(found.latitude, latitude, 1e-5);
    expectNear(found.longitude, longitude, 1e-5);
  });

  // By definition (DMA TM 8358.2): 500,000 m on the central meridian, nothing and 10,000,000 m at the equator.
  it('starts at 500,000 E on the central meridian and at 0 N, 10,000,000 S on the equator', () => {
    const north = figureOf(utmOf({ latitude: 0, longitude: -81 }));
    expectNear(north.easting, 500_000, 1e-3);
    expectNear(north.northing, 0, 1e-3);
    const south = figureOf(utmOf({ latitude: -1e-9, longitude: -81 }));
    expect(south.hemisphere).toBe('S');
    expectNear(south.northing, 10_000_000, 1e-3);
  });

  it.each([
    [-180, 1],
    [-174, 2],
    [-81, 17],
    [-0.001, 30],
    [0, 31],
    [179.999, 60],
  ])('longitude %d is in zone %d', (longitudeEast, zone) => {
    expect(figureOf(zoneOfLongitude(longitudeEast))).toBe(zone);
  });
});

describe('days', () => {
  // The Modified Julian count: day 0 is 1858-11-17, day 51,544 is 2000-01-01 (astronomical almanacs).
  it('51,544 days from 1858-11-17 to 2000-01-01', () => {
    expect(figureOf(daysBetween('1858-11-17', '2000-01-01'))).toBe(51_544);
    expect(figureOf(dueDate('1858-11-17', 51_544))).toBe('2000-01-01');
  });

  // The Gregorian rule: 2000 was a leap year, 1900 was not.
  it('keeps the leap years', () => {
    expect(figureOf(daysBetween('2000-02-28', '2000-03-01'))).toBe(2);
    expect(figureOf(daysBetween('1900-02-28', '1900-03-01'))).toBe(1);
  });
});
