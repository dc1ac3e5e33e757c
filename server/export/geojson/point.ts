/* Datums within about two metres of WGS 84 (EPSG Geodetic Parameter Dataset, from memory). */
const nearWgs84: ReadonlySet<string> = new Set(['wgs84', 'nad83', 'nad83-csrs', 'etrs89', 'gda94', 'gda2020']);

/** True where a place may stand in GeoJSON as it is; one without a datum counts as on WGS 84. */
export const isNearWgs84 = (datum: { readonly id: string } | null): boolean =>
  datum === null || nearWgs84.has(datum.id);

/** Seven decimals of a degree are about a centimetre. */
const degrees = (value: number): number => Number(value.toFixed(7)) + 0;

/** A point of GeoJSON: longitude before latitude (RFC 7946, section 3.1.1). */
export const pointOf = (latitude: number, longitude: number) => ({
  type: 'Point' as const,
  coordinates: [degrees(longitude), degrees(latitude)] as const,
});
