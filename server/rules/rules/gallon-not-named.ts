import * as l10n from '@vscode/l10n';
import { type Columns, spanAt } from '../../../grammar/span.ts';
import type { Line, Quantity, Value } from '../../../grammar/tree.ts';
import { type Gallon, withGallon } from '../../../grammar/units.ts';
import { fix, overwrite } from '../fixes.ts';
import { orList } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

const forFile: Readonly<Record<Gallon, () => string>> = {
  'gal-us': () => l10n.t('Every gallon of this file is the US gallon'),
  'gal-imp': () => l10n.t('Every gallon of this file is the imperial gallon'),
};
const gallons = Object.keys(forFile) as Gallon[];

function quantitiesOf(value: Value): readonly Quantity[] {
  switch (value.kind) {
    case 'quantity':
      return [value];
    case 'interval':
      return value.from ? [value.from, value.to] : [value.to];
    case 'product':
      return value.factors;
    case 'list':
      return value.values.flatMap(quantitiesOf);
    default:
      return [];
  }
}

/** Says it once for the whole file, on its `units` line or, where it has none, above its first line. */
function forTheFile(gallon: Gallon, { tree, log }: RuleContext): Fix {
  const at = tree.lines.findIndex(({ row }) => row === 'units');
  const written = tree.lines[at]?.items.at(-1);
  const title = forFile[gallon]();
  const end: Columns = { start: written?.end ?? 0, end: written?.end ?? 0 };
  if (at >= 0 && written) return fix(title, [{ span: spanAt(at, end), text: ` ${gallon}` }]);
  const text = `units ${log.units.depth} ${log.units.diameter} ${gallon}\n`;
  return fix(title, [{ span: { line: 0, start: 0, end: 0 }, text }]);
}

function reportOf(quantity: Quantity, line: number, context: RuleContext): Report[] {
  const { unit, unitAt } = quantity;
  if (!unit?.gallon || !unitAt) return [];
  const span = spanAt(line, unitAt);
  return [
    {
      span,
      message: l10n.t(
        'which gallon? The US gallon is 3.785 L and the imperial 4.546 L, and this file does not say; write {0}, or name it once on the units line',
        orList(gallons.map((each) => withGallon(unit, each).id)),
      ),
      fixes: () => [
        ...gallons.map((each) => overwrite(span, withGallon(unit, each).id)),
        ...gallons.map((each) => forTheFile(each, context)),
      ],
    },
  ];
}

const mayHaveGallons = ({ text }: Line): boolean => /gal|gp[mh]/i.test(text);

/** `gal` or `gpm` in a file that does not say which gallon. */
export const rule: Rule = {
  id: 'gallon-not-named',
  severity: 'error',
  title: 'A gallon of which nobody says whether it is US or imperial',
  why: 'The imperial gallon is a fifth larger. A volume or a rate in a gallon that is not named is not reckoned with.',
  mend: 'Write `gal-us` or `gal-imp` (`gpm-us`, `gpm-imp`), or name the gallon on the `units` line.',
  source: 'NIST SP 811, appendix B',
  crew: 'Which gallon is meant, the US or the imperial?',
  flagged: [
    { text: 'units ft in\nwater\n  126 fresh, 8 [[gpm]]', fixed: 'units ft in\nwater\n  126 fresh, 8 gpm-us' },
    { text: 'units ft in\ncasing +1.5 - 24 steel 6.625 x 0.25\n  grout 0 - 24 neat cement, 77 [[gal]]' },
  ],
  silent: [
    { text: 'units ft in gal-us\nwater\n  126 fresh, 8 gpm' },
    { text: 'units ft in\nwater\n  126 fresh, 8 gpm-us' },
  ],
  check: function* (context) {
    if (context.log.units.gallon !== null) return;
    for (const line of context.linesBesideStrata) {
      const read = context.tree.lines[line];
      if (!read || !mayHaveGallons(read)) continue;
      for (const { value } of read.items)
        for (const quantity of quantitiesOf(value)) yield* reportOf(quantity, line, context);
    }
  },
};
