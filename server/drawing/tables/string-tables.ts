import type { AtDepth, Fill, PipeString, WellLog } from '../../model/log.ts';
import {
  capital,
  depthText,
  depthWithUnit,
  fieldText,
  intervalText,
  intervalWithUnit,
  listed,
  measureText,
  momentText,
  numberText,
  periodText,
  sizeText,
  unitName,
  wordsText,
  wordText,
} from '../words.ts';
import { figures, type Table, tableOf, words } from './table.ts';

/** A part of a string in words. */
interface StringPart {
  readonly line: number;
  readonly part: string;
  readonly depth: string;
  readonly what: string;
  readonly remark: string;
}

const fitting = (part: string, each: AtDepth, unit: string): StringPart => ({
  line: each.line,
  part,
  depth: depthText(each.depth, unit),
  what: wordsText(each.kinds),
  remark: fieldText(each.remark),
});

function pipeText(string: PipeString): string {
  const { size, grade, pulled, set } = string;
  return listed([
    wordText(string.material),
    sizeText(size) || 'size ?',
    fieldText(grade),
    wordText(string.joint),
    wordsText(string.states),
    pulled === null ? '' : `pulled ${momentText(pulled)}`,
    set === null ? '' : `set ${momentText(set)}`,
  ]);
}

const pipePart = (string: PipeString, unit: string): StringPart => ({
  line: string.line,
  part: capital(string.kind),
  depth: intervalText(string.interval, unit),
  what: pipeText(string),
  remark: fieldText(string.remark),
});

function jointsPart({ joints }: PipeString, unit: string): StringPart[] {
  if (joints === null) return [];
  const what = joints.lengths
    .map(({ count, length }) => `${count === 1 ? '' : `${numberText(count, 0)} × `}${depthText(length, unit)}`)
    .join(', ');
  return [
    {
      line: joints.line,
      part: 'Joints',
      depth: '',
      what: `${what} ${unitName(unit)}, from the foot up`,
      remark: fieldText(joints.remark),
    },
  ];
}

function centralizersPart({ centralizers }: PipeString, unit: string): StringPart[] {
  if (centralizers === null) return [];
  const depth = centralizers.positions.map((each) => depthText(each, unit)).join(', ');
  const what = listed([
    centralizers.every === null ? '' : `every ${depthWithUnit(centralizers.every, unit)}`,
    labelled('sets of', measureText(centralizers.inSet)),
  ]);
  return [{ line: centralizers.line, part: 'Centralizers', depth, what, remark: fieldText(centralizers.remark) }];
}

const screenPartsOf = ({ screens, perforated }: PipeString, unit: string): StringPart[] => [
  ...screens.map((screen) => ({
    line: screen.line,
    part: 'Screen',
    depth: intervalText(screen.interval, unit),
    what: listed([
      wordText(screen.material),
      sizeText(screen.size),
      wordsText(screen.kinds),
      screen.slot === null ? '' : `slot ${measureText(screen.slot)}`,
      screen.openArea === null ? '' : `open area ${measureText(screen.openArea)}`,
    ]),
    remark: fieldText(screen.remark),
  })),
  ...perforated.map((interval) => ({
    line: interval.span.line,
    part: 'Perforated',
    depth: intervalText(interval, unit),
    what: '',
    remark: '',
  })),
];

const cutParts = ({ cuts }: PipeString, unit: string): StringPart[] =>
  cuts.map((cut) => ({
    line: cut.line,
    part: 'Cut off',
    depth: `${depthText(cut.from, unit)} to ${depthText(cut.to, unit)}`,
    what: momentText(cut.date),
    remark: fieldText(cut.remark),
  }));

const partsOf = (string: PipeString, unit: string): StringPart[] => [
  pipePart(string, unit),
  ...(string.shoe === null ? [] : [fitting('Shoe', string.shoe, unit)]),
  ...centralizersPart(string, unit),
  ...jointsPart(string, unit),
  ...screenPartsOf(string, unit),
  ...string.packers.map((each) => fitting('Packer', each, unit)),
  ...string.pitless.map((each) => fitting('Pitless adapter', each, unit)),
  ...cutParts(string, unit),
];

const bagsText = ({ bags, mass }: Fill): string =>
  bags === null
    ? measureText(mass)
    : listed([measureText(bags.count)]) + (bags.massEach === null ? '' : ` × ${measureText(bags.massEach)}`);

const gradingText = ({ grading, grain }: Fill): string =>
  listed([
    grading === null ? '' : `${numberText(grading.coarse, 0)}/${numberText(grading.fine, 0)}`,
    measureText(grain),
  ]);

const labelled = (label: string, text: string): string => (text === '' ? '' : `${label} ${text}`);

const mixText = (fill: Fill): string =>
  listed([
    labelled('w/c', measureText(fill.waterCement)),
    labelled('water', measureText(fill.water)),
    labelled('density', measureText(fill.density)),
    labelled('solids', measureText(fill.solids)),
    labelled('bentonite', measureText(fill.bentonite)),
    labelled('montmorillonite', measureText(fill.montmorillonite)),
  ]);

const placingText = (fill: Fill, unit: string): string =>
  listed([
    wordText(fill.placement),
    fill.pipeFoot === null ? '' : labelled('pipe at', depthWithUnit(fill.pipeFoot, unit)),
    measureText(fill.pressure),
    periodText(fill.placed),
  ]);

const afterText = (fill: Fill, unit: string): string =>
  listed([
    fill.plugInside === null ? '' : labelled('plug inside', depthWithUnit(fill.plugInside, unit)),
    labelled('returned', measureText(fill.returned)),
    labelled('top-up', measureText(fill.topUp)),
    fill.settled === null ? '' : labelled('settled', depthWithUnit(fill.settled, unit)),
  ]);

/** Fills with amount, mix and placing. */
export const fillTable = (caption: string, fills: readonly Fill[], unit: string): Table[] =>
  tableOf<Fill>(caption, fills, [
    words('Fill', (fill) => capital(fill.kind)),
    figures('Depth', (fill) =>
      fill.interval === null ? depthText(fill.depth, unit) : intervalText(fill.interval, unit),
    ),
    words('Material', (fill) => [gradingText(fill), wordText(fill.material)].filter(Boolean).join(' ') || '?'),
    figures('Volume', (fill) => measureText(fill.volume)),
    figures('Bags', bagsText),
    words('Mix', mixText),
    words('Placing', (fill) => placingText(fill, unit)),
    words('After', (fill) => afterText(fill, unit)),
    words('Remark', (fill) => fieldText(fill.remark)),
  ]);

function tablesOf(string: PipeString, unit: string): Table[] {
  const name = `${capital(string.kind)} ${string.number}, ${intervalWithUnit(string.interval, unit)}`;
  return [
    ...tableOf<StringPart>(name, partsOf(string, unit), [
      words('Part', (each) => each.part),
      figures('Depth', (each) => each.depth),
      words('What', (each) => each.what),
      words('Remark', (each) => each.remark),
    ]),
    ...fillTable(`Around ${string.kind} ${string.number}`, string.fills, unit),
  ];
}

/** Each string with what hangs on it and what stands around it. */
export const stringTables = (log: WellLog): Table[] =>
  log.strings.flatMap((string) => tablesOf(string, log.units.depth));
