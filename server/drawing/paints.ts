import type { Paint } from './shapes.ts';

/** The colours of a drawing that stands alone: on white paper, or on a dark page. */
export type FileTheme = 'print' | 'dark';

/** `editor` leaves every colour to custom properties of the page. */
export type Theme = FileTheme | 'editor';

/** Print colours. Tints of ground and fill are laid thin, so that they read on light and on dark paper. */
export const paints: Readonly<{ [P in Paint]: string }> = {
  ink: '#1a1a1a',
  paper: '#ffffff',
  'quiet-ink': '#5a5f63',
  rule: '#b4b9bd',
  water: '#1f6fae',
  doubt: '#b3401c',
  'plot-2': '#7a4a92',
  'plot-3': '#2b7a4b',
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

/** The colours that print's would not show as on a dark page. */
const darkPaints: Partial<Readonly<{ [P in Paint]: string }>> = {
  ink: '#e4e6e8',
  paper: '#1f2123',
  'quiet-ink': '#a9b0b6',
  rule: '#6b7278',
  water: '#6cb6ff',
  doubt: '#ff9d76',
  'ground-soil': '#b88a58',
  'ground-fine': '#7fb89f',
  'ground-mixed': '#c4b37a',
  'ground-organic': '#a07a58',
  'ground-fill': '#b4b4b4',
  'ground-sedimentary': '#c9a877',
  'ground-carbonate': '#79b5e4',
  'ground-crystalline': '#e58b9f',
  'ground-volcanic': '#94bd72',
  'ground-rock': '#a9b0b6',
  'fill-cement': '#a9b0b6',
  'fill-bentonite': '#c79a62',
  'plot-2': '#c79be0',
  'plot-3': '#7fd0a0',
};

/** The colour as it stands in the SVG. */
export function paintValue(paint: Paint, theme: Theme): string {
  if (theme === 'editor') return `var(--dh-${paint}, ${paints[paint]})`;
  return (theme === 'dark' ? darkPaints[paint] : undefined) ?? paints[paint];
}
