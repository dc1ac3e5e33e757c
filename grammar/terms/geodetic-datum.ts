import { from, list } from './build.ts';

const epsg = from('EPSG geodetic registry');

export const geodeticDatum = list('geodetic-datum', 'Geodetic datums', [
  epsg('WGS84', 'wgs 84|gps', 'World Geodetic System 1984.'),
  epsg('NAD83', 'nad 83', 'North American Datum 1983.'),
  epsg('NAD83 CSRS', 'nad83csrs|csrs|nad83(csrs)', 'North American Datum 1983, Canadian Spatial Reference System.'),
  epsg('NAD27', 'nad 27', 'North American Datum 1927.'),
  epsg('ETRS89', 'etrs 89', 'European Terrestrial Reference System 1989.'),
  epsg('GDA94', '', 'Geocentric Datum of Australia 1994.'),
  epsg('GDA2020', '', 'Geocentric Datum of Australia 2020.'),
  epsg('OSGB36', 'osgb|osgb 36', 'Ordnance Survey of Great Britain 1936.'),
  epsg('NAVD88', 'navd 88|navd', 'North American Vertical Datum 1988.'),
  epsg('NGVD29', 'ngvd 29|ngvd', 'National Geodetic Vertical Datum 1929.'),
  epsg('CGVD28', 'cgvd 28', 'Canadian Geodetic Vertical Datum 1928.'),
  epsg('CGVD2013', 'cgvd 2013|cgvd13', 'Canadian Geodetic Vertical Datum 2013.'),
  epsg('EGM96', 'egm 96', 'Earth Gravitational Model 1996.'),
  epsg('EGM2008', 'egm 2008', 'Earth Gravitational Model 2008.'),
  epsg('mean sea level', 'msl|amsl|asl|above sea level|sea level', 'Height above sea level, datum not told.'),
  epsg('local', 'assumed|site datum|arbitrary', 'A datum of the site.'),
]);
