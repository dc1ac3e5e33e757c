/* There is no slanted face among the fonts: an upright one is leaned by 12 degrees, as type has it. */
export const lean = Math.tan((12 * Math.PI) / 180);

const slantedText = /<text x="[^"]*" y="([^"]*)"[^>]* font-style="italic"/g;

/** A drawing as SVG whose slanted texts are leaned, each about where it begins, for what has upright faces only. */
export const leaned = (svg: string): string =>
  svg.replace(
    slantedText,
    (text: string, y: string) =>
      `${text} transform="matrix(1 0 ${(-lean).toFixed(4)} 1 ${(lean * Number(y)).toFixed(3)} 0)"`,
  );
