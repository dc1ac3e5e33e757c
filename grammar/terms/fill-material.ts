import { common, from, list } from './build.ts';
import type { FillClass, Term } from './term.ts';

const said = from(common);

const fill =
  (fillClass: FillClass) =>
  (name: string, short: string, meaning: string): Term =>
    said(name, short, meaning, { fill: { class: fillClass } });

const cement = fill('cement');
const slurry = fill('bentonite-slurry');
const dry = fill('bentonite-dry');
const granular = fill('granular');
const native = fill('native');
const concrete = fill('concrete');

export const fillMaterial = list('fill-material', 'What is placed around and in a well', [
  cement(
    'neat cement',
    'neat|nc|neat cement grout|neat cmt|portland|portland cement|neat portland',
    'Cement and water alone.',
  ),
  cement('cement', 'cmt|cem|cement grout|cmt grout|cement slurry', 'Cement and water, other parts not told.'),
  cement(
    'cement-bentonite',
    'cement with bentonite|bentonite cement|cmt bent|cement bent|cb|cement bentonite grout|neat cement with bentonite',
    'Cement and water with a little bentonite.',
  ),
  cement(
    'sand-cement',
    'sand cement grout|sanded cement|cement sand|sc grout|sand and cement',
    'Cement and water with sand.',
  ),
  cement(
    'rapid-setting cement',
    'rapid cement|high early cement|type iii cement|fast setting cement|high early',
    'Cement that sets early.',
  ),
  cement(
    'thermal grout',
    'thermally enhanced grout|geothermal grout',
    'Grout that carries heat well, for ground loops.',
  ),
  cement(
    'portland-limestone cement',
    'limestone cement|portland limestone cement|plc|type il cement|type 1l cement',
    'Cement ground with some limestone, a little lighter than portland cement.',
  ),
  cement('grout', 'grt', 'A pumped sealing mix, kind not told.'),
  slurry(
    'bentonite slurry',
    'bentonite grout|bent slurry|bent grout|bentonite|bent|high solids bentonite|high solids bentonite grout|bg',
    'Bentonite and water, pumped.',
  ),
  slurry(
    'bentonite and sand slurry',
    'sand bentonite slurry|bentonite sand slurry',
    'Bentonite and water with sand, pumped.',
  ),
  dry(
    'bentonite chips',
    'chips|chip|bent chips|bchips|coarse chips|chipped bentonite',
    'Crushed dry bentonite that is poured and swells in place.',
  ),
  dry(
    'bentonite pellets',
    'pellets|pellet|bent pellets|bentonite tablets|tablets|coated pellets',
    'Pressed bentonite that is poured and swells in place.',
  ),
  dry(
    'granular bentonite',
    'gran bent|gran bentonite|granular|bentonite granules|crumbles|powdered bentonite|bentonite powder',
    'Fine grains of dry bentonite.',
  ),
  concrete('concrete', 'conc|ready mix|redi mix|readymix', 'Cement, water, sand and stone.'),
  granular(
    'filter sand',
    'filter pack|filter pack sand|silica sand|pack sand|filter',
    'Washed sorted sand placed round a screen.',
  ),
  granular(
    'gravel pack',
    'gravel pack sand|gp|gvl pack|grvl pack|pack',
    'Washed sorted sand or gravel placed round a screen.',
  ),
  granular('sand', 'sd|snd|clean sand|fine sand|washed sand|concrete sand|mason sand', 'Sand, as a fill.'),
  granular('gravel', 'gvl|grvl|clean gravel|washed gravel', 'Gravel, as a fill.'),
  granular('pea gravel', 'pea gvl|pea stone|peastone', 'Gravel of the size of peas.'),
  granular('crushed stone', 'stone|crushed rock|limestone chips', 'Broken stone, as a fill.'),
  granular('glass beads', 'beads', 'Round glass grains placed round a screen.'),
  native('cuttings', 'drill cuttings|ctgs|cttgs', 'What the drilling brought up.'),
  native(
    'native material',
    'native|formation|natural pack|natural fill|native soil|collapsed formation|formation collapse|caved in|slough',
    'The ground itself, put back or fallen in.',
  ),
  native('clay', 'cl|puddled clay|native clay|clay slurry', 'Clay, as a fill.'),
  native('soil', 'earth|dirt|topsoil', 'Soil, as a fill.'),
  native('backfill', 'back fill|fill', 'Ground put back, kind not told.'),
]);
