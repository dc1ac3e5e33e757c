import * as l10n from '@vscode/l10n';
import type { Span } from '../../../grammar/span.ts';
import type { Place, WellLog } from '../../model/log.ts';
import { fix } from '../fixes.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

interface Angles {
  readonly latitude: number;
  readonly longitude: number;
}

const degrees = /[+-]?\d+(?:\.\d+)?/g;

/** The two plain numbers of the line, as written, with their columns. */
function writtenIn(place: Place, { tree }: RuleContext) {
  const { start, end } = place.span;
  const text = tree.lines[place.line]?.text.slice(0, end) ?? '';
  const [first, second] = [...text.slice(start).matchAll(degrees)];
  const at = (match: RegExpMatchArray) => ({
    text: match[0],
    span: { line: place.line, start: start + (match.index ?? 0), end: start + (match.index ?? 0) + match[0].length },
  });
  return first && second ? { first: at(first), second: at(second) } : null;
}

/** Where the two angles stand; the whole entry where they are not two plain numbers. */
function anglesSpan(place: Place, context: RuleContext): Span {
  const written = writtenIn(place, context);
  return written ? { ...written.first.span, end: written.second.span.end } : place.span;
}

function exchange(place: Place, context: RuleContext): Fix[] {
  const written = writtenIn(place, context);
  if (!written) return [];
  const { first, second } = written;
  const edits = [
    { span: first.span, text: second.text },
    { span: second.span, text: first.text },
  ];
  return [fix(l10n.t('Exchange latitude and longitude'), edits, { preferred: true })];
}

function westward(place: Place, context: RuleContext): Fix[] {
  const second = writtenIn(place, context)?.second;
  if (!second) return [];
  const edits = [{ span: { ...second.span, end: second.span.start }, text: '-' }];
  return [fix(l10n.t('Make the longitude west'), edits, { preferred: true })];
}

function offRangeText(latitude: number, longitude: number, changed: boolean): string {
  if (changed)
    return l10n.t('latitude {0} is beyond 90°: the two seem to have changed places; latitude comes first', latitude);
  return Math.abs(latitude) > 90
    ? l10n.t('latitude {0} is beyond 90°; correct it', latitude)
    : l10n.t('longitude {0} is beyond 180°; correct it', longitude);
}

function offRange(place: Place, { latitude, longitude }: Angles, context: RuleContext): Report | null {
  const changed = Math.abs(latitude) > 90 && Math.abs(latitude) <= 180 && Math.abs(longitude) <= 90;
  if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) return null;
  return {
    span: anglesSpan(place, context),
    message: offRangeText(latitude, longitude, changed),
    fixes: () => (changed ? exchange(place, context) : []),
  };
}

const within = (value: number, least: number, most: number): boolean => value >= least && value <= most;

/** What is wrong with a UTM place; null where nothing is. */
function wrongUtm({ zone, easting, northing }: NonNullable<Place['utm']>): string | null {
  if (!within(zone, 1, 60)) return l10n.t('UTM zone {0} does not exist; zones run from 1 to 60; correct it', zone);
  if (!within(easting, 100_000, 900_000))
    return l10n.t('easting {0} m lies outside its zone, 100,000 to 900,000 m; correct it', easting);
  return within(northing, 0, 10_000_000) ? null : l10n.t('northing {0} m is beyond 10,000,000 m; correct it', northing);
}

function utmReports(place: Place): Report[] {
  const wrong = place.utm && wrongUtm(place.utm);
  return wrong ? [{ span: place.span, message: wrong }] : [];
}

/** Units that the trade uses in North America, which lies west of Greenwich. */
const isAmerican = ({ units }: WellLog): boolean => units.depth === 'ft' && units.diameter === 'in';

const eastward = (place: Place, { latitude, longitude }: Angles, context: RuleContext): Report | null =>
  isAmerican(context.log) && latitude > 15 && longitude > 50
    ? {
        span: anglesSpan(place, context),
        severity: 'hint',
        message: l10n.t('longitude {0} lies east of Greenwich; west is written with a minus, -{0}', longitude),
        fixes: () => westward(place, context),
      }
    : null;

/** Latitude or longitude that no place on earth has, or that has lost its sign. */
export const rule: Rule = {
  id: 'place-off-range',
  severity: 'error',
  title: 'A place that is not on the map, or has lost a sign',
  why: 'A well that is not where its record says cannot be found again, nor its neighbours warned.',
  mend: 'Write latitude first, then longitude, in degrees; west and south take a minus.',
  source: 'definition of latitude and longitude; UTM zones as in NGA.SIG.0012 (2014), from memory',
  crew: 'Where is the well?',
  flagged: [
    { text: 'place [[-98.3042 44.6128]]', fixed: 'place 44.6128 -98.3042' },
    { text: 'units ft in\nplace [[44.6128 78.3042]]', fixed: 'units ft in\nplace 44.6128 -78.3042' },
    { text: 'place [[44.6128 -783.042]]' },
    { text: '[[place utm 71 714000 4943000]]' },
  ],
  silent: [
    { text: 'place utm 17 714000 4943000' },
    { text: 'place 44.6128 -78.3042' },
    { text: 'place 44.6128 78.3042' },
  ],
  check: (context) => {
    const { place } = context.log;
    if (place?.utm) return utmReports(place);
    if (!place || place.latitude === null || place.longitude === null) return [];
    const angles = { latitude: place.latitude, longitude: place.longitude };
    return [offRange(place, angles, context) ?? eastward(place, angles, context)].filter((each) => each !== null);
  },
};
