import type { Snapshot } from '../analysis/snapshot.ts';
import { formatText } from '../features/format.ts';
import type { Figure } from '../record/record.ts';
import { printable } from './printable.ts';

const heading = (text: string): string[] => [text, '-'.repeat(text.length)];

const lineNumbers = (lines: readonly number[]): string =>
  lines.length === 0 ? '' : `line${lines.length === 1 ? '' : 's'} ${lines.map((each) => each + 1).join(', ')}`;

/** The part of an id that figures of one thing share: `casing.1.grout.1`. */
const subject = (id: string): string => id.split('.').slice(0, -1).join('.');

const valueText = ({ value, text, otherText, doubtful, waitsFor }: Figure): string => {
  if (value === null) return `? (waits for ${waitsFor.join(', ')})`;
  return `${text}${otherText === '' ? '' : ` (${otherText})`}${doubtful ? ', doubtful' : ''}`;
};

const widest = (texts: readonly string[]): number => texts.reduce((most, each) => Math.max(most, each.length), 0);

function lineOf(figure: Figure, width: number): string {
  const parts = [figure.title.padEnd(width), valueText(figure), lineNumbers(figure.lines)];
  return `  ${parts.filter((each) => each !== '').join('  ')}`;
}

/** Each caution of a group of figures, once. */
const cautionLines = (figures: readonly Figure[]): string[] =>
  [...new Set(figures.map(({ caution }) => caution))]
    .filter((each) => each !== null)
    .map((each) => `  caution: ${each}`);

function bySubject(figures: readonly Figure[]): Map<string, Figure[]> {
  const groups = new Map<string, Figure[]>();
  for (const figure of figures) groups.set(subject(figure.id), [...(groups.get(subject(figure.id)) ?? []), figure]);
  return groups;
}

const figureLines = (figures: readonly Figure[]): string[] =>
  [...bySubject(figures)].flatMap(([name, group]) => {
    const width = widest(group.map(({ title }) => title));
    return ['', name.replaceAll('.', ' '), ...group.map((figure) => lineOf(figure, width)), ...cautionLines(group)];
  });

const questionLines = ({ log }: Snapshot): string[] =>
  log.questions.length === 0
    ? []
    : [
        '',
        ...heading('Questions for the crew'),
        ...log.questions.map(({ span, what, kind }) => `  line ${span.line + 1}: ${what} (${kind})`),
      ];

/** A record for people: the log in its long form, what was computed from it, and what is still to be asked. */
export function recordText(snapshot: Snapshot): string {
  const { log, lines, record } = snapshot;
  const title = `Record of ${log.header.well?.text ?? 'a well without an id'}`;
  return [
    title,
    '='.repeat(title.length),
    '',
    ...heading('As logged'),
    formatText(lines.join('\n')).trimEnd(),
    '',
    ...heading('Computed'),
    ...figureLines(record.figures),
    ...questionLines(snapshot),
  ]
    .map((line) => `${line.split('\n').map(printable).join('\n')}\n`)
    .join('');
}
