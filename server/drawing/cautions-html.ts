import type { Figure } from '../record/record.ts';
import { cautionsOf, helpNotLaw } from './cautions.ts';
import { element, fromLine, lineName, textElement } from './html.ts';

/** Every caution once, with the figures that it goes with, under the sentence that checks are no law. */
export function cautionsHtml(figures: readonly Figure[]): string {
  const items = cautionsOf(figures).map((caution) => {
    const about = textElement('span', { class: 'place' }, caution.figures.join(', '));
    return element('li', fromLine(caution.line), `${lineName(caution.line, caution.text, true)} ${about}`);
  });
  const list = items.length === 0 ? '' : element('ul', { class: 'cautions' }, `\n${items.join('\n')}\n`);
  return `${textElement('p', {}, helpNotLaw)}\n${list}`;
}
