import { termText } from '../../drawing/words.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import { figureValue } from '../figure-value.ts';
import type { ExportContext } from '../format.ts';
import { boreholeNode } from './borehole.ts';
import { geologyNode } from './geology.ts';
import { node, textNode, titled, type XmlNode } from './node.ts';
import { observed } from './observation.ts';
import { elevationNode, pointOf } from './place.ts';
import { quantityNode } from './quantity.ts';

/** Namespaces of OGC GroundWaterML 2.2 (OGC 16-032r2) and of what it builds on. */
const namespaces: Readonly<Record<string, string>> = {
  'xmlns:gwml2w': 'http://www.opengis.net/gwml-well/2.2',
  'xmlns:gwml2wc': 'http://www.opengis.net/gwml-wellconstruction/2.2',
  'xmlns:gml': 'http://www.opengis.net/gml/3.2',
  'xmlns:sam': 'http://www.opengis.net/sampling/2.0',
  'xmlns:sams': 'http://www.opengis.net/samplingSpatial/2.0',
  'xmlns:om': 'http://www.opengis.net/om/2.0',
  'xmlns:swe': 'http://www.opengis.net/swe/2.0',
  'xmlns:gmd': 'http://www.isotc211.org/2005/gmd',
  'xmlns:gco': 'http://www.isotc211.org/2005/gco',
  'xmlns:xlink': 'http://www.w3.org/1999/xlink',
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation':
    'http://www.opengis.net/gwml-well/2.2 http://schemas.opengis.net/gwml/2.2/gwml2-well.xsd ' +
    'http://www.opengis.net/gwml-wellconstruction/2.2 http://schemas.opengis.net/gwml/2.2/gwml2-wellconstruction.xsd',
};

const unknownFeature = { 'xlink:href': 'http://www.opengis.net/def/nil/OGC/0/unknown', 'xlink:title': 'unknown' };

function shapeOf(record: WellRecord, id: string): XmlNode {
  const point = pointOf(record, id);
  return point === null ? node('sams:shape', { nilReason: 'unknown' }) : node('sams:shape', {}, point);
}

const constructedDepth = (record: WellRecord): XmlNode | null =>
  observed(
    'gwml2w:gwWellConstructedDepth',
    'constructed-depth',
    { date: record.log.finished?.date ?? null, procedure: null, property: 'constructed depth' },
    quantityNode('om:result', 'm', record.log.totalDepth),
  );

const staticLevels = ({ log }: WellRecord): (XmlNode | null)[] =>
  log.water.levels.map(({ level, date }, at) =>
    observed(
      'gwml2w:gwWellStaticWaterDepth',
      `level.${at + 1}`,
      { date: date?.date ?? null, procedure: null, property: 'depth of the static level below ground' },
      quantityNode('om:result', 'm', level?.value),
    ),
  );

/** The rate of the first test; where there is none, what the water found adds up to. */
function yieldNode(record: WellRecord): XmlNode | null {
  const [test] = record.log.tests;
  const tested = test?.rate?.value ?? null;
  const rate = tested ?? figureValue(record, 'water.found-rate');
  const procedure = tested === null ? 'estimated while drilling' : `test: ${test?.method?.name ?? 'method not logged'}`;
  const date = tested === null ? null : (test?.start?.from?.date ?? null);
  return observed(
    'gwml2w:gwWellYield',
    'yield',
    { date, procedure, property: 'yield' },
    quantityNode('om:result', 'L/s', rate),
  );
}

function referenceElevation(record: WellRecord): XmlNode | null {
  const elevation = elevationNode(record, 'gwml2w:elevation');
  return elevation === null
    ? null
    : node(
        'gwml2w:gwWellReferenceElevation',
        {},
        node('gwml2w:Elevation', {}, elevation, titled('gwml2w:elevationType', 'ground surface')),
      );
}

const permitNode = (permit: string | undefined): XmlNode | null =>
  permit === undefined
    ? null
    : node('gwml2w:gwWellLicence', {}, node('gwml2w:GW_Licence', {}, node('gwml2w:gwLicenceID', {}, permit)));

const writtenOn =
  (source: readonly string[]) =>
  (line: number): string =>
    (source[line] ?? '').trim();

/** The well with its borehole, its construction and the log of its ground, as one feature. */
export function wellNode(record: WellRecord, { source, name }: ExportContext): XmlNode {
  const { header, uses, status, totalDepth } = record.log;
  const place = pointOf(record, 'well.place');
  return node(
    'gwml2w:GW_Well',
    { ...namespaces, 'gml:id': 'well' },
    textNode('gml:description', [header.site?.text, header.location?.text].filter(Boolean).join('; ')),
    node('gml:name', {}, header.well?.text ?? name),
    textNode('gml:name', header.tag?.text),
    node('sam:sampledFeature', unknownFeature),
    shapeOf(record, 'well.shape'),
    constructedDepth(record),
    node('gwml2w:gwWellConstruction', {}, boreholeNode(record, writtenOn(source), shapeOf(record, 'borehole.shape'))),
    place === null ? null : node('gwml2w:gwWellLocation', {}, place),
    uses.map((use) => titled('gwml2w:gwWellPurpose', termText(use))),
    referenceElevation(record),
    staticLevels(record),
    titled('gwml2w:gwWellStatus', termText(status)),
    quantityNode('gwml2w:gwWellTotalLength', 'm', totalDepth),
    yieldNode(record),
    permitNode(header.permit?.text),
    geologyNode(record),
  );
}
