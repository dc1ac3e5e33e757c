import type { Stratum } from '../../model/log.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import { node, type XmlNode } from './node.ts';
import { observationHead } from './observation.ts';
import { quantityNode } from './quantity.ts';

const textField = (name: string, text: string): XmlNode =>
  node('swe:field', { name }, node('swe:Text', {}, node('swe:value', {}, text)));

const categoryField = (name: string, label: string, value: string): XmlNode =>
  node('swe:field', { name }, node('swe:Category', {}, node('swe:label', {}, label), node('swe:value', {}, value)));

const recordOf = ({ description, principal, ground, names }: Stratum): XmlNode =>
  node(
    'swe:DataRecord',
    {},
    textField('description', description || '?'),
    principal === null ? null : categoryField('lithology', 'principal material', principal.name),
    ground === null || ground.fgdc === null
      ? null
      : categoryField('pattern', 'pattern number of FGDC-STD-013-2006', String(ground.fgdc)),
    names.map((name) => categoryField('formation', 'name of a formation or place', name)).slice(0, 1),
  );

const layerNode = (stratum: Stratum): XmlNode =>
  node(
    'gwml2w:element',
    {},
    node(
      'gwml2w:LogValue',
      {},
      quantityNode('gwml2w:fromDepth', 'm', stratum.interval.top?.value),
      quantityNode('gwml2w:toDepth', 'm', stratum.interval.bottom?.value),
      node('gwml2w:value', {}, recordOf(stratum)),
    ),
  );

const known = (values: readonly (number | null | undefined)[]): number[] =>
  values.filter((value) => value !== null && value !== undefined);

/** The log of the ground; null where no layer is logged. */
export function geologyNode({ log }: WellRecord): XmlNode | null {
  const { strata, finished } = log;
  if (strata.length === 0) return null;
  const tops = known(strata.map(({ interval }) => interval.top?.value));
  const bottoms = known(strata.map(({ interval }) => interval.bottom?.value));
  const least = tops.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = bottoms.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return node(
    'gwml2w:gwWellGeology',
    {},
    node(
      'gwml2w:GW_GeologyLog',
      { 'gml:id': 'geology' },
      observationHead('geology', finished?.date ?? null, "driller's log", 'lithology'),
      node(
        'om:result',
        {},
        node('gwml2w:GW_GeologyLogCoverage', { 'gml:id': 'geology.layers' }, strata.map(layerNode)),
      ),
      quantityNode('gwml2w:startDepth', 'm', least),
      quantityNode('gwml2w:endDepth', 'm', most),
    ),
  );
}
