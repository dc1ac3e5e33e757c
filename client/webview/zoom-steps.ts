const least = 0.5;
const most = 8;

/** What one press of a button multiplies the zoom by. */
export const zoomStep = 1.25;

/** The nearest zoom that there is; 1 for what is no number. */
export const zoomWithin = (zoom: number): number => (Number.isFinite(zoom) ? Math.min(Math.max(zoom, least), most) : 1);

const keyFactors: Readonly<Record<string, number>> = {
  '+': zoomStep,
  '=': zoomStep,
  '-': 1 / zoomStep,
  _: 1 / zoomStep,
};

/** The zoom that a key asks for; null for any other key. */
export function zoomByKey(key: string, zoom: number): number | null {
  if (key === '0') return 1;
  const factor = Object.hasOwn(keyFactors, key) ? keyFactors[key] : undefined;
  return factor === undefined ? null : zoomWithin(zoom * factor);
}
