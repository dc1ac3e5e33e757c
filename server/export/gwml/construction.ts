import type { AtDepth, Fill, Interval, PipeSize, PipeString, Screen } from '../../model/log.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import { node, textNode, titled, type XmlNode } from './node.ts';
import { quantityNode } from './quantity.ts';

/** What was written on a line of the log, which carries what the standard has no element for. */
type WrittenOn = (line: number) => string;

const construction = (part: XmlNode): XmlNode => node('gwml2wc:bholeConstruction', {}, part);

const stretch = (interval: Interval | null): (XmlNode | null)[] => [
  quantityNode('gwml2wc:from', 'm', interval?.top?.value),
  quantityNode('gwml2wc:to', 'm', interval?.bottom?.value),
];

const at = (depth: number | null | undefined): (XmlNode | null)[] => [
  quantityNode('gwml2wc:from', 'm', depth),
  quantityNode('gwml2wc:to', 'm', depth),
];

const described = (text: string): XmlNode | null => textNode('gml:description', text);

const pipeNodes = (kind: 'casing' | 'screen', size: PipeSize): (XmlNode | null)[] => [
  quantityNode(`gwml2wc:${kind}InternalDiameter`, 'mm', size.insideDiameter),
  quantityNode(`gwml2wc:${kind}ExternalDiameter`, 'mm', size.outsideDiameter),
];

const casingForm = ({ driven, temporary, states, joint }: PipeString): string =>
  [...(driven ? ['driven'] : []), ...(temporary ? ['temporary'] : []), ...states.map(({ name }) => name), joint?.name]
    .filter((each, place, all) => each !== undefined && all.indexOf(each) === place)
    .join(', ');

const casingNode = (string: PipeString, written: WrittenOn): XmlNode => {
  const id = `string.${string.number}`;
  return construction(
    node(
      'gwml2wc:Casing',
      { 'gml:id': id },
      described(written(string.line)),
      node(
        'gwml2wc:casingElement',
        {},
        node(
          'gwml2wc:CasingComponent',
          { 'gml:id': `${id}.pipe` },
          stretch(string.interval),
          titled('gwml2wc:casingMaterial', string.material?.name),
          titled('gwml2wc:casingForm', casingForm(string)),
          pipeNodes('casing', string.size),
          quantityNode('gwml2wc:casingWallThickness', 'mm', string.size.wallThickness),
        ),
      ),
    ),
  );
};

interface ScreenPart {
  readonly id: string;
  readonly description: string;
  readonly interval: Interval;
  readonly material: string | null;
  readonly slot: number | null;
  readonly size: PipeSize;
  readonly method: string;
}

const screenNode = ({ id, description, interval, material, slot, size, method }: ScreenPart): XmlNode =>
  construction(
    node(
      'gwml2wc:Screen',
      { 'gml:id': id },
      described(description),
      node(
        'gwml2wc:screenElement',
        {},
        node(
          'gwml2wc:ScreenComponent',
          { 'gml:id': `${id}.part` },
          stretch(interval),
          quantityNode('gwml2wc:screenHoleWidth', 'mm', slot),
          titled('gwml2wc:screenMaterial', material),
          pipeNodes('screen', size),
          titled('gwml2wc:screenPerforationMethod', method),
          quantityNode('gwml2wc:screenWallThickness', 'mm', size.wallThickness),
        ),
      ),
    ),
  );

const ofScreen = (string: PipeString, screen: Screen, written: WrittenOn): XmlNode =>
  screenNode({
    id: `string.${string.number}.screen.${screen.number}`,
    description: written(screen.line),
    interval: screen.interval,
    material: screen.material?.name ?? string.material?.name ?? null,
    slot: screen.slot?.value ?? null,
    size: screen.size,
    method: screen.kinds.map(({ name }) => name).join(', '),
  });

