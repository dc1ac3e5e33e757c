import { describe, expect, test } from 'vitest';
import { geojsonFormat, geojsonText } from '../../server/export/geojson/index.ts';
import { recordOf } from '../record/record-of.ts';
import { contextOf } from './context-of.ts';

const featureOf = (text: string) => JSON.parse(geojsonText([recordOf(text)])).features[0];

describe('a feature', () => {
  test('has longitude before latitude, by RFC 7946, section 3.1.1', () => {
    const { type, geometry } = featureOf('well A\nplace 44.5310 -78.2064 WGS84\n');
    expect(type).toBe('Feature');
    expect(geometry).toEqual({ type: 'Point', coordinates: [-78.2064, 44.531] });
  });

  test('has a place that was given as UTM in degrees', () => {
    // On the central meridian of zone 17, 81° W; the meridian from the equator to 45° N is 4,984,944.378 m on WGS 84
    // (handbook value, from memory), times the grid's 0.9996.
    const { geometry } = featureOf('place utm 17T 500000 4982950.4 WGS84\n');
    expect(geometry.coordinates[0]).toBeCloseTo(-81, 6);
    expect(geometry.coordinates[1]).toBeCloseTo(45, 6);
  });

  test('has no geometry, by RFC 7946, section 3.2, where the log gives no place', () => {
    expect(featureOf('well A\n').geometry).toBeNull();
  });

  test('has no geometry for a place on a datum far from WGS 84, and no id where the log has none', () => {
    const feature = featureOf('place 44.5 -78.2 NAD27\n');
    expect(feature.geometry).toBeNull();
    expect(Object.keys(feature)).toEqual(['type', 'geometry', 'properties']);
  });

  test('has null for what is not known, and metres for feet', () => {
    const { properties } = featureOf('units ft in\nwell A\nhole\n  0 - 100 6\nwater\n  level ?\n');
    expect(properties).toMatchObject({ well: 'A', depth_m: 30.48, static_level_m: null, ground_elevation_m: null });
  });
});

describe('what it leaves', () => {
  const leftOf = async (text: string) => (await geojsonFormat.make(recordOf(text), contextOf(text))).left[0];

  test('tells of a place on another datum than WGS 84', async () => {
    expect(await leftOf('place 44.5 -78.2 NAD27\n')).toMatch(/NAD27 is far from it: the feature has no geometry/);
    expect(await leftOf('place 44.5 -78.2 NAD83\n')).toMatch(/on NAD83 and was not moved/);
    expect(await leftOf('place 44.5 -78.2\n')).toMatch(/names no datum/);
    expect(await leftOf('well A\n')).toMatch(/gives no place/);
    expect(await leftOf('place 44.5 -78.2 WGS84\n')).toMatch(/^Of construction/);
  });
});
