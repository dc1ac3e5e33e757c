import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import type { Product } from '../../../grammar/tree.ts';
import type { PipeSize } from '../../model/log.ts';
import { fix } from '../fixes.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

interface Pipe {
  readonly line: number;
  readonly size: PipeSize;
}

/** A wall beside a size of which nobody can tell whether it is nominal or outside. */
const isEither = ({ size }: Pipe): boolean => size.wall !== null && size.outside === null && size.nominal === null;

function productOn(line: number, { tree }: RuleContext): Product | null {
  const value = tree.lines[line]?.items.find(({ slot }) => slot === 'size')?.value;
  return value?.kind === 'product' ? value : null;
}

function meaning(title: string, label: string, line: number, { end, factors: [first] }: Product): Fix {
  const unit = first.unit && first.unitAt ? ` ${first.unit.id}` : '';
  const at = spanAt(line, { start: end, end });
  return fix(title, [{ span: at, text: `, ${label} ${first.figure}${unit}` }], { preferred: false });
}

function reportOf({ line }: Pipe, product: Product): Report {
  const { figure } = product.factors[0];
  return {
    span: spanAt(line, product),
    message: l10n.t(
      '"{0}" beside a wall may be a nominal size or the outside diameter, and pipe of {0} in nominal is wider than that outside; say nominal {0} or od {0}, or write the outside diameter',
      figure,
    ),
    fixes: () => [
      meaning(l10n.t('It is the nominal size'), 'nominal', line, product),
      meaning(l10n.t('It is the outside diameter'), 'od', line, product),
    ],
  };
}

/** A whole inch size beside a wall. */
export const rule: Rule = {
  id: 'nominal-or-outside',
  severity: 'warning',
  title: 'A size that may be nominal or outside',
  why: 'Pipe of 6 in nominal is 6⅝ in outside. The annulus, and the grout in it, differ by that much.',
  mend: 'Write the outside diameter (`6.625 x 0.25`), or say `nominal 6` or `od 6`.',
  source: 'ASME B36.10M and ASTM F480 sizes',
  crew: 'Is it the nominal size or the outside diameter?',
  flagged: [
    {
      text: 'units ft in\ncasing +1.5 - 24 steel [[6 x 0.25]]\n  shoe 24',
      fixed: 'units ft in\ncasing +1.5 - 24 steel 6 x 0.25, nominal 6\n  shoe 24',
    },
  ],
  silent: [
    { text: 'units ft in\ncasing +1.5 - 24 steel 6.625 x 0.25\n  shoe 24' },
    { text: 'units ft in\ncasing +1.5 - 24 steel 6 x 0.25, nominal 6\n  shoe 24' },
    { text: 'units ft in\ncasing +1.5 - 24 steel 6 sch 40\n  shoe 24' },
  ],
  check: function* (context) {
    const pipes: Pipe[] = context.log.strings.flatMap((string) => [string, ...string.screens]);
    const told = new Set<number>();
    for (const pipe of pipes.filter(isEither)) {
      const product = told.has(pipe.line) ? null : productOn(pipe.line, context);
      told.add(pipe.line);
      if (product) yield reportOf(pipe, product);
    }
  },
};
