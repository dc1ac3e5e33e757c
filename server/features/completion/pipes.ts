import * as l10n from '@vscode/l10n';
import { unitById } from '../../../grammar/units.ts';
import { pipeMass } from '../../calculations/casing/pipe-mass.ts';
import { outsideOfNominal, type PipeMaterial, wallOf } from '../../calculations/casing/pipe-sizes.ts';
import type { CompletionPlace } from './place.ts';
import { depthsWritten, openSlots } from './slots.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const inch = 0.0254;
const poundPerFoot = 0.45359237 / 0.3048;

/** Sizes of well casing in inches, the commonest first. */
const nominals = [6, 4, 5, 8, 2, 10, 12, 3, 14, 16];

const schedules: Readonly<Record<PipeMaterial, readonly string[]>> = {
  steel: ['40', 'light', '80', '10'],
  plastic: ['40', '80'],
};

interface Pipe {
  readonly nominal: number;
  readonly schedule: string;
  readonly material: PipeMaterial;
  readonly outside: number;
  readonly wall: number;
}

function pipeOf(nominal: number, schedule: string, material: PipeMaterial): readonly Pipe[] {
  const outside = outsideOfNominal(nominal * inch, material);
  const wall = wallOf(nominal * inch, schedule, material);
  return outside.ok && wall.ok ? [{ nominal, schedule, material, outside: outside.value, wall: wall.value }] : [];
}

const pipesOf = (material: PipeMaterial): readonly Pipe[] =>
  nominals.flatMap((nominal) => schedules[material].flatMap((schedule) => pipeOf(nominal, schedule, material)));

let made: Readonly<Record<PipeMaterial, readonly Pipe[]>> | null = null;

const pipes = (material: PipeMaterial): readonly Pipe[] => {
  made ??= { steel: pipesOf('steel'), plastic: pipesOf('plastic') };
  return made[material];
};

/** In the system of the file, as a list has little room. Steel weighs what its standard says; the weight of plastic varies with the compound and is not told. */
function weight({ outside, wall, material }: Pipe, inInches: boolean): string {
  const mass = material === 'steel' ? pipeMass(outside, wall) : null;
  if (!mass?.ok) return '';
  return inInches ? `, ${(mass.value / poundPerFoot).toFixed(1)} lb/ft` : `, ${mass.value.toFixed(1)} kg/m`;
}

const scheduleText = (schedule: string): string => (schedule === 'light' ? 'light wall' : `sch ${schedule}`);

/** The pipe by its nominal size, in words. */
function pipeText({ nominal, schedule, material }: Pipe): string {
  const shown = schedule === 'light' ? l10n.t('light wall') : scheduleText(schedule);
  return material === 'steel'
    ? l10n.t('{0} in {1} steel', nominal, shown)
    : l10n.t('{0} in {1} plastic', nominal, shown);
}

/** So that 6.35 mm, a quarter inch, becomes 6.4 whatever its last bit. */
const nextToNothing = 1e-9;

function suggestionOf(pipe: Pipe, inInches: boolean, from: number | null): Suggestion {
  const show = (metres: number, digits: number): string =>
    String(Number((metres / (inInches ? inch : 0.001) + nextToNothing).toFixed(digits)));
  const label = `${show(pipe.outside, inInches ? 3 : 1)} x ${show(pipe.wall, inInches ? 3 : 1)}`;
  const named = `${pipe.nominal} in ${scheduleText(pipe.schedule)}`;
  const detail = `${pipeText(pipe)}${weight(pipe, inInches)}`;
  return plain('size', label, detail, { filter: `${named} ${label}`, from });
}

const plastics = new Set(['pvc', 'cpvc', 'abs', 'hdpe']);

/** The table that a string's material is made to; both where the line does not say. */
function materialsOn({ line }: CompletionPlace): readonly PipeMaterial[] {
  const named = line.items.find(({ slot }) => slot === 'material')?.value;
  if (named?.kind !== 'term') return ['steel', 'plastic'];
  if (plastics.has(named.term.id)) return ['plastic'];
  return /steel|iron/.test(named.term.id) ? ['steel'] : [];
}

const numberAtEnd = /(?<![^\s,])\d[\d.]*$/;

/** Sizes of pipe with wall and weight, by outside diameter or by the nominal size that is typed. */
export const suggestPipes: SuggestionSource = (place) => {
  if (place.where !== 'body' || place.word !== '' || !depthsWritten(place)) return [];
  const typed = numberAtEnd.exec(place.lead);
  const from = typed?.index ?? null;
  if (from !== null && from < (place.line.depths?.end ?? 0)) return [];
  if (!openSlots(place).some(({ slot }) => slot === 'size')) return [];
  const inInches = unitById(place.snapshot.log.units.diameter)?.system === 'us';
  const all = materialsOn(place).flatMap((material) => pipes(material));
  const suggestions = all.map((pipe) => suggestionOf(pipe, inInches, from));
  if (typed === null) return suggestions;
  return suggestions.filter(({ label, filter }) => filter.startsWith(typed[0]) || label.startsWith(typed[0]));
};
