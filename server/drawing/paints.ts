import type { Paint } from './shapes.ts';

/** `print` is for files and paper; `editor` leaves every colour to custom properties of the page. */
export type Theme = 'print' | 'editor';

/** Print colours. Tints of ground and fill are laid thin, so that they read on light and on dark paper. */
export const paints: Readonly<{ [P in Paint]: string }> = {
  ink: '#1a1a1a',
  paper: '#ffffff',
  'quiet-ink': '#5a5f63',
  rule: '#b4b9bd',
  water: '#1f6fae',
  doubt: '#b3401c',
  'ground-soil': '#7d5a34',
  'ground-fine': '#5f8f7a',
  'ground-coarse': '#d9a514',
  'ground-mixed': '#9a8a5a',
  'ground-organic': '#5c4430',
  'ground-fill': '#8a8a8a',
  'ground-sedimentary': '#a08055',
  'ground-carbonate': '#4f8fc0',
  'ground-crystalline': '#c4687c',
  'ground-volcanic': '#6b8e4e',
  'ground-rock': '#80868c',
  coal: '#2e2e2e',
  'coal-mark': '#ffffff',
  'fill-cement': '#7f858b',
  'fill-bentonite': '#9b7440',
  'fill-granular': '#d9a514',
};

/** The colour as it stands in the SVG. */
export const paintValue = (paint: Paint, theme: Theme): string =>
  theme === 'print' ? paints[paint] : `var(--dh-${paint}, ${paints[paint]})`;
