import { element, section, textElement } from '../../drawing/html.ts';
import { fieldText, listed } from '../../drawing/words.ts';
import type { WellLog } from '../../model/log.ts';

/** Who signs a record: common practice, no source. */
const signers = [
  { role: 'Driller', fields: ['contractor', 'licence', 'technician'] },
  { role: 'Owner or agent', fields: ['owner'] },
] as const;

const line = (what: string, filled = ''): string =>
  element('div', { class: 'line' }, `${textElement('span', {}, filled)}${textElement('small', {}, what)}`);

/** Lines to sign on, with the names that the log has. */
export const signatureSection = ({ header }: WellLog): string =>
  section(
    'signatures',
    'Signatures',
    signers
      .map(({ role, fields }) => {
        const known = listed(fields.map((field) => (Object.hasOwn(header, field) ? fieldText(header[field]) : '')));
        return element('div', { class: 'signature' }, line(role, known) + line('Signature') + line('Date'));
      })
      .join('\n'),
  ).html;