const ofPerforated = (string: PipeString, interval: Interval, number: number, written: WrittenOn): XmlNode =>
  screenNode({
    id: `string.${string.number}.perforated.${number}`,
    description: written(string.line),
    interval,
    material: string.material?.name ?? null,
    slot: null,
    size: string.size,
    method: 'perforated casing',
  });

interface SealPart {
  readonly id: string;
  readonly description: string;
  readonly extent: readonly (XmlNode | null)[];
  readonly material: string | null;
  readonly type: string;
  readonly placement: string | null;
}

const sealingNode = ({ id, description, extent, material, type, placement }: SealPart): XmlNode =>
  construction(
    node(
      'gwml2wc:Sealing',
      { 'gml:id': id },
      described(description),
      titled('gwml2wc:sealingGroutingPlacementMethod', placement),
      node(
        'gwml2wc:sealingElement',
        {},
        node(
          'gwml2wc:SealingComponent',
          { 'gml:id': `${id}.part` },
          extent,
          titled('gwml2wc:sealingMaterial', material),
          titled('gwml2wc:sealingType', type),
        ),
      ),
    ),
  );

const fillTypes: Readonly<Record<Fill['kind'], string>> = {
  grout: 'annular grout',
  seal: 'annular seal',
  plug: 'plug',
  abandonment: 'filling of an abandoned well',
  pack: 'filter pack',
};

const filtrationNode = (id: string, fill: Fill, written: WrittenOn): XmlNode =>
  construction(
    node(
      'gwml2wc:Filtration',
      { 'gml:id': id },
      described(written(fill.line)),
      node(
        'gwml2wc:filterElement',
        {},
        node(
          'gwml2wc:FiltrationComponent',
          { 'gml:id': `${id}.part` },
          stretch(fill.interval),
          quantityNode('gwml2wc:filterGrainSize', 'mm', fill.grain?.value),
          titled('gwml2wc:filterMaterial', fill.material?.name),
        ),
      ),
    ),
  );

const ofFill = (id: string, fill: Fill, written: WrittenOn): XmlNode =>
  fill.kind === 'pack'
    ? filtrationNode(id, fill, written)
    : sealingNode({
        id,
        description: written(fill.line),
        extent: fill.interval === null ? at(fill.depth?.value) : stretch(fill.interval),
        material: fill.material?.name ?? null,
        type: fillTypes[fill.kind],
        placement: fill.placement?.name ?? null,
      });

const ofFitting = (id: string, type: string, fitting: AtDepth, written: WrittenOn): XmlNode =>
  sealingNode({
    id,
    description: written(fitting.line),
    extent: at(fitting.depth?.value),
    material: fitting.kinds.map(({ name }) => name).join(', ') || type,
    type,
    placement: null,
  });

function stringNodes(string: PipeString, written: WrittenOn): XmlNode[] {
  const id = `string.${string.number}`;
  return [
    ...(string.kind === 'screen' && string.screens.length > 0 ? [] : [casingNode(string, written)]),
    ...string.screens.map((screen) => ofScreen(string, screen, written)),
    ...string.perforated.map((interval, n) => ofPerforated(string, interval, n + 1, written)),
    ...(string.shoe === null ? [] : [ofFitting(`${id}.shoe`, 'shoe', string.shoe, written)]),
    ...string.fills.map((fill) => ofFill(`${id}.${fill.kind}.${fill.number}`, fill, written)),
    ...string.packers.map((packer, n) => ofFitting(`${id}.packer.${n + 1}`, 'packer', packer, written)),
  ];
}

/** Every part of the construction, each with the words of its line. Depths above ground are negative. */
export const constructionNodes = ({ log }: WellRecord, written: WrittenOn): XmlNode[] => [
  ...log.strings.flatMap((string) => stringNodes(string, written)),
  ...log.abandonments.flatMap(({ number, fills }) =>
    fills.map((fill) => ofFill(`abandonment.${number}.fill.${fill.number}`, fill, written)),
  ),
];
