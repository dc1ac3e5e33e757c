import { node, type XmlNode } from './node.ts';

const unknownPart = (name: string): XmlNode => node(name, { 'xsi:nil': 'true', nilReason: 'unknown' });

/** The first parts of an observation; the date is YYYY-MM-DD, or null where the log gives none. */
export function observationHead(
  id: string,
  date: string | null,
  procedure: string | null,
  property: string,
): XmlNode[] {
  const instant = `${id}.time`;
  return [
    ...(date === null
      ? [node('om:phenomenonTime', { nilReason: 'unknown' }), node('om:resultTime', { nilReason: 'unknown' })]
      : [
          node(
            'om:phenomenonTime',
            {},
            node('gml:TimeInstant', { 'gml:id': instant }, node('gml:timePosition', {}, date)),
          ),
          node('om:resultTime', { 'xlink:href': `#${instant}` }),
        ]),
    procedure === null ? unknownPart('om:procedure') : node('om:procedure', { 'xlink:title': procedure }),
    node('om:observedProperty', { 'xlink:title': property }),
    node('om:featureOfInterest', { 'xlink:href': '#well' }),
  ];
}

/** A property of the well that was observed; null where the value is not known. */
export const observed = (
  name: string,
  id: string,
  about: { readonly date: string | null; readonly procedure: string | null; readonly property: string },
  result: XmlNode | null,
): XmlNode | null =>
  result === null
    ? null
    : node(
        name,
        {},
        node(
          'om:OM_Observation',
          { 'gml:id': id },
          observationHead(id, about.date, about.procedure, about.property),
          result,
        ),
      );
