import type { Record as WellRecord } from '../../record/record.ts';
import { constructionNodes } from './construction.ts';
import { node, titled, type XmlNode } from './node.ts';
import { elevationNode, pointOf } from './place.ts';
import { quantityNode } from './quantity.ts';

/* ISO 19115's list of roles, which has none for a driller. */
const roles = 'http://standards.iso.org/iso/19139/resources/gmxCodelists.xml#CI_RoleCode';

const partyNode = (name: string, organisation: string | undefined, role: string, called: string): XmlNode | null =>
  organisation === undefined
    ? null
    : node(
        name,
        {},
        node(
          'gmd:CI_ResponsibleParty',
          {},
          node('gmd:organisationName', {}, node('gco:CharacterString', {}, organisation)),
          node('gmd:role', {}, node('gmd:CI_RoleCode', { codeList: roles, codeListValue: role }, called)),
        ),
      );

function collarNode(record: WellRecord): XmlNode {
  const point = pointOf(record, 'collar.place');
  const caps = record.log.caps.flatMap(({ kinds }) => kinds.map(({ name }) => name)).join(', ');
  return node(
    'gwml2wc:bholeHeadworks',
    {},
    node(
      'gwml2wc:BoreCollar',
      { 'gml:id': 'collar' },
      elevationNode(record, 'gwml2wc:collarElevation'),
      titled('gwml2wc:collarElevationType', 'ground surface'),
      titled('gwml2wc:collarHeadworkType', caps),
      point === null ? null : node('gwml2wc:collarLocation', {}, point),
    ),
  );
}

const methodsOf = ({ log }: WellRecord): string[] => [
  ...new Set([...log.hole, ...log.drilling].flatMap(({ methods }) => methods.map(({ name }) => name))),
];

const pumpNodes = ({ log }: WellRecord): XmlNode[] =>
  log.pumps.map(({ kinds, date }, at) =>
    node(
      'gwml2wc:installedEquipment',
      {},
      node(
        'gwml2wc:Equipment',
        {},
        node('gwml2wc:equipmentType', { 'xlink:title': kinds.map(({ name }) => name).join(', ') || 'pump' }),
        date?.date
          ? node(
              'gwml2wc:installationDate',
              {},
              node('gml:TimeInstant', { 'gml:id': `pump.${at + 1}.time` }, node('gml:timePosition', {}, date.date)),
            )
          : null,
      ),
    ),
  );

/** The hole's width at its bottom: the standard has one diameter for the whole. */
const bottomDiameter = ({ log }: WellRecord): number | null => log.hole.at(-1)?.diameter?.value ?? null;

/** The borehole with its construction. */
export function boreholeNode(record: WellRecord, written: (line: number) => string, shape: XmlNode): XmlNode {
  const { header, finished } = record.log;
  return node(
    'gwml2wc:Borehole',
    { 'gml:id': 'borehole' },
    node('sam:sampledFeature', { 'xlink:href': '#well' }),
    shape,
    finished?.date ? node('gwml2wc:bholeDateOfDrilling', {}, finished.date) : null,
    partyNode('gwml2wc:bholeDriller', header.contractor?.text, 'originator', 'driller'),
    methodsOf(record).map((method) => titled('gwml2wc:bholeDrillingMethod', method)),
    quantityNode('gwml2wc:bholeNominalDiameter', 'mm', bottomDiameter(record)),
    partyNode('gwml2wc:bholeOperator', header.owner?.text, 'owner', 'owner'),
    titled('gwml2wc:bholeStartPoint', 'ground surface'),
    constructionNodes(record, written),
    collarNode(record),
    pumpNodes(record),
  );
}
