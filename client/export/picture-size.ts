const dotsPerMm = 200 / 25.4;
/* What a browser's canvas can hold. */
const longestSide = 16_000;
const mostPixels = 60e6;

/** Pixels for a drawing of that many millimetres: 200 dots per inch, less where that would be more than a canvas holds. */
export function pictureSize(widthMm: number, heightMm: number): { width: number; height: number } {
  const scale = Math.min(
    dotsPerMm,
    longestSide / Math.max(widthMm, heightMm),
    Math.sqrt(mostPixels / (widthMm * heightMm)),
  );
  return { width: Math.max(1, Math.round(widthMm * scale)), height: Math.max(1, Math.round(heightMm * scale)) };
}

/** Width and height in mm of a drawing as the server writes it; null for what is none. */
export function drawingSize(svg: string): { widthMm: number; heightMm: number } | null {
  const found = /<svg [^>]*?width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg);
  return found ? { widthMm: Number(found[1]), heightMm: Number(found[2]) } : null;
}

/** A drawing with the faces that it is set in inside it, as a picture cannot reach for any. */
export function withFaces(
  svg: string,
  faces: ReadonlyArray<{ readonly weight: string; readonly base64: string }>,
): string {
  const rules = faces.map(
    ({ weight, base64 }) =>
      `@font-face{font-family:Arial;font-weight:${weight};src:url(data:font/ttf;base64,${base64})}`,
  );
  const end = svg.indexOf('>', svg.indexOf('<svg')) + 1;
  return `${svg.slice(0, end)}<style>${rules.join('')}</style>${svg.slice(end)}`;
}
