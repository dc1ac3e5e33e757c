import * as l10n from '@vscode/l10n';
import { fromSi, unitById } from '../../../grammar/units.ts';
import { numberText, unitText } from '../display.ts';
import { entryOf, leadingInterval } from '../entries.ts';
import type { HintSource } from './hint.ts';

const layered = new Set(['strata', 'strata.line', 'hole', 'hole.line', 'abandonment.line']);

/** How thick a layer is. One that begins at the ground says so itself; one that runs upwards is a slip and has none. */
export const thicknessHints: HintSource = ({ log }, { row, depths }, number) => {
  if (row === null || !layered.has(row) || depths?.kind !== 'interval') return [];
  const unit = unitById(log.units.depth);
  const interval = leadingInterval(entryOf(log, row, number));
  const [top, bottom] = [interval?.top?.value ?? null, interval?.bottom?.value ?? null];
  if (unit === undefined || top === null || bottom === null || top === 0 || bottom <= top) return [];
  const text = `${numberText(fromSi(bottom - top, unit))} ${unitText(unit.id)}`;
  return [{ line: number, column: depths.end, text, about: () => l10n.t('thickness {0}', text) }];
};
