import { pageScheme } from './protocol.ts';

/** Address of the page that an editor shows of a rule or a pack. */
export const pageAddress = (kind: 'rule' | 'pack', id: string): string =>
  `${pageScheme}:/${kind}/${encodeURIComponent(id)}.md`;
